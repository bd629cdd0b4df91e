using IfcCourser.Layouts;
using IfcCourser.Output.Sheets.Panels;
using IfcCourser.Output.Sheets.Walls;

namespace IfcCourser.Output.Sheets.Plans;

/// <summary>What is built in for others, seen from above: an open square in the wall's middle; heights stand on the wall's sheet.</summary>
internal static class EmbedMarks
{
    private const double Half = 0.9;

    public static void Draw(Canvas canvas, WallLayout wall, Func<Units.Length, Units.Length, Point> at)
    {
        foreach (var embed in wall.Embeds)
        {
            var middle = at(embed.At, wall.Frame.Thickness / 2);
            canvas.Add(PolylineItem.Rectangle(Pen.BuiltIn, Box.At(middle, 2 * Half * canvas.PerPaper, 2 * Half * canvas.PerPaper)));
            canvas.Take(Box.At(middle, 2 * Half * canvas.PerPaper, 2 * Half * canvas.PerPaper));
        }
    }

    public static (bool IsUsed, PanelRow Row) LegendRow(IEnumerable<WallLayout> walls) => (
        walls.Any(wall => !wall.Embeds.IsEmpty),
        MarkSamples.Row(SheetText.LegendEmbed, PolylineItem.Rectangle(Pen.BuiltIn, Box.At(MarkSamples.Middle, 2 * Half, 2 * Half))));
}
