using IfcCourser.Layouts;
using IfcCourser.Output.Sheets.Panels;
using IfcCourser.Output.Sheets.Plans;
using IfcCourser.Output.Sheets.Walls;

namespace IfcCourser.Output.Sheets.Covers;

/// <summary>A storey's walls in plan, not to scale, each with the number of its sheet.</summary>
internal static class StoreyKey
{
    private const double Margin = 7;
    private const double Highest = 70;
    private const double LineHeight = 5;

    public static IEnumerable<Panel> Of(Layout layout) =>
        layout.Storeys.Select(storey => Of(new PlanFacts(layout, storey.Key, 0)));

    private static Panel Of(PlanFacts facts)
    {
        var real = Box.Around(facts.Walls.SelectMany(wall => Loop(facts, wall)));
        var factor = Math.Min((Panel.Width - (2 * Margin)) / Math.Max(real.Width, 1), (Highest - (2 * Margin)) / Math.Max(real.Height, 1));
        var height = (real.Height * factor) + (2 * Margin);
        var middle = new Point(Panel.Width / 2, -height / 2);
        var canvas = new Canvas(1);
        foreach (var loop in facts.Walls.Select(wall => Loop(facts, wall).Select(Placed).ToImmutableArray()))
        {
            canvas.Add(new HatchItem(Pen.ThisWall, [loop], HatchKind.Solid));
            PlanShape.Take(canvas, loop);
        }

        // Numbers keep to the panel.
        const double Far = 1000;
        canvas.Take(new Box(-Far, -Far, 0, Far));
        canvas.Take(new Box(Panel.Width, -Far, Far, Far));
        canvas.Take(new Box(-Far, 0, Far, Far));
        canvas.Take(new Box(-Far, -Far, Far, -height));
        var crowded = facts.Walls.Count(wall => !PlanTag.TryPlace(canvas, Placed(facts.At(wall, wall.Frame.Length / 2, wall.Frame.Thickness / 2)), facts.NumberOf(wall), Pen.Text));
        var more = new PanelRow(LineHeight, [new TextItem(Pen.Text, new Point(1, -LineHeight + 1), CoverText.NotNumbered(crowded), Table.TextHeight)]);
        return new Panel([Table.Heading(facts.Storey ?? SheetText.UnnamedStorey)], [new PanelRow(height, canvas.Drawn()), .. crowded > 0 ? [more] : ImmutableArray<PanelRow>.Empty]);

        Point Placed(Point p) => middle + ((p - real.Middle) * factor);
    }

    private static IEnumerable<Point> Loop(PlanFacts facts, WallLayout wall) => wall.Wall.Footprint().Select(facts.At);
}
