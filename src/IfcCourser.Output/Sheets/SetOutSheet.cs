using IfcCourser.Comparing;
using IfcCourser.Layouts;
using IfcCourser.Output.Sheets.Plans;
using IfcCourser.Output.Sheets.SetOut;
using IfcCourser.Output.Sheets.Walls;

namespace IfcCourser.Output.Sheets;

/// <summary>The rod setter's sheet of one storey: every bar to be cast in, measured twice; where none is, the faces and door jambs of its walls.</summary>
public static class SetOutSheet
{
    /// <param name="layout">The layout the storey belongs to.</param>
    /// <param name="storey">One of <paramref name="layout"/>'s set-out.</param>
    /// <returns>The first of its sheets where it takes several.</returns>
    public static Sheet Compose(Layout layout, StoreySetOut storey)
    {
        var context = SheetContext.Alone(layout);
        return Compose(layout, storey, Pages(layout, storey, context.Papers)[0], context);
    }

    /// <param name="context">Pens and the place in the set.</param>
    internal static Sheet Compose(Layout layout, StoreySetOut storey, PlanPage page, SheetContext context) =>
        StoreyPlan.Sheet(layout, page, storey.Storey ?? SheetText.UnnamedStorey, SetOutText.DocumentType, context);

    /// <param name="papers">Sizes to choose from, smallest first.</param>
    /// <param name="since">What changed since the last issue; null where nobody asked.</param>
    internal static ImmutableArray<PlanPage> Pages(Layout layout, StoreySetOut storey, ImmutableArray<PaperSize> papers, Reissue? since = null)
    {
        var whole = new SetOutFacts(layout, storey, since);
        var number = SetOutText.Number(layout.SetOut.Storeys.IndexOf(storey) + 1);
        return StoreyPlan.Pages(number, storey.Storey ?? SheetText.UnnamedStorey, whole.Text.Units, papers, Part, whole.Course.Ground with { Around = whole.Edges }, PlanAim.Tables);

        PlanDrawing Part(PlanPart? part)
        {
            var facts = part is null ? whole : new SetOutFacts(layout, storey, since, part);
            return new PlanDrawing(scale => Drawn(facts, number, scale), SetOutPanels.Of(facts));
        }
    }

    private static Canvas Drawn(SetOutFacts facts, string number, DrawingScale scale)
    {
        var canvas = new Canvas(scale.Denominator);
        SetOutPlan.Draw(canvas, facts);
        GoneWalls.Draw(canvas, facts.Course.Gone, facts.At, facts.Part);
        facts.Part?.Draw(canvas, number);
        SetOutBars.Draw(canvas, facts);
        SkewStrips.Draw(canvas, facts);
        var below = NorthArrow.Draw(canvas, facts.Layout.SetOut, facts.Storey.Axes);
        BenchMark.Draw(canvas, below - new Point(0, 9 * canvas.PerPaper));
        Tags.Draw(canvas, facts);
        GoneWalls.Tag(canvas, facts.Course.Gone, facts.At, facts.Part);
        facts.Clouds.Draw(canvas);
        return canvas;
    }
}
