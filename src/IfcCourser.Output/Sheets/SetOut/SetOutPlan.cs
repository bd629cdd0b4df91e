using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Output.Sheets.Walls;

namespace IfcCourser.Output.Sheets.SetOut;

/// <summary>A storey in plan: control lines, slab edges, walls with the joints of their first course, control points.</summary>
internal static class SetOutPlan
{
    public static void Draw(Canvas canvas, SetOutFacts facts)
    {
        foreach (var outline in facts.Storey.Outlines.Where(outline => outline.Kind == ControlLineKind.SlabEdge))
        {
            var loop = outline.Loop.Select(facts.At).ToImmutableArray();
            canvas.Add(new PolylineItem(Pen.SlabEdge, loop, PathEnd.Closed));
            Take(canvas, loop);
        }

        foreach (var wall in facts.Walls)
        {
            Wall(canvas, facts, wall);
        }

        Diagonals(canvas, facts);
        GridLines(canvas, facts);
        foreach (var point in facts.Storey.ControlPoints)
        {
            Mark(canvas, SetOutFacts.At(point));
        }
    }

    /// <summary>Faces as the first course stands, so that doors are gaps; its joints faint.</summary>
    private static void Wall(Canvas canvas, SetOutFacts facts, WallLayout wall)
    {
        var course = wall.Courses[0];
        var thickness = wall.Frame.Thickness;
        foreach (var run in course.Spans.Select(span => span.Run))
        {
            var (left, right) = (OnFace(wall, run, wall.Wall.LeftFace), OnFace(wall, run, wall.Wall.RightFace));
            var loop = right.Select(s => facts.At(wall, s, thickness)).Concat(left.Reverse().Select(s => facts.At(wall, s, default))).ToImmutableArray();
            canvas.Add(new PolylineItem(Pen.OuterEdge, loop, PathEnd.Closed));
            Take(canvas, loop);
        }

        foreach (var end in Joints(course))
        {
            var joint = new LineItem(Pen.Neighbour, facts.At(wall, end, default), facts.At(wall, end, thickness));
            canvas.Add(joint);
            canvas.TakeLine(joint);
        }
    }

    /// <summary>Ends of blocks within a span.</summary>
    public static IEnumerable<Units.Length> Joints(Course course) => course.Pieces.SelectMany(piece => new[] { piece.From, piece.To }).Distinct()
        .Where(end => !course.Spans.Any(span => span.Run.From == end || span.Run.To == end));

    /// <summary>A stretch of the run on one face: ends of the run may be on a slant; curves in chords.</summary>
    private static ImmutableArray<Units.Length> OnFace(WallLayout wall, Interval run, Interval face)
    {
        const int ChordsOfCurve = 24;
        var from = run.From == default ? face.From : run.From;
        var to = run.To == wall.Frame.Length ? face.To : run.To;
        var count = wall.Frame.Curve is null ? 1 : ChordsOfCurve;
        return [.. Enumerable.Range(0, count + 1).Select(i => i == count ? to : from + ((to - from) / count * i))];
    }

    private static void Diagonals(Canvas canvas, SetOutFacts facts)
    {
        var points = facts.Storey.ControlPoints.ToDictionary(point => point.Number, SetOutFacts.At);
        canvas.AddRange(facts.Storey.Diagonals.Select(diagonal => new LineItem(Pen.Neighbour, points[diagonal.From], points[diagonal.To])));
    }

    /// <summary>Each a little longer than the edges reach; its tag stands at its dimension.</summary>
    private static void GridLines(Canvas canvas, SetOutFacts facts)
    {
        var box = facts.Edges.Grown(6 * canvas.PerPaper);
        foreach (var check in facts.Storey.CheckLines.Where(check => check.Line.Kind == ControlLineKind.GridLine))
        {
            var at = check.At.Mm;
            var (from, to) = check.IsUpright ? (new Point(at, box.Bottom), new Point(at, box.Top)) : (new Point(box.Left, at), new Point(box.Right, at));
            var line = new LineItem(Pen.GridLine, from, to);
            canvas.Add(line);
            canvas.TakeLine(line);
        }
    }

    private static void Mark(Canvas canvas, Point at)
    {
        var half = 1.2 * canvas.PerPaper;
        canvas.Add(new LineItem(Pen.Dimension, at - new Point(half, half), at + new Point(half, half)));
        canvas.Add(new LineItem(Pen.Dimension, at - new Point(half, -half), at + new Point(half, -half)));
        canvas.Take(Box.At(at, 2 * half, 2 * half));
    }

    /// <summary>Keeps texts off edges that lie along an axis; the boxes of others would be too large.</summary>
    private static void Take(Canvas canvas, ImmutableArray<Point> loop)
    {
        for (var i = 0; i < loop.Length; i++)
        {
            var edge = new LineItem(Pen.OuterEdge, loop[i], loop[(i + 1) % loop.Length]);
            if (Math.Min(Math.Abs(edge.From.X - edge.To.X), Math.Abs(edge.From.Y - edge.To.Y)) < canvas.PerPaper)
            {
                canvas.TakeLine(edge);
            }
        }
    }
}
