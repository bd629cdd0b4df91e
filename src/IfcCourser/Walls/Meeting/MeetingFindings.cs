using System.Collections.Immutable;
using IfcCourser.Findings;
using IfcCourser.Units;
using IfcCourser.Walls.Reading;

namespace IfcCourser.Walls.Meeting;

/// <summary>What is worth telling about how walls meet.</summary>
public static class MeetingFindings
{
    /// <summary>Gaps up to this, mm, are closed without a word. Common practice, no source.</summary>
    private const double SilentGap = 5;

    /// <summary>Gaps that were closed or left open, and walls that end in another's opening.</summary>
    /// <param name="walls">As drafted.</param>
    /// <param name="all">Every encounter.</param>
    /// <param name="joined">Those that were joined.</param>
    /// <param name="units">Of the catalog.</param>
    public static IEnumerable<Finding> Of(ImmutableArray<WallDraft> walls, ImmutableArray<Encounter> all, ImmutableArray<Encounter> joined, UnitSystem units)
    {
        foreach (var encounter in all.Where(encounter => encounter.Gap > SilentGap))
        {
            if (encounter.Gap <= EncounterFinder.WidestJoined)
            {
                yield return Pair(FindingCodes.GapClosed, walls, encounter, ("a gap of", encounter.Gap), units);
            }
            else if (IsOpen(encounter.First, joined) && IsOpen(encounter.Second, joined))
            {
                yield return Pair(FindingCodes.NearMiss, walls, encounter, ("a gap of", encounter.Gap), units);
            }
        }

        foreach (var tee in joined.Where(encounter => encounter.Kind == JunctionKind.Tee && EndsInOpening(walls[encounter.First.Wall], encounter)))
        {
            yield return Pair(FindingCodes.TeeInOpening, walls, tee, null, units);
        }
    }

    private static Finding Pair(FindingCode code, ImmutableArray<WallDraft> walls, Encounter encounter, (string What, double Mm)? size, UnitSystem units) =>
        WallFindings.Pair(code, walls[encounter.First.Wall].Identity, walls[encounter.Second.Wall].Identity, size, units);

    // An end that meets another wall anyway misses nothing.
    private static bool IsOpen(Arm arm, ImmutableArray<Encounter> joined) =>
        arm.Side == JunctionSide.Along || !joined.Any(other => other.TakesEnd(arm.Wall, arm.Side));

    // More than half of the abutting wall, over more than half of the common height, stands before the void.
    private static bool EndsInOpening(WallDraft host, Encounter tee) => host.Openings.Any(opening =>
    {
        var box = opening.Shape.Bounds;
        var height = tee.Height.ShiftedBy(-host.Space.Origin.Z);
        return opening.GoesThrough
            && new Slab(box.Left, box.Right).Common(tee.First.Stretch) > tee.First.Stretch.Size / 2
            && new Slab(box.Bottom, box.Top).Common(height) > height.Size / 2;
    });
}
