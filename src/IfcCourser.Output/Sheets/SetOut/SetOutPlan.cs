using IfcCourser.Layouts;
using IfcCourser.Output.Sheets.Details;
using IfcCourser.Output.Sheets.Plans;
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
            if (facts.Part is { } part)
            {
                foreach (var edge in Clip.Edges(Pen.SlabEdge, loop, part.Window))
                {
                    canvas.Add(edge);
                    canvas.TakeLine(edge);
                }
            }
            else
            {
                canvas.Add(new PolylineItem(Pen.SlabEdge, loop, PathEnd.Closed));
                PlanShape.Take(canvas, loop);
            }
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
            var loop = PlanShape.Loop(wall, run, facts.At);
            canvas.Add(new PolylineItem(Pen.OuterEdge, loop, PathEnd.Closed));
            PlanShape.Take(canvas, loop);
        }

        foreach (var end in Joints(course))
        {
            var joint = new LineItem(Pen.Neighbour, facts.At(wall, end, default), facts.At(wall, end, thickness));
            canvas.Add(joint);
            canvas.TakeLine(joint);
        }

        EmbedMarks.Draw(canvas, wall, (s, t) => facts.At(wall, s, t));
    }

    /// <summary>Ends of blocks within a span.</summary>
    public static IEnumerable<Units.Length> Joints(Course course) => course.Pieces.SelectMany(piece => new[] { piece.From, piece.To }).Distinct()
        .Where(end => !course.Spans.Any(span => span.Run.From == end || span.Run.To == end));

    private static void Diagonals(Canvas canvas, SetOutFacts facts)
    {
        var points = facts.Whole.ControlPoints.ToDictionary(point => point.Number, SetOutFacts.At);
        var lines = facts.Whole.Diagonals.Select(diagonal => new LineItem(Pen.Neighbour, points[diagonal.From], points[diagonal.To]));
        foreach (var line in facts.Part is { } part ? lines.Select(line => Clip.Line(line, part.Window)).OfType<LineItem>() : lines)
        {
            canvas.Add(line);
            canvas.TakeLine(line);
        }
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
}
