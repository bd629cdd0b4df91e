using IfcCourser.Comparing;
using IfcCourser.Layouts;
using IfcCourser.Output.Sheets.Plans;
using IfcCourser.Output.Sheets.Walls;

namespace IfcCourser.Output.Sheets;

/// <summary>A storey's first or second course in plan: blocks as bonded at corners and tees.</summary>
internal static class PlanSheet
{
    /// <param name="layout">The layout the storey belongs to.</param>
    /// <param name="storey">Name of the storey, or null for walls that no storey holds.</param>
    /// <param name="index">0 for the first course, 1 for the second; some wall of the storey has it.</param>
    /// <param name="number">Of the plan among storey plans, from 1.</param>
    /// <param name="papers">Sizes to choose from, smallest first.</param>
    /// <param name="since">What changed since the last issue; null where nobody asked.</param>
    public static ImmutableArray<PlanPage> Pages(Layout layout, string? storey, int index, int number, ImmutableArray<PaperSize> papers, Reissue? since = null)
    {
        var whole = new PlanFacts(layout, storey, index, since);
        return StoreyPlan.Pages(PlanText.Number(number), PlanText.Title(storey, index), whole.Text.Units, papers, Part, whole.Ground, PlanAim.Scale);

        PlanDrawing Part(PlanPart? part)
        {
            var facts = part is null ? whole : new PlanFacts(layout, storey, index, since, part);
            return new PlanDrawing(scale => Drawn(facts, PlanText.Number(number), scale), PlanPanels.Of(facts));
        }
    }

    private static Canvas Drawn(PlanFacts facts, string number, DrawingScale scale)
    {
        var canvas = new Canvas(scale.Denominator);
        CoursePlan.Draw(canvas, facts);
        GoneWalls.Draw(canvas, facts.Gone, facts.At, facts.Part);
        facts.Part?.Draw(canvas, number);
        CourseTiers.Draw(canvas, facts);
        NorthArrow.Draw(canvas, facts.Layout.SetOut, facts.Axes);
        CoursePlan.Tag(canvas, facts);
        GoneWalls.Tag(canvas, facts.Gone, facts.At, facts.Part);
        facts.Clouds.Draw(canvas);
        return canvas;
    }
}
