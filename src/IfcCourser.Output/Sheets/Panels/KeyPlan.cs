using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Output.Sheets.Walls;

namespace IfcCourser.Output.Sheets.Panels;

/// <summary>The storey's walls in plan, not to scale: this one filled, its run from A to B, an arrow where the viewer stands.</summary>
internal static class KeyPlan
{
    private const double PictureHeight = 46;
    private const double Margin = 6;

    public static Panel Of(WallFacts facts)
    {
        var walls = facts.Layout.Walls.Where(wall => wall.Identity.Storey == facts.Wall.Identity.Storey).ToArray();
        var real = Box.Around(walls.SelectMany(wall => Footprint(wall)));
        var factor = Math.Min(
            (Panel.Width - (2 * Margin)) / Math.Max(real.Width, 1), (PictureHeight - (2 * Margin)) / Math.Max(real.Height, 1));
        var middle = new Point(Panel.Width / 2, -PictureHeight / 2);
        var items = ImmutableArray.CreateBuilder<SheetItem>();
        foreach (var wall in walls.Where(wall => wall != facts.Wall))
        {
            items.Add(new PolylineItem(Pen.Neighbour, [.. Footprint(wall).Select(Placed)], PathEnd.Closed));
        }

        items.Add(new HatchItem(Pen.ThisWall, [[.. Footprint(facts.Wall).Select(Placed)]], HatchKind.Solid));
        items.AddRange(Viewer(facts.Wall, Placed));
        return new Panel([Table.Heading(SheetText.KeyPlan)], [new PanelRow(PictureHeight, items.ToImmutable())]);

        Point Placed(Point p) => middle + ((p - real.Middle) * factor);
    }

    private static ImmutableArray<Point> Footprint(WallLayout wall) => [.. wall.Wall.Footprint().Select(p => new Point(p.X, p.Y))];

    private static Point Plan(Vector3 p) => new(p.X, p.Y);

    /// <summary>The elevation has its start at the left, so the viewer stands on the right of the run.</summary>
    private static IEnumerable<SheetItem> Viewer(WallLayout wall, Func<Point, Point> placed)
    {
        var frame = wall.Frame;
        var along = new Point(frame.Direction.X, frame.Direction.Y);
        var away = new Point(frame.Normal.X, frame.Normal.Y) * -1;
        var corners = Footprint(wall);
        var (start, middle, end) = (placed(corners[0]), placed(Plan(frame.PointAt(frame.Length / 2, frame.Thickness, Units.Length.Zero))), placed(corners[(corners.Length / 2) - 1]));
        var tip = middle + (away * 1.5);
        yield return new LineItem(Pen.Text, tip, tip + (away * 4));
        yield return new HatchItem(
            Pen.Text, [[tip, tip + (away * 1.8) + (along * 0.7), tip + (away * 1.8) - (along * 0.7)]], HatchKind.Solid);
        yield return new TextItem(Pen.Heading, start - (along * 2.5) + (away * 1.5), "A", 2.5, TextAnchor.Middle);
        yield return new TextItem(Pen.Heading, end + (along * 2.5) + (away * 1.5), "B", 2.5, TextAnchor.Middle);
    }
}
