using System.Collections.Immutable;
using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Units;
using IfcCourser.Walls.Reading;

namespace IfcCourser.Walls.Meeting;

/// <summary>Parallel straight walls that stand in the same place: what they share is laid once.</summary>
public static class Overlaps
{
    /// <summary>A wall of which this share lies in another is the same wall drawn twice.</summary>
    private const double SameShare = 0.9;

    /// <summary>Overlaps up to this, mm, are closed like gaps.</summary>
    private const double Least = EncounterFinder.WidestJoined;

    /// <summary>Tells the walls that stand inside another one from the rest; of two equal ones the later goes.</summary>
    public static (ImmutableArray<WallDraft> Walls, ImmutableArray<SkippedWall> Coincident) WithoutCoincident(ImmutableArray<WallDraft> walls, UnitSystem units)
    {
        var kept = walls.ToList();
        var coincident = ImmutableArray.CreateBuilder<SkippedWall>();
        foreach (var wall in walls.Reverse())
        {
            if (kept.Find(other => other != wall && IsInside(wall, other)) is { } host)
            {
                coincident.Add(new SkippedWall(wall.Identity, WallFindings.Pair(FindingCodes.CoincidentWall, wall.Identity, host.Identity, ("over", wall.Run.Size), units), wall.Body, wall.Choice));
                kept.Remove(wall);
            }
        }

        return ([.. kept], coincident.ToImmutable());
    }

    /// <summary>The walls with what two of them share taken off the smaller one, or off the other where that leaves both in one piece.</summary>
    public static (ImmutableArray<WallDraft> Walls, ImmutableArray<Finding> Findings) Apart(ImmutableArray<WallDraft> walls, UnitSystem units)
    {
        var apart = walls.ToArray();
        var findings = ImmutableArray.CreateBuilder<Finding>();
        for (var i = 0; i < apart.Length; i++)
        {
            for (var j = i + 1; j < apart.Length; j++)
            {
                if (Common(apart[i], apart[j]) is not { } common)
                {
                    continue;
                }

                findings.Add(WallFindings.Pair(FindingCodes.WallsOverlap, apart[i].Identity, apart[j].Identity, ("over", common.Bounds.Width), units));
                if (Math.Round(apart[i].Net.Area) < Math.Round(apart[j].Net.Area))
                {
                    (apart[j], apart[i]) = Parted(apart[j], apart[i], common);
                }
                else
                {
                    (apart[i], apart[j]) = Parted(apart[i], apart[j], Seen(apart[j], apart[i], common));
                }
            }
        }

        return ([.. apart], findings.ToImmutable());
    }

    private static bool IsInside(WallDraft wall, WallDraft other) =>
        Common(wall, other) is { } common
        && common.Area >= SameShare * wall.Net.Area
        && Across(wall, other) >= SameShare * wall.Masonry.Size;

    // What they share is given in the elevation of the smaller one.
    private static (WallDraft Larger, WallDraft Smaller) Parted(WallDraft larger, WallDraft smaller, Region common)
    {
        var rest = smaller.Outline.Subtract(common);
        if (IsWhole(rest))
        {
            return (larger, smaller.Cut(rest.Parts[0]));
        }

        var other = larger.Outline.Subtract(Seen(larger, smaller, common));
        if (IsWhole(other))
        {
            return (larger.Cut(other.Parts[0]), smaller);
        }

        // In the middle of both: the smaller wall is laid around the larger one.
        var place = new WallOpening($"{smaller.Identity.GlobalId}/{larger.Identity.GlobalId}", null, larger.Identity.Label, OpeningKind.Void, null, null, default, null);
        return (larger, smaller with { Openings = smaller.Openings.Add(new OpeningDraft(common, GoesThrough: true, place)) });
    }

    // One piece, but for crumbs.
    private static bool IsWhole(Region rest) => !rest.IsEmpty && rest.Parts.Skip(1).Sum(part => part.Area) <= Least * Least;

    // What two walls share, in the elevation of the first; null where it is too little to matter.
    private static Region? Common(WallDraft wall, WallDraft other)
    {
        const double Parallel = 0.004;
        if (wall.Curve is not null || other.Curve is not null
            || Math.Abs(Vector2.Cross(wall.Space.Direction, other.Space.Direction)) > Parallel
            || wall.Height.Common(other.Height) <= Least
            || wall.Run.Common(EncounterFinder.SeenFrom(wall.Space, other.Space, other.Run, along: true)) <= Least
            || Across(wall, other) <= Least)
        {
            return null;
        }

        var common = wall.Net.Intersect(Seen(wall, other, other.Net)).WithoutNarrow(Least);
        return common.IsEmpty ? null : common;
    }

    private static double Across(WallDraft wall, WallDraft other) =>
        wall.Masonry.Common(EncounterFinder.SeenFrom(wall.Space, other.Space, other.Masonry, along: false));

    private static Region Seen(WallDraft wall, WallDraft other, Region region) => region.Moved(
        Vector2.Dot(wall.Space.Direction, other.Space.Direction) < 0,
        wall.Space.Plan(other.Space.Origin.Plan).X,
        other.Space.Origin.Z - wall.Space.Origin.Z);
}
