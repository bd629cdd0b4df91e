using IfcCourser.Output.Sheets.Panels;
using IfcCourser.Slabs;
using IfcCourser.Units;
using static System.FormattableString;

namespace IfcCourser.Output.Sheets.Slabs;

/// <summary>What stands beside the plan of a first course that was read.</summary>
internal static class LevelledPanels
{
    public static Panel Result(LevelledCourse course, SheetLengths text)
    {
        string Count(LevelWork work) => Invariant($"{course.Blocks.Count(block => block.Work == work)}");
        return Table.Of(
            SlabText.Result,
            ["What", "Value"],
            0,
            [
                ["Top of the first course", text.Dimension(course.Level)], ["Heights of", SlabText.Heights(course.Readings.Heights)], ["Blocks right", Count(LevelWork.Right)],
                [SlabText.LegendSand, Count(LevelWork.Sand)], [SlabText.LegendRelay, Count(LevelWork.Relay)], ["Blocks not read", Count(LevelWork.NotRead)],
            ]);
    }

    public static Panel Works(LevelledCourse course, SheetLengths text, SlabAxes axes) => Table.Of(
        SlabText.Works,
        ["Wall", "Block", "Off", "Do"],
        3,
        course.Blocks.Where(block => block.Work is LevelWork.Sand or LevelWork.Relay)
            .Select(block => ImmutableArray.Create(axes.WallNumber(block.Block.Wall), block.Block.Piece.Id, Off(block, text), block.Work == LevelWork.Sand ? "sand down" : "lay again")));

    public static Panel Tolerances(ImmutableArray<ToleranceCheck> checks, SheetLengths text) => Table.Of(
        SlabText.Tolerances,
        ["What", "Is", "May be"],
        0,
        checks.Select(check => ImmutableArray.Create($"{check.What} ({check.Source})", text.Piece(Length.FromMm(check.Value)), text.WithUnit(Length.FromMm(check.Limit)))));

    /// <summary>With its sign.</summary>
    public static string Off(LevelledBlock block, SheetLengths text) => (block.Off < 0 ? "-" : "+") + text.Piece(Length.FromMm(Math.Round(Math.Abs(block.Off), 1)));
}
