using IfcCourser.Layouts;
using IfcCourser.Output.Sheets.Plans;
using IfcCourser.Output.Sheets.Staging;
using IfcCourser.Output.Sheets.Walls;

namespace IfcCourser.Output.Sheets;

/// <summary>Where the packs of a storey are set down, and which walls they are for.</summary>
public static class StagingSheet
{
    /// <summary>Larger scales make sheets that nobody can hold beside a fork lift. Common practice, no source.</summary>
    private const int LargestScale = 48;

    /// <param name="layout">With its order.</param>
    /// <param name="storey">One with packs; null for walls that no storey holds.</param>
    /// <param name="number">Among staging plans, from 1.</param>
    public static Sheet Compose(Layout layout, string? storey, int number, SheetContext context)
    {
        var facts = new StagingFacts(layout, storey);
        var units = facts.Plan.Text.Units;
        ImmutableArray<DrawingScale> scales = [.. DrawingScale.For(units).Where(scale => scale.Denominator >= LargestScale)];
        var fit = SheetFit.Of(context.Papers, scales, scale => Drawn(facts, scale), StagingPanels.Of(facts));
        var title = StagingText.Title(storey);
        return fit.Assembled(SheetText.SheetName(StagingText.Number(number), title), PlanText.Plan, units, context, fit.Title(layout, null) with
        {
            IdentificationNumber = StagingText.Number(number),
            Title = title,
            DocumentType = StagingText.DocumentType,
        });
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
