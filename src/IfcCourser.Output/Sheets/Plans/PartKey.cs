using System.Globalization;
using IfcCourser.Output.Sheets.Panels;
using IfcCourser.Output.Sheets.Walls;

namespace IfcCourser.Output.Sheets.Plans;

/// <summary>A key plan of a plan in parts, not to scale: the walls, the match lines between the parts, their numbers; this sheet's part is framed.</summary>
internal static class PartKey
{
    private const double Height = 46;
    private const double Margin = 3;
    private const double TextHeight = 2.5;

    /// <param name="number">Of the whole plan.</param>
    public static Panel Of(PlanGround ground, ImmutableArray<PlanPart> parts, PlanPart shown, string number)
    {
        var real = ground.Extent;
        var factor = Math.Min((Panel.Width - (2 * Margin)) / Math.Max(real.Width, 1), (Height - (2 * Margin)) / Math.Max(real.Height, 1));
        var middle = new Point(Panel.Width / 2, -Height / 2);
        var canvas = new Canvas(1);
        foreach (var wall in ground.Walls)
        {
            canvas.Add(new HatchItem(Pen.Neighbour, [Placed(wall).Corners()], HatchKind.Solid));
        }

        foreach (var part in parts)
        {
            var box = Placed(Inside(part.Window, real));
            canvas.Add(PolylineItem.Rectangle(part == shown ? Pen.ThisWall : Pen.Table, part == shown ? box.Grown(-0.4) : box));
            var name = PlanText.Part(number, part.Index);
            name = TextMetrics.Width(name, TextHeight) < box.Width - 1 ? name : part.Index.ToString(CultureInfo.InvariantCulture);
            canvas.Write(new TextItem(part == shown ? Pen.Heading : Pen.Text, box.Middle, name, TextHeight, TextAnchor.Middle));
        }

        return new Panel([Table.Heading(SheetText.KeyPlan)], [new PanelRow(Height, canvas.Drawn())]);

        Box Placed(Box box) => box.Moved(real.Middle * -1).Scaled(factor).Moved(middle);
    }

    private static Box Inside(Box window, Box real) => new(
        Math.Max(window.Left, real.Left), Math.Max(window.Bottom, real.Bottom), Math.Min(window.Right, real.Right), Math.Min(window.Top, real.Top));
}
