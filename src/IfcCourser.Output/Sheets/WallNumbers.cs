using IfcCourser.Layouts;

namespace IfcCourser.Output.Sheets;

/// <summary>Places of walls among all walls of the model, from 1: a wall keeps its number whichever walls are laid out.</summary>
internal static class WallNumbers
{
    public static int Of(Layout layout, WallLayout wall) =>
        1 + layout.Walls.Select(other => other.Identity.StepId).Concat(layout.Skipped.Select(other => other.Identity.StepId))
            .Count(stepId => stepId < wall.Identity.StepId);

    /// <summary>The wall's sheet, such as W003.</summary>
    public static string Sheet(Layout layout, WallLayout wall) => SheetText.WallNumber(Of(layout, wall));
}
