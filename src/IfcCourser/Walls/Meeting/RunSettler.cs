using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Walls.Reading;

namespace IfcCourser.Walls.Meeting;

/// <summary>
/// Trims and extends masonry runs to each other over their common height: at a corner to the other's outer face, at a tee to
/// the host's near face, in line to the middle of the gap. Where walls are not square an end reaches as far as its longer
/// face, whose pieces are cut on the slant.
/// </summary>
public static class RunSettler
{
    /// <summary>The drafts with their outlines settled.</summary>
    public static ImmutableArray<WallDraft> Settle(ImmutableArray<WallDraft> walls, ImmutableArray<Encounter> encounters)
    {
        var outlines = walls.Select(wall => wall.Outline).ToArray();
        var ends = encounters
            .SelectMany(encounter => new[] { encounter.First, encounter.Second }.Select(arm => (
                Arm: arm, Place: EndOf(encounter, arm), Height: encounter.Height.ShiftedBy(-walls[arm.Wall].Space.Origin.Z))))
            .ToList();
        foreach (var (arm, place, height) in ends)
        {
            if (place is { } to)
            {
                var meant = new Slab(arm.Body.From - EncounterFinder.WidestJoined, arm.Body.To + EncounterFinder.WidestJoined);
                outlines[arm.Wall] = Extended(outlines[arm.Wall], arm.Side == JunctionSide.End, to, meant, height);
            }
        }

        // All are trimmed last: what stops an end holds against what the same end is meant to reach behind it.
        foreach (var (arm, place, height) in ends)
        {
            if (place is { } at)
            {
                outlines[arm.Wall] = Trimmed(outlines[arm.Wall], arm.Side == JunctionSide.End, at, height);
            }
        }

        return [.. walls.Select((wall, i) => wall with { Outline = outlines[i] })];
    }

    private static double? EndOf(Encounter encounter, Arm arm) => (encounter.Kind, arm.Side) switch
    {
        (_, JunctionSide.Along) or (JunctionKind.Cross, _) => null,
        (JunctionKind.Tee, _) => arm == encounter.First ? null : arm.Near,
        (_, JunctionSide.Start) => arm.Stretch.From,
        _ => arm.Stretch.To,
    };

    // Ends that stop in the other wall, or short of it by what is joined, are meant to meet it: every upright edge there goes on
    // to the place, as high as it is.
    private static Region Extended(Region outline, bool isEnd, double place, Slab meant, Slab height)
    {
        const double Upright = 0.5;
        var loop = outline.Outline;
        var whole = outline;
        for (var i = 0; i < loop.Length; i++)
        {
            // Counter-clockwise, the edges at the end go up and those at the start go down.
            var (lower, upper) = isEnd ? (loop[i], loop[(i + 1) % loop.Length]) : (loop[(i + 1) % loop.Length], loop[i]);
            var isShort = isEnd ? lower.X < place : lower.X > place;
            if (upper.Y > lower.Y && Math.Abs(upper.X - lower.X) <= Upright && isShort && lower.X >= meant.From && lower.X <= meant.To)
            {
                var bottom = height.From <= lower.Y + EncounterFinder.Level ? lower.Y : height.From;
                var top = height.To >= upper.Y - EncounterFinder.Level ? upper.Y : height.To;
                whole = whole.Union(Region.Of(new Rect(Math.Min(lower.X, place), bottom, Math.Max(lower.X, place), top)));
            }
        }

        return whole;
    }

    private static Region Trimmed(Region outline, bool isEnd, double place, Slab height)
    {
        var all = outline.Bounds;
        if (isEnd ? place >= all.Right : place <= all.Left)
        {
            return outline;
        }

        var beyond = outline.Intersect(Region.Of(isEnd ? new Rect(place, all.Bottom, all.Right, all.Top) : new Rect(all.Left, all.Bottom, place, all.Top)));
        if (beyond.IsEmpty)
        {
            return outline;
        }

        var bottom = height.From <= beyond.Bounds.Bottom + EncounterFinder.Level ? all.Bottom - 1 : height.From;
        var top = height.To >= beyond.Bounds.Top - EncounterFinder.Level ? all.Top + 1 : height.To;
        var cut = outline.Subtract(Region.Of(isEnd ? new Rect(place, bottom, all.Right + 1, top) : new Rect(all.Left - 1, bottom, place, top)));
        return cut.IsEmpty ? cut : cut.Parts[0];
    }
}
