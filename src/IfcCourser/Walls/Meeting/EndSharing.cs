using System.Collections.Immutable;
using IfcCourser.Walls.Reading;

namespace IfcCourser.Walls.Meeting;

/// <summary>Settles ends where three and more walls come together, so that no place is claimed twice.</summary>
public static class EndSharing
{
    /// <summary>
    /// Where a wall goes on in another, a third that meets both there butts against them; where two walls meet an end from
    /// both sides, they butt against it; an end that turns a corner does not butt as well; doubled encounters are dropped.
    /// </summary>
    public static ImmutableArray<Encounter> Resolve(ImmutableArray<WallDraft> walls, ImmutableArray<Encounter> joined)
    {
        var settled = joined;
        foreach (var through in joined.Where(encounter => encounter.Kind == JunctionKind.Continued))
        {
            settled = [.. settled.Select(other => Butting(Butting(other, through.First), through.Second))];
        }

        var crowded = settled
            .Where(encounter => encounter.Kind == JunctionKind.Corner)
            .SelectMany(encounter => new[] { encounter.First, encounter.Second })
            .GroupBy(arm => (arm.Wall, arm.Side))
            .Where(end => end.Count() > 1)
            .Select(end => end.First());
        foreach (var end in crowded)
        {
            settled = [.. settled.Select(other => Butting(other, end))];
        }

        return [.. settled.Where(encounter => !IsDoubled(walls, encounter, settled) && !ButtsBesideCorner(encounter, settled))];
    }

    // A corner at this end becomes a tee that has the end's wall as its host.
    private static Encounter Butting(Encounter encounter, Arm end)
    {
        if (encounter.Kind != JunctionKind.Corner || !encounter.TakesEnd(end.Wall, end.Side))
        {
            return encounter;
        }

        return encounter with { Kind = JunctionKind.Tee, First = encounter.ArmOf(end.Wall), Second = encounter.OtherThan(end.Wall) };
    }

    // An end that turns a corner does not butt as well, on a lining or leaf beyond the corner.
    private static bool ButtsBesideCorner(Encounter encounter, ImmutableArray<Encounter> all) =>
        encounter.Kind == JunctionKind.Tee
        && all.Any(other => other.Kind == JunctionKind.Corner && other.TakesEnd(encounter.Second.Wall, encounter.Second.Side));

    // A wall that butts at one end on two hosts which continue each other keeps the one that takes more of it.
    private static bool IsDoubled(ImmutableArray<WallDraft> walls, Encounter encounter, ImmutableArray<Encounter> all)
    {
        double Held(Encounter tee) => walls[tee.First.Wall].Run.Common(tee.First.Stretch);
        return encounter.Kind == JunctionKind.Tee && all.Any(other =>
            other.Kind == JunctionKind.Tee
            && other.Second.Wall == encounter.Second.Wall
            && other.Second.Side == encounter.Second.Side
            && AreContinued(all, other.First.Wall, encounter.First.Wall)
            && (Held(other), encounter.First.Wall).CompareTo((Held(encounter), other.First.Wall)) > 0);
    }

    private static bool AreContinued(ImmutableArray<Encounter> all, int a, int b) => all.Any(encounter =>
        encounter.Kind == JunctionKind.Continued
        && ((encounter.First.Wall == a && encounter.Second.Wall == b) || (encounter.First.Wall == b && encounter.Second.Wall == a)));
}
