using System.Globalization;
using System.Text;
using IfcCourser.Output.IfcWriteBack.Openings;
using IfcCourser.Output.Json;
using IfcCourser.Units;

namespace IfcCourser.Output.Tables;

/// <summary>
/// The list beside the model with moved openings: one row for each opening that is placed elsewhere than drawn, lengths in mm (RFC 4180, UTF-8).
/// shift_along and shift_up are what its placement was moved by; wider_by and higher_by are left to the designer.
/// </summary>
public static class OpeningChangesCsv
{
    public static void Write(IEnumerable<OpeningChange> changes, Stream stream)
    {
        using var writer = new StreamWriter(stream, new UTF8Encoding(false), leaveOpen: true) { NewLine = "\r\n" };
        writer.WriteLine("opening,name,kind,filling,wall,storey,shift_along,shift_up,wider_by,higher_by,moved,remark");
        foreach (var change in changes)
        {
            var opening = change.Opening.Opening;
            writer.WriteLine(string.Join(',', ((string?[])
            [
                opening.GlobalId, opening.Name, JsonNames.Of(opening.Kind), opening.FillingId, change.Wall.Identity.GlobalId, change.Wall.Identity.Storey,
                Mm(change.Along), Mm(change.Up), Mm(change.WiderBy), Mm(change.HigherBy), change.IsMoved ? "yes" : "no", Remark(change),
            ]).Select(CsvCell.Of)));
        }
    }

    private static string Remark(OpeningChange change) => change.Hindrance switch
    {
        MoveHindrance.NoElement => "The void is drawn into the wall's body; move it there.",
        MoveHindrance.CurvedWall => "The wall is curved; move the opening in the program that made the model.",
        MoveHindrance.Placement => "The opening has no local placement of its own; move it in the program that made the model.",
        _ when change.WiderBy != Length.Zero || change.HigherBy != Length.Zero =>
            "Neither opening nor door or window is resized; the masonry opening is larger by what wider_by and higher_by say.",
        _ => string.Empty,
    };

    private static string Mm(Length length) => length.Mm.ToString("0.######", CultureInfo.InvariantCulture);
}
