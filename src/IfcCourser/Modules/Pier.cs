using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Units;

namespace IfcCourser.Modules;

/// <summary>Masonry between two openings that stand beside each other, or between one and a wall's end.</summary>
/// <param name="Rect">Its elevation.</param>
/// <param name="Left">The opening to its left; null at the wall's start.</param>
/// <param name="Right">The opening to its right; null at the wall's end.</param>
internal sealed record Pier(ElevationRect Rect, OpeningLayout? Left, OpeningLayout? Right)
{
    /// <summary>A wall's piers, from the bottom up and from left to right; where its outline is raked only what is level.</summary>
    /// <param name="outline">The wall's outline.</param>
    /// <param name="openings">Its placed openings.</param>
    public static ImmutableArray<Pier> Of(ElevationOutline outline, ImmutableArray<OpeningLayout> openings)
    {
        var placed = openings.Where(opening => opening.Interrupts).OrderBy(opening => opening.Placed.Left).ThenBy(opening => opening.Placed.Right).ToList();
        var heights = placed.SelectMany(opening => new[] { opening.Placed.Bottom, opening.Placed.Top })
            .Where(height => height > outline.Box.Bottom && height < outline.Box.Top)
            .Append(outline.Box.Bottom).Append(outline.Box.Top)
            .Distinct().Order().ToList();
        var piers = new List<Pier>();
        foreach (var (bottom, top) in heights.Zip(heights.Skip(1)))
        {
            var row = placed.Where(opening => opening.Placed.Bottom < top && opening.Placed.Top > bottom).ToList();
            foreach (var pier in InRow(outline, row, bottom, top))
            {
                var below = piers.FindIndex(other => other.Rect == pier.Rect with { Bottom = other.Rect.Bottom, Top = pier.Rect.Bottom });
                if (below >= 0)
                {
                    piers[below] = piers[below] with { Rect = piers[below].Rect with { Top = top } };
                }
                else
                {
                    piers.Add(pier);
                }
            }
        }

        return [.. piers];
    }

    private static IEnumerable<Pier> InRow(ElevationOutline outline, List<OpeningLayout> row, Length bottom, Length top)
    {
        OpeningLayout? left = null;
        var from = outline.Box.Left;
        foreach (var right in row.Append(null))
        {
            var rect = new ElevationRect(from, right?.Placed.Left ?? outline.Box.Right, bottom, top);
            if (row.Count > 0 && rect.Width > Length.Zero
                && outline.Within(rect) is [{ Points: null } part] && part.Box.Width == rect.Width)
            {
                yield return new Pier(rect, left, right);
            }

            (left, from) = right is null || right.Placed.Right < from ? (left, from) : (right, right.Placed.Right);
        }
    }
}
