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
        SlabPlan.HighsAndLows(canvas, facts);
        SlabPlan.Blocks(canvas, facts);
        var outside = new List<BlockBed>();
        foreach (var bed in facts.Survey.Beds)
        {
            if (Inside(canvas, facts, bed) is { } text)
            {
                canvas.Write(text);
            }
            else
            {
                outside.Add(bed);
            }
        }

        SlabPlan.WallNumbers(canvas, facts);
        foreach (var bed in outside)
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
        return (isLevel || isUpright) && Box.Around(loop).Grown(0.5 * canvas.PerPaper).Contains(ItemBox.Of(text, canvas.PerPaper)) ? text : null;
    }

    private static string Thickness(SlabFacts facts, BlockBed bed) => facts.Thickness(bed.Mean) + (bed.IsOutside ? "?" : string.Empty);
}
