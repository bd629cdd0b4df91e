using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Output.Sheets.Details;
using IfcCourser.Output.Sheets.Panels;
using IfcCourser.Output.Sheets.Walls;
using IfcCourser.Units;

namespace IfcCourser.Output.Sheets.Plans;

/// <summary>Walls of the last issue that are laid out no more: dashed where they stood, and struck.</summary>
internal static class GoneWalls
{
    /// <param name="at">Model axes, mm, to the axes of the plan.</param>
    /// <param name="part">What the sheet shows; null for the whole plan.</param>
    public static void Draw(Canvas canvas, ImmutableArray<WallLayout> walls, Func<Vector2, Point> at, PlanPart? part)
    {
        foreach (var wall in walls)
        {
            var loop = Shown(wall, at, part);
            var half = loop.Length / 2;
            canvas.Add(new PolylineItem(Pen.Gone, loop, PathEnd.Closed));
            canvas.Add(new LineItem(Pen.Gone, loop[0], loop[half]));
            canvas.Add(new LineItem(Pen.Gone, loop[half - 1], loop[^1]));
            PlanShape.Take(canvas, loop);
        }
    }

    /// <summary>Their names, once all else has its place.</summary>
    /// <param name="part">What the sheet shows; null for the whole plan.</param>
    public static void Tag(Canvas canvas, ImmutableArray<WallLayout> walls, Func<Vector2, Point> at, PlanPart? part)
    {
        foreach (var wall in walls)
        {
            var middle = Box.Around(Shown(wall, at, part)).Middle;
            PlanTag.Place(canvas, middle, PlanText.Gone(wall.Identity), Pen.Heading);
        }
    }

    public static ImmutableArray<Point> Loop(WallLayout wall, Func<Vector2, Point> at) => PlanShape.Loop(wall, new Interval(Length.Zero, wall.Frame.Length), at);

    /// <summary>What a sheet shows of it; empty where it shows nothing.</summary>
    public static ImmutableArray<Point> Shown(WallLayout wall, Func<Vector2, Point> at, PlanPart? part) =>
        part is null ? Loop(wall, at) : Clip.Face(Loop(wall, at), part.Window);

    public static (bool, PanelRow) LegendRow(ImmutableArray<WallLayout> walls)
    {
        var face = MarkSamples.Face.Grown(-0.5);
        return (!walls.IsEmpty, MarkSamples.Row(
            PlanText.LegendGone,
            PolylineItem.Rectangle(Pen.Gone, face),
            new LineItem(Pen.Gone, new Point(face.Left, face.Bottom), new Point(face.Right, face.Top)),
            new LineItem(Pen.Gone, new Point(face.Left, face.Top), new Point(face.Right, face.Bottom))));
    }
}
