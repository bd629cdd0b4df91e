using System.Globalization;
using System.Text;
using IfcCourser.Layouts;
using IfcCourser.Output.Json;
using IfcCourser.Output.Tables;

namespace IfcCourser.Output.Ordering;

/// <summary>
/// saw-list.csv: every piece that is sawn, wall by wall (GlobalId) and course by course (RFC 4180, UTF-8). Lengths in mm or inches, angles in degrees against the
/// bed. from_unit counts the units taken; a piece "U7 offcut" comes from what was left of U7. offcut_used_by is the next piece out of the same unit, with its
/// wall where that is another.
/// </summary>
public static class SawListCsv
{
    /// <param name="layout">With its order.</param>
    public static void Write(Layout layout, Stream stream)
    {
        var text = new OrderText(layout.Rules);
        using var writer = new StreamWriter(stream, new UTF8Encoding(false), leaveOpen: true) { NewLine = "\r\n" };
        writer.WriteLine("mark,wall,course,piece,product,width,length,height,angle,cut,quantity,from_unit,offcut_used_by");
        foreach (var row in SawRow.Of(layout))
        {
            var wall = row.Wall.Identity.GlobalId;
            writer.WriteLine(string.Join(',', ((string?[])
            [
                row.Mark, wall, row.Course.Number.ToString(CultureInfo.InvariantCulture), row.Piece.Id, row.Unit.Product, Number(text.Number(row.Unit.Width)),
                Number(text.Number(row.Piece.Length)), Number(text.Number(row.Piece.Height)), row.Angle?.ToString("0.#", CultureInfo.InvariantCulture), JsonNames.Of(row.Piece.Cut), "1",
                row.FromUnit, row.UsedBy is { } next ? (next.Wall == wall ? next.Piece : $"{next.Wall} {next.Piece}") : null,
            ]).Select(CsvCell.Of)));
        }
    }

    private static string Number(double value) => value.ToString("0.####", CultureInfo.InvariantCulture);
}
