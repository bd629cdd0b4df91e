using IfcCourser.Output.Sheets.Plans;
using IfcCourser.Output.Sheets.Walls;

namespace IfcCourser.Output.Sheets.Staging;

/// <summary>Walls as their first course stands, and packs beside them.</summary>
internal static class StagingPlan
{
    private const double TextHeight = 3;

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

        foreach (var pack in facts.Packs.Where(pack => pack.Place is not null))
        {
            var loop = facts.Loop(pack.Place!);
            canvas.Add(new PolylineItem(Pen.CutBlock, loop, PathEnd.Closed));
            canvas.Write(new TextItem(Pen.CutLength, Box.Around(loop).Middle, facts.Mark(pack), TextHeight, TextAnchor.Middle));
            canvas.Take(Box.Around(loop));
        }
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
