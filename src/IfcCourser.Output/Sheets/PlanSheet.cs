using IfcCourser.Comparing;
using IfcCourser.Layouts;
using IfcCourser.Output.Sheets.Plans;
using IfcCourser.Output.Sheets.Walls;

namespace IfcCourser.Output.Sheets;

/// <summary>A storey's first or second course in plan: blocks as bonded at corners and tees.</summary>
public static class PlanSheet
{
    /// <param name="layout">The layout the storey belongs to.</param>
    /// <param name="storey">Name of the storey, or null for walls that no storey holds.</param>
    /// <param name="index">0 for the first course, 1 for the second; some wall of the storey has it.</param>
    /// <param name="number">Of the sheet among storey plans, from 1.</param>
    /// <param name="since">What changed since the last issue; null where nobody asked.</param>
    public static Sheet Compose(Layout layout, string? storey, int index, int number, SheetContext context, Reissue? since = null)
    {
        var facts = new PlanFacts(layout, storey, index, since);
        return StoreyPlan.Compose(layout, PlanText.Number(number), PlanText.Title(storey, index), PlanText.DocumentType, scale => Drawn(facts, scale), PlanPanels.Of(facts), context);
    }

    private static Canvas Drawn(PlanFacts facts, DrawingScale scale)
    {
        var canvas = new Canvas(scale.Denominator);
        CoursePlan.Draw(canvas, facts);
        CourseTiers.Draw(canvas, facts);
        NorthArrow.Draw(canvas, facts.Layout.SetOut, facts.Axes);
        CoursePlan.Tag(canvas, facts);
        facts.Clouds.Draw(canvas, facts.At);
        return canvas;
    }
}
