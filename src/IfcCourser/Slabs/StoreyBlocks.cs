using System.Collections.Immutable;
using IfcCourser.Findings;
using IfcCourser.Layouts;
using IfcCourser.Settings;

namespace IfcCourser.Slabs;

/// <summary>The first course of a storey.</summary>
/// <param name="Blocks">At least one.</param>
internal sealed record StoreyBlocks(string? Storey, ImmutableArray<FirstCourseBlock> Blocks)
{
    /// <summary>The storey of that name, or the lowest with blocks.</summary>
    public static Outcome<StoreyBlocks> Of(Layout layout, string? name)
    {
        var storeys = layout.Walls.Where(wall => !wall.Courses.IsEmpty)
            .GroupBy(wall => wall.Identity.Storey, StringComparer.Ordinal)
            .OrderBy(storey => storey.Min(wall => wall.Frame.Origin.Z)).ThenBy(storey => storey.Key, StringComparer.Ordinal)
            .Select(storey => new StoreyBlocks(storey.Key, FirstCourseBlock.Of(storey)))
            .Where(storey => !storey.Blocks.IsEmpty)
            .ToArray();
        if (storeys.Length == 0)
        {
            return Messages.NoFirstCourse();
        }

        if (name is null)
        {
            return storeys[0];
        }

        var names = storeys.Select(storey => storey.Storey).OfType<string>().ToArray();
        return Array.Find(storeys, storey => string.Equals(storey.Storey, name, StringComparison.OrdinalIgnoreCase)) is { } found
            ? found : Messages.NoSuchStorey(name, NearestName.Ranked(name, names));
    }
}
