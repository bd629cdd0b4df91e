using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Output.Sheets.Walls;
using IfcCourser.Units;

namespace IfcCourser.Output.Sheets.Plans;

/// <summary>What a stretch of a wall looks like from above.</summary>
internal static class PlanShape
{
    /// <summary>Counter-clockwise along the right face and back along the left one; ends of the run may be on a slant.</summary>
    /// <param name="at">Model axes, mm, to the axes of the plan.</param>
    public static ImmutableArray<Point> Loop(WallLayout wall, Interval run, Func<Vector2, Point> at)
    {
        var right = OnFace(wall, run, wall.Wall.RightFace).Select(s => wall.Frame.PointAt(s, wall.Frame.Thickness, Length.Zero).Plan);
        var left = OnFace(wall, run, wall.Wall.LeftFace).Reverse().Select(s => wall.Frame.PointAt(s, Length.Zero, Length.Zero).Plan);
        return [.. right.Concat(left).Select(at)];
    }

    /// <summary>Keeps texts off its edges.</summary>
    public static void Take(Canvas canvas, ImmutableArray<Point> loop)
    {
        for (var i = 0; i < loop.Length; i++)
        {
            canvas.TakeLine(new LineItem(Pen.OuterEdge, loop[i], loop[(i + 1) % loop.Length]));
        }
    }

    /// <summary>A stretch of the run on one face; curves in chords.</summary>
    private static ImmutableArray<Length> OnFace(WallLayout wall, Interval run, Interval face)
    {
        const int ChordsOfCurve = 24;
        var from = run.From == default ? face.From : run.From;
        var to = run.To == wall.Frame.Length ? face.To : run.To;
        var count = wall.Frame.Curve is null ? 1 : ChordsOfCurve;
        return [.. Enumerable.Range(0, count + 1).Select(i => i == count ? to : from + ((to - from) / count * i))];
    }
}
