using System.Globalization;
using System.Text;
using IfcCourser.Layouts;
using IfcCourser.Output.Json;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Output.Tables;

/// <summary>
/// bars.csv: the bars to order, one row for each mark and wall (RFC 4180, UTF-8). Dimensions in mm and masses in kg after BS 8666, in inches
/// and pounds in the inch form; the unit column says which. Use: vertical in a core, beam along a bond beam, corner around a corner
/// of them; stock: the delivered length that the order cuts it from, empty where none is known or long enough.
/// </summary>
public static class BarsCsv
{
    private const double KilogramsPerPound = 0.45359237;

    public static void Write(Layout layout, Stream stream)
    {
        var isInch = layout.Rules.BarListForm == BarListForm.Aci315;
        using var writer = new StreamWriter(stream, new UTF8Encoding(false), leaveOpen: true) { NewLine = "\r\n" };
        writer.WriteLine("mark,wall,steel,size,number,length,total_length,shape,A,B,R,mass,unit,use,stock");
        var stock = (layout.Order?.Bars ?? []).SelectMany(bars => bars.Cuts.SelectMany(cut => cut.Marks).Distinct(StringComparer.Ordinal).Select(mark => (mark, bars.Stock)))
            .DistinctBy(pair => pair.mark, StringComparer.Ordinal).ToDictionary(pair => pair.mark, pair => pair.Stock, StringComparer.Ordinal);
        foreach (var row in layout.BarSchedule)
        {
            writer.WriteLine(string.Join(',', ((string?[])
            [
                row.Mark, row.Wall, row.Steel, row.Size.Name, row.Number.ToString(CultureInfo.InvariantCulture), Text(row.Length), Text(row.Length * row.Number), row.Shape,
                Text(row.A), row.B == Length.Zero ? null : Text(row.B), row.Radius == Length.Zero ? null : Text(row.Radius),
                (isInch ? row.Mass / KilogramsPerPound : row.Mass).ToString("0.00", CultureInfo.InvariantCulture), isInch ? "in lb" : "mm kg", JsonNames.Of(row.Use),
                stock.TryGetValue(row.Mark, out var from) ? Text(from) : null,
            ]).Select(CsvCell.Of)));
        }

        string Text(Length length) => (isInch ? length.Inches : length.Mm).ToString("0.####", CultureInfo.InvariantCulture);
    }
}
