using IfcCourser.Output.Sheets.Panels;
using IfcCourser.Output.Sheets.Plans;
using IfcCourser.Output.Sheets.Slabs;
using IfcCourser.Output.Sheets.Walls;
using IfcCourser.Slabs;

namespace IfcCourser.Output.Sheets;

/// <summary>The first course with the thickness of the bed under every block.</summary>
public static class SlabCourseSheet
{
    private const double TextHeight = 2.5;

    /// <summary>Around a figure, without hatch, paper millimetres.</summary>
    private const double Clear = 0.4;

    public static Sheet Compose(SlabSurvey survey)
    {
        var facts = new SlabFacts(survey);
        ImmutableArray<DrawingScale> scales = [.. DrawingScale.For(facts.Units).Where(scale => scale.Denominator >= SlabPlan.LargestScale)];
        Panel[] panels =
        [
            SlabPanels.Result(facts), SlabPanels.Places(facts), SlabPanels.Bars(facts),
            SlabPanels.Legend(
                (SlabText.LegendBed, SlabPanels.Word(facts.Thickness(12.7), Pen.CutLength)), (SlabText.LegendHigh, SlabPanels.High), (SlabText.LegendLow, SlabPanels.Low),
                (SlabText.LegendBeyond, SlabPanels.Word(facts.Thickness(12.7) + "?", Pen.CutLength))),
            SlabPanels.Notes(facts), SlabPanels.Cautions(),
        ];
        var fit = SheetFit.Of(PaperSize.For(facts.Units), scales, scale => Drawn(facts, scale), [.. panels.Where(panel => !panel.Rows.IsEmpty)]);
        return SlabSheets.Assembled(fit, facts, 2, SlabText.CourseSheet);
    }

    private static Canvas Drawn(SlabFacts facts, DrawingScale scale)
    {
        var canvas = new Canvas(scale.Denominator);
        var figures = facts.Survey.Beds.Select(bed => (Bed: bed, Inside: Inside(canvas, facts, bed))).ToList();
        var inside = figures.Select(figure => figure.Inside).OfType<TextItem>().ToList();
        SlabPlan.HighsAndLows(canvas, facts, [.. inside.Select(text => ItemBox.Of(text, canvas.PerPaper).Grown(Clear * canvas.PerPaper))]);
        SlabPlan.Blocks(canvas, facts);
        foreach (var text in inside)
        {
            canvas.Write(text);
        }

        SlabPlan.WallNumbers(canvas, facts.Axes, facts.Survey.Beds.Select(bed => bed.Block.Wall));
        foreach (var (bed, _) in figures.Where(figure => figure.Inside is null))
        {
            PlanTag.Place(canvas, facts.At(bed.Block.Middle), Thickness(facts, bed), Pen.CutLength);
        }

        return canvas;
    }

    /// <summary>Along the block, where that lies with the paper; null where there is no room.</summary>
    private static TextItem? Inside(Canvas canvas, SlabFacts facts, BlockBed bed)
    {
        var loop = facts.Loop(bed.Block);
        var along = loop[1] - loop[0];
        var (isLevel, isUpright) = (Math.Abs(along.Y) < canvas.PerPaper, Math.Abs(along.X) < canvas.PerPaper);
        var text = new TextItem(Pen.CutLength, facts.At(bed.Block.Middle), Thickness(facts, bed), TextHeight, TextAnchor.Middle, isUpright ? 90 : 0);
        return (isLevel || isUpright) && Box.Around(loop).Contains(ItemBox.Of(text, canvas.PerPaper)) ? text : null;
    }

    private static string Thickness(SlabFacts facts, BlockBed bed) => facts.Thickness(bed.Mean) + (bed.IsOutside ? "?" : string.Empty);
}
