using IfcCourser.Coursing;
using IfcCourser.Findings;
using IfcCourser.Geometry;

namespace IfcCourser.Runs;

/// <summary>Names what of a wall's courses is left without masonry.</summary>
internal static class FillFindings
{
    public static IEnumerable<Finding> Of(WallLines lines, IReadOnlyList<ElevationRect> leftOpen)
    {
        if (leftOpen.Count > 0)
        {
            yield return new Finding(
                FindingCodes.OutlineNotFilled,
                Messages.StripOpen(leftOpen.Sum(lines.Outline.AreaWithin)),
                new FindingPlace { S = leftOpen[0].Left, Z = leftOpen[0].Bottom });
        }
    }
}
