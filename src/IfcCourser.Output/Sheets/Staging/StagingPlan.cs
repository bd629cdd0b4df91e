using IfcCourser.Output.Sheets.Plans;
using IfcCourser.Output.Sheets.Walls;

namespace IfcCourser.Output.Sheets.Staging;

/// <summary>Walls as their first course stands, and packs beside them.</summary>
internal static class StagingPlan
{
    private static readonly ImmutableArray<double> _heights = [3, 2.5];
    private static readonly ImmutableArray<double> _turns = [0, 90];

    public static void Draw(Canvas canvas, StagingFacts facts)
    {
        foreach (var wall in facts.Plan.Walls)
        {
            foreach (var span in facts.Plan.CourseOf(wall).Spans)
            {
                var loop = PlanShape.Loop(wall, span.Run, facts.Plan.At);
                canvas.Add(new PolylineItem(Pen.OuterEdge, loop, PathEnd.Closed));
                PlanShape.Take(canvas, loop);
            }
        }

        var marked = facts.Packs.Where(pack => pack.Place is not null).Select(pack => (Mark: facts.Mark(pack), Loop: facts.Loop(pack.Place!))).ToArray();
        canvas.AddRange(marked.Select(pack => new PolylineItem(Pen.CutBlock, pack.Loop, PathEnd.Closed)));
        var outside = marked.Where(pack => !IsMarked(canvas, pack.Loop, pack.Mark)).ToArray();
        foreach (var (mark, loop) in outside)
        {
            PlanTag.Place(canvas, Box.Around(loop).Middle, mark, Pen.CutLength);
        }
    }

    /// <summary>Takes the pack's place, and writes its mark inside, lying or standing, where the pack has room for it.</summary>
    private static bool IsMarked(Canvas canvas, ImmutableArray<Point> loop, string mark)
    {
        var ways = from height in _heights
                   from degrees in _turns
                   select new TextItem(Pen.CutLength, Box.Around(loop).Middle, mark, height, TextAnchor.Middle, degrees);
        var inside = ways.FirstOrDefault(text => Polygon.Contains(loop, ItemBox.Of(text, canvas.PerPaper)));
        if (inside is not null)
        {
            canvas.Write(inside);
        }

        canvas.Take(Box.Around(loop));
        return inside is not null;
    }

    /// <summary>Numbers of walls, once all else has its place.</summary>
    public static void Tag(Canvas canvas, StagingFacts facts)
    {
        foreach (var wall in facts.Plan.Walls)
        {
            PlanTag.Place(canvas, facts.Plan.At(wall, wall.Frame.Length / 2, wall.Frame.Thickness / 2), facts.Plan.NumberOf(wall), Pen.Heading);
        }
    }
}
