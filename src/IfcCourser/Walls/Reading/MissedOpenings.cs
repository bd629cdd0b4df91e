using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Ifc;

namespace IfcCourser.Walls.Reading;

/// <summary>What is said of openings that take nothing of a wall's masonry.</summary>
public static class MissedOpenings
{
    /// <summary>An opening in other layers is that of the masonry where it covers this share of it.</summary>
    private const double SameVoid = 0.5;

    /// <summary>Findings for those that some person should look at: not for openings of the whole wall that lie in another part, nor for the share that other layers have of a void.</summary>
    /// <param name="missing">Openings with their bodies, wall coordinates.</param>
    /// <param name="openings">What does take masonry.</param>
    /// <param name="across">The whole wall.</param>
    public static IEnumerable<Finding> Of(
        IEnumerable<(IfcOpeningRecord Record, Solid Solid)> missing, IReadOnlyCollection<OpeningDraft> openings, Slab across)
    {
        foreach (var (record, solid) in missing)
        {
            if (solid.IsEmpty)
            {
                yield return WallFindings.Opening(FindingCodes.OpeningNotRead, OpeningDrafts.Described(record));
            }
            else if (!record.IsInherited && !IsShareOf(openings, Projection.Elevation(solid, across.From, across.To)))
            {
                yield return WallFindings.Opening(FindingCodes.OpeningMissesWall, OpeningDrafts.Described(record));
            }
        }
    }

    private static bool IsShareOf(IReadOnlyCollection<OpeningDraft> openings, Region shape) =>
        !shape.IsEmpty && openings.Any(opening => opening.Shape.Intersect(shape).Area >= SameVoid * shape.Area);
}
