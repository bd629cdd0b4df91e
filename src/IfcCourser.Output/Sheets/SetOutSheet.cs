using IfcCourser.Comparing;
using IfcCourser.Layouts;
using IfcCourser.Output.Sheets.Plans;
using IfcCourser.Output.Sheets.SetOut;
using IfcCourser.Output.Sheets.Walls;

namespace IfcCourser.Output.Sheets;

/// <summary>The rod setter's sheet of one storey: every bar to be cast in, measured twice.</summary>
public static class SetOutSheet
{
    /// <summary>Larger scales make sheets that nobody can hold on a slab. Common practice, no source.</summary>
    private const int LargestScale = 48;

    /// <summary>Whether a storey has bars to cast in at all.</summary>
    public static bool IsNeeded(StoreySetOut storey) => storey.Bars.Any(bar => bar.IsCastIn);

    /// <param name="layout">The layout the storey belongs to.</param>
    /// <param name="storey">One of <paramref name="layout"/>'s set-out with bars to cast in.</param>
    public static Sheet Compose(Layout layout, StoreySetOut storey) => Compose(layout, storey, SheetContext.Alone(layout));

    /// <inheritdoc cref="Compose(Layout, StoreySetOut)"/>
    /// <param name="context">Pens, papers and the place in the set.</param>
    /// <param name="since">What changed since the last issue; null where nobody asked.</param>
    public static Sheet Compose(Layout layout, StoreySetOut storey, SheetContext context, Reissue? since = null)
    {
        var facts = new SetOutFacts(layout, storey, since);
        var units = facts.Text.Units;
        ImmutableArray<DrawingScale> scales = [.. DrawingScale.For(units).Where(scale => scale.Denominator >= LargestScale)];
        var fit = SheetFit.Of(context.Papers, scales, scale => Drawn(facts, scale), SetOutPanels.Of(facts));
        var storeys = layout.SetOut.Storeys.Where(IsNeeded).ToArray();
        var number = Array.IndexOf(storeys, storey) + 1;
        var name = storey.Storey ?? SheetText.UnnamedStorey;
        return fit.Assembled(SetOutText.SheetName(number, name), SetOutText.Plan, units, context, fit.Title(layout, name) with
        {
            IdentificationNumber = SetOutText.Number(number),
            Title = name,
            DocumentType = SetOutText.DocumentType,
        });
    }

    private static Canvas Drawn(SetOutFacts facts, DrawingScale scale)
    {
        var canvas = new Canvas(scale.Denominator);
        SetOutPlan.Draw(canvas, facts);
        SetOutBars.Draw(canvas, facts);
        SkewStrips.Draw(canvas, facts);
        var below = NorthArrow.Draw(canvas, facts.Layout.SetOut, facts.Storey.Axes);
        BenchMark.Draw(canvas, below - new Point(0, 9 * canvas.PerPaper));
        Tags.Draw(canvas, facts);
        facts.Clouds.Draw(canvas, facts.At);
        return canvas;
    }
}
