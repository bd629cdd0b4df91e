using IfcCourser.Output.Sheets.Panels;
using IfcCourser.Output.Sheets.Slabs;
using IfcCourser.Output.Sheets.Walls;
using IfcCourser.Slabs;
using IfcCourser.Units;

namespace IfcCourser.Output.Sheets;

/// <summary>The first course as it stands: which blocks are sanded down and which are laid again.</summary>
public static class SlabLevelledSheet
{
    public static Sheet Compose(LevelledCourse course)
    {
        var (units, axes) = (course.Layout.Rules.Catalog.Units, new SlabAxes(course.Layout, course.Storey, course.Blocks[0].Block));
        ImmutableArray<DrawingScale> scales = [.. DrawingScale.For(units).Where(scale => scale.Denominator >= SlabPlan.LargestScale)];
        var text = new SheetLengths(units);
        Panel[] panels =
        [
            LevelledPanels.Result(course, text), LevelledPanels.Works(course, text, axes), LevelledPanels.Tolerances(course.Tolerances, text),
            SlabPanels.Legend(
                (SlabText.LegendRight, SlabPanels.Block), (SlabText.LegendSand, SlabPanels.High), (SlabText.LegendRelay, SlabPanels.Low),
                (SlabText.LegendOff, SlabPanels.Word("+" + text.Piece(Length.FromMm(3.175)), Pen.CutLength)), (SlabText.LegendNotRead, SlabPanels.Word("?", Pen.Text))),
            WordList.Of(SheetText.Notes, SlabText.LevelledNotes(course, text)), SlabPanels.Cautions(),
        ];
        var fit = SheetFit.Of(PaperSize.For(units), scales, scale => Drawn(course, axes, text, scale), [.. panels.Where(panel => !panel.Rows.IsEmpty)]);
        return SlabSheets.Assembled(fit, course.Layout, course.Storey, new SlabSheets.Place(3, 1, 1), SlabText.LevelledSheet);
    }

    private static Canvas Drawn(LevelledCourse course, SlabAxes axes, SheetLengths text, DrawingScale scale)
    {
        var canvas = new Canvas(scale.Denominator);
        foreach (var block in course.Blocks)
        {
            var loop = axes.Loop(block.Block);
            if (block.Work is LevelWork.Sand or LevelWork.Relay)
            {
                canvas.Add(block.Work == LevelWork.Sand ? new HatchItem(Pen.CutHatch, [[.. loop]], HatchKind.Cut) : new HatchItem(Pen.LintelHatch, [[.. loop]], HatchKind.Carries));
            }

            SlabPlan.Block(canvas, loop);
        }

        SlabPlan.WallNumbers(canvas, axes, course.Blocks.Select(block => block.Block.Wall));
        foreach (var block in course.Blocks.Where(block => block.Work != LevelWork.Right))
        {
            Plans.PlanTag.Place(canvas, axes.At(block.Block.Middle), block.Work == LevelWork.NotRead ? "?" : LevelledPanels.Off(block, text), block.Work == LevelWork.NotRead ? Pen.Text : Pen.CutLength);
        }

        return canvas;
    }
}
