using IfcCourser.Coursing;
using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Rules;

namespace IfcCourser.Runs;

/// <summary>Names what of a wall's elevation is left without masonry, and a bed outside its limits.</summary>
internal static class FillFindings
{
    public static IEnumerable<Finding> Of(WallLines lines, IReadOnlyList<ElevationRect> leftOpen, LayoutRules rules)
    {
        var units = rules.Catalog.Units;
        var bed = lines.Bands[0].Bottom;
        if (!rules.Catalog.LevellingBed.Contains(bed))
        {
            yield return new Finding(FindingCodes.BedOutOfRange, Messages.BedOutOfRange(bed, rules.Catalog.LevellingBed, units));
        }

        var gap = lines.Outline.Box.Top - lines.Bands[^1].Top;
        if (gap > rules.Catalog.BedJoint.Nominal)
        {
            yield return new Finding(FindingCodes.OutlineNotFilled, Messages.TopOpen(gap, units), new FindingPlace { Z = lines.Bands[^1].Top });
        }

        if (leftOpen.Count > 0)
        {
            yield return new Finding(
                FindingCodes.OutlineNotFilled,
                Messages.StripOpen(leftOpen.Sum(lines.Outline.AreaWithin)),
                new FindingPlace { S = leftOpen[0].Left, Z = leftOpen[0].Bottom });
        }
    }
}
