using IfcCourser.Output.Sheets.Panels;
using IfcCourser.Output.Sheets.Plans;
using IfcCourser.Output.Sheets.Slabs;
using IfcCourser.Output.Sheets.Walls;
using IfcCourser.Slabs;

namespace IfcCourser.Output.Sheets;

/// <summary>A slab as read: how far below the datum it lies at every reading, lines of equal bed, what to take off and what to fill.</summary>
public static class SlabLevelSheet
{
    public static Sheet Compose(SlabSurvey survey)
    {
        var facts = new SlabFacts(survey);
        ImmutableArray<DrawingScale> scales = [.. DrawingScale.For(facts.Units).Where(scale => scale.Denominator >= SlabPlan.LargestScale)];
        Panel[] panels =
        [
            SlabPanels.Result(facts), SlabPanels.Remedies(facts), SlabPanels.Places(facts), SlabPanels.Control(facts), LevelledPanels.Tolerances(facts.Survey.Tolerances, facts.Text),
            SlabPanels.Legend(
                (SlabText.LegendBlock, SlabPanels.Block), (SlabText.LegendHigh, SlabPanels.High), (SlabText.LegendLow, SlabPanels.Low),
                (SlabText.LegendReading, SlabPanels.Word("x " + facts.Thickness(12.7), Pen.Text)), ($"{SlabText.LegendContour}, every {facts.ThicknessWithUnit(SlabContours.Step(facts))}", SlabPanels.Contour)),
            SlabPanels.Notes(facts), SlabPanels.Cautions(),
        ];
        var fit = SheetFit.Of(PaperSize.For(facts.Units), scales, scale => Drawn(facts, scale), [.. panels.Where(panel => !panel.Rows.IsEmpty)]);
        return SlabSheets.Assembled(fit, facts, 1, SlabText.LevelSheet);
    }

    private static Canvas Drawn(SlabFacts facts, DrawingScale scale)
    {
        var canvas = new Canvas(scale.Denominator);
        SlabPlan.HighsAndLows(canvas, facts, []);
        SlabPlan.Blocks(canvas, facts);
        foreach (var reading in facts.Survey.Readings.Levels)
        {
            Cross(canvas, facts.At(reading.Plan));
        }

        SlabContours.Label(canvas, facts);
        SlabPlan.WallNumbers(canvas, facts.Axes, facts.Survey.Beds.Select(bed => bed.Block.Wall));
        foreach (var reading in facts.Survey.Readings.Levels)
        {
            PlanTag.Place(canvas, facts.At(reading.Plan), facts.Thickness(facts.Survey.Datum - reading.Height), Pen.Text);
        }

        SlabContours.Draw(canvas, facts);
        return canvas;
    }

    private static void Cross(Canvas canvas, Point at)
    {
        var half = 0.7 * canvas.PerPaper;
        canvas.Add(new LineItem(Pen.Dimension, at - new Point(half, half), at + new Point(half, half)));
        canvas.Add(new LineItem(Pen.Dimension, at - new Point(half, -half), at + new Point(half, -half)));
        canvas.Take(Box.At(at, 2 * half, 2 * half));
    }
}
