using System.Collections.Immutable;
using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Runs;

/// <summary>
/// Openings that are no rectangles: courses stop at a rectangle around them; what the mason closes between it and the void's
/// outline is told.
/// </summary>
internal static class ArchFindings
{
    /// <summary>Points of outlines that miss a corner or a jamb by less lie on it.</summary>
    private static readonly Length _dust = Length.FromMm(0.01);

    /// <param name="openings">A wall's openings.</param>
    /// <param name="rules">Units of the messages.</param>
    public static IEnumerable<Finding> Of(ImmutableArray<OpeningLayout> openings, LayoutRules rules)
    {
        foreach (var opening in openings.Where(opening => opening.Interrupts))
        {
            if (opening.Outline is { } outline)
            {
                var (box, name) = (new ElevationOutline(outline).Box, OpeningFindings.NameOf(opening));
                var open = (opening.Placed.Width.Mm * opening.Placed.Height.Mm / 1e6) - new ElevationOutline(outline).Area;
                yield return new Finding(
                    FindingCodes.OpeningNotRectangular,
                    HasCorner(outline, box.Left, box.Bottom) && HasCorner(outline, box.Right, box.Bottom)
                        ? Messages.OpeningArched(name, opening.Placed.Width, opening.Placed.Height, box.Top - Springing(outline, box), open, rules.Catalog.Units)
                        : Messages.OpeningRound(name, opening.Placed.Width, opening.Placed.Height, open, rules.Catalog.Units),
                    OpeningFindings.PlaceOf(opening));
            }
        }
    }

    private static bool HasCorner(ImmutableArray<ElevationPoint> outline, Length s, Length z) =>
        outline.Any(point => Length.Abs(point.S - s) <= _dust && Length.Abs(point.Z - z) <= _dust);

    /// <summary>Where the outline leaves the first of its jambs.</summary>
    private static Length Springing(ImmutableArray<ElevationPoint> outline, ElevationRect box)
    {
        Length HighestAt(Length s) => outline.Where(point => Length.Abs(point.S - s) <= _dust).Max(point => point.Z);
        return Length.Min(HighestAt(box.Left), HighestAt(box.Right));
    }
}
