using IfcCourser.Layouts;
using IfcCourser.Output.Sheets.Plans;
using IfcCourser.Output.Sheets.Walls;

namespace IfcCourser.Output.Sheets.SetOut;

/// <summary>Walls askew to the axes, each turned level under the plan, with its bars measured along and square to its left face.</summary>
internal static class SkewStrips
{
    public static void Draw(Canvas canvas, SetOutFacts facts)
    {
        foreach (var bars in facts.CastIn.Where(bar => bar.OnFace is not null).GroupBy(bar => bar.Wall, StringComparer.Ordinal))
        {
            Draw(canvas, facts, facts.WallOf(bars.First()), [.. bars]);
        }
    }

    private static void Draw(Canvas canvas, SetOutFacts facts, WallLayout wall, ImmutableArray<BarSetOut> bars)
    {
        var mm = canvas.PerPaper;
        var left = facts.Edges.Left;
        var start = left - wall.Wall.LeftFace.From.Mm;
        var heading = canvas.Extent.Bottom - (8 * mm);
        canvas.Write(new TextItem(
            Pen.Heading, new Point(left, heading), SetOutText.Skew(facts.WallNumber(wall.Identity.GlobalId), bars[0].OnFace!.Corner), 2.5));
        var face = heading - (5 * mm);
        var thickness = wall.Frame.Thickness.Mm;
        foreach (var run in wall.Courses[0].Spans.Select(span => span.Run))
        {
            canvas.Add(PolylineItem.Rectangle(Pen.OuterEdge, new Box(start + run.From.Mm, face - thickness, start + run.To.Mm, face)));
        }

        foreach (var end in SetOutPlan.Joints(wall.Courses[0]))
        {
            canvas.Add(new LineItem(Pen.Neighbour, new Point(start + end.Mm, face - thickness), new Point(start + end.Mm, face)));
        }

        foreach (var bar in bars)
        {
            canvas.Add(SetOutBars.Symbol(canvas, facts, bar, Place(bar)));
            canvas.Take(Box.At(Place(bar), 2.2 * mm, 2.2 * mm));
        }

        var stations = bars.Select(bar => new PlanStation(Place(bar), [bar.Number], string.Empty)).ToArray();
        new PlanTier(DimensionAxis.Vertical, left - (6 * mm), TextSide.Before) { Origin = face, IsDownward = true }.Draw(canvas, facts.Text, stations);
        new PlanTier(DimensionAxis.Horizontal, face - thickness - (4 * mm), TextSide.Before) { Origin = left }.Draw(canvas, facts.Text, stations);

        Point Place(BarSetOut bar) => new(left + bar.OnFace!.Along.Mm, face - bar.OnFace.Across.Mm);
    }
}
