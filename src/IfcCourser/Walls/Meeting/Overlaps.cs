using System.Collections.Immutable;
using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Walls.Reading;

namespace IfcCourser.Walls.Meeting;

/// <summary>Parallel walls that stand in the same place.</summary>
public static class Overlaps
{
    /// <summary>A wall of which this share lies in another is the same wall drawn twice.</summary>
    private const double SameShare = 0.9;

    /// <summary>Overlaps up to this, mm, are closed like gaps.</summary>
    private const double Least = EncounterFinder.WidestJoined;

    /// <summary>Tells the walls that stand inside another one from the rest; of two equal ones the later goes.</summary>
    public static (ImmutableArray<WallDraft> Kept, ImmutableArray<SkippedWall> Coincident) Sort(ImmutableArray<WallDraft> walls)
    {
        var kept = walls.ToList();
        var coincident = ImmutableArray.CreateBuilder<SkippedWall>();
        foreach (var wall in walls.Reverse())
        {
            if (kept.Find(other => other != wall && IsInside(wall, other)) is { } host)
            {
                coincident.Add(new SkippedWall(wall.Identity, WallFindings.Pair(FindingCodes.CoincidentWall, wall.Identity, host.Identity, wall.Run.Size), wall.Body, wall.Choice));
                kept.Remove(wall);
            }
        }

        return ([.. kept], coincident.ToImmutable());
    }

    /// <summary>Overlaps of a part of two runs.</summary>
    public static IEnumerable<Finding> Findings(ImmutableArray<WallDraft> walls)
    {
        for (var i = 0; i < walls.Length; i++)
        {
            for (var j = i + 1; j < walls.Length; j++)
            {
                if (Common(walls[i], walls[j]) is { } common)
                {
                    yield return WallFindings.Pair(FindingCodes.WallsOverlap, walls[i].Identity, walls[j].Identity, common.Run);
                }
            }
        }
    }

    private static bool IsInside(WallDraft wall, WallDraft other) =>
        Common(wall, other) is { } common
        && common.Run >= SameShare * wall.Run.Size
        && common.Across >= SameShare * wall.Masonry.Size
        && common.Height >= SameShare * wall.Height.Size;

    // What two walls share along the run, across and in height; null where it is too little to matter.
    private static (double Run, double Across, double Height)? Common(WallDraft a, WallDraft b)
    {
        const double Parallel = 0.004;
        if (Math.Abs(Vector2.Cross(a.Space.Direction, b.Space.Direction)) > Parallel)
        {
            return null;
        }

        var run = a.Run.Common(EncounterFinder.SeenFrom(a.Space, b.Space, b.Run, along: true));
        var across = a.Masonry.Common(EncounterFinder.SeenFrom(a.Space, b.Space, b.Masonry, along: false));
        var height = a.Height.Common(b.Height);
        return run > Least && across > Least && height > Least ? (run, across, height) : null;
    }
}
