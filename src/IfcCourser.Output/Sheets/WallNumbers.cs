using IfcCourser.Layouts;

namespace IfcCourser.Output.Sheets;

/// <summary>Places of walls among all walls of the model, from 1: a wall keeps its number whichever walls are laid out.</summary>
internal static class WallNumbers
{
    /// <summary>Numbers in a row that are written out; of longer rows first and last stand for all.</summary>
    private const int WrittenOut = 3;

    public static int Of(Layout layout, WallLayout wall) =>
        1 + layout.Walls.Select(other => other.Identity.StepId).Concat(layout.Skipped.Select(other => other.Identity.StepId))
            .Count(stepId => stepId < wall.Identity.StepId);

    /// <summary>The wall's number as sheets write it, such as W003.</summary>
    public static string Sheet(Layout layout, WallLayout wall) => SheetText.WallNumber(Of(layout, wall));

    /// <summary>The number of a sheet with some walls: W003 W004, or W003-W006 W009.</summary>
    /// <param name="numbers">Ascending.</param>
    public static string Sheet(IEnumerable<int> numbers)
    {
        var runs = new List<List<int>>();
        foreach (var number in numbers)
        {
            if (runs.Count == 0 || runs[^1][^1] != number - 1)
            {
                runs.Add([]);
            }

            runs[^1].Add(number);
        }

        return string.Join(' ', runs.Select(run => run.Count > WrittenOut
            ? $"{SheetText.WallNumber(run[0])}-{SheetText.WallNumber(run[^1])}"
            : string.Join(' ', run.Select(SheetText.WallNumber))));
    }
}
