using IfcCourser.Layouts;
using IfcCourser.Output.Sheets.Plans;
using IfcCourser.Output.Sheets.Staging;
using IfcCourser.Output.Sheets.Walls;

namespace IfcCourser.Output.Sheets;

/// <summary>Where the packs of a storey are set down, and which walls they are for.</summary>
internal static class StagingSheet
{
    /// <param name="layout">With its order.</param>
    /// <param name="storey">One with packs; null for walls that no storey holds.</param>
    /// <param name="number">Among staging plans, from 1.</param>
    /// <param name="papers">Sizes to choose from, smallest first.</param>
    public static ImmutableArray<PlanPage> Pages(Layout layout, string? storey, int number, ImmutableArray<PaperSize> papers)
    {
        var facts = new StagingFacts(layout, storey);
        return StoreyPlan.Pages(
            StagingText.Number(number), StagingText.Title(storey), facts.Plan.Text.Units, papers, _ => new PlanDrawing(scale => Drawn(facts, scale), StagingPanels.Of(facts)), null, PlanAim.Tables);
    }

    private static Canvas Drawn(StagingFacts facts, DrawingScale scale)
    {
        var canvas = new Canvas(scale.Denominator);
        StagingPlan.Draw(canvas, facts);
        NorthArrow.Draw(canvas, facts.Plan.Layout.SetOut, facts.Plan.Axes);
        StagingPlan.Tag(canvas, facts);
        return canvas;
    }
}
