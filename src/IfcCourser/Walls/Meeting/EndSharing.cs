using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Walls.Reading;

namespace IfcCourser.Walls.Meeting;

/// <summary>
/// Settles ends where three and more walls come together, so that no place is claimed twice. Encounters at different heights
/// don't disturb each other.
/// </summary>
public static class EndSharing
{
    /// <summary>A corner this many times as high as the others at its end stays one, and they butt against it.</summary>
    private const double Dominates = 2;

    /// <summary>A host that stands before less than this of an abutting wall, mm, does not stop it.</summary>
    private const double LeastHeld = 5;

    /// <summary>
    /// Where a wall goes on in another, a third that meets both there butts against them; where two walls meet an end from
    /// both sides, they butt against it, and where they meet it from one side, all but the outermost; an end that turns a
    /// corner does not butt as well, nor one on a host behind the one that stops it; doubled encounters are dropped.
    /// </summary>
    public static ImmutableArray<Encounter> Resolve(ImmutableArray<WallDraft> walls, ImmutableArray<Encounter> joined)
    {
        var settled = joined.Select(encounter => encounter.Kind == JunctionKind.Corner && Host(walls, encounter, joined) is { } host
            ? encounter with { Kind = JunctionKind.Tee, First = host, Second = encounter.OtherThan(host.Wall) }
            : encounter).ToImmutableArray();
        return [.. settled.Where(encounter => !IsDoubled(walls, encounter, settled) && !ButtsBesideCorner(encounter, settled) && !IsStoppedBefore(walls, encounter, settled))];
    }

    // The arm of a corner that the other butts against: one whose wall goes on in another, else one that others meet from the
    // other side or outside; of two such arms the thicker wall's.
    private static Arm? Host(ImmutableArray<WallDraft> walls, Encounter corner, ImmutableArray<Encounter> all)
    {
        bool GoesOn(Arm arm) => Others(arm).Any(other => other.Kind == JunctionKind.Continued);
        bool IsCrowded(Arm arm) => Others(arm).Any(other => other.Kind == JunctionKind.Corner && Crowds(walls, arm, corner, other));
        IEnumerable<Encounter> Others(Arm arm) => all.Where(other => other != corner && other.TakesEnd(arm.Wall, arm.Side) && AreLevel(corner, other));
        return new[] { corner.First, corner.Second }
            .Where(arm => GoesOn(arm) || IsCrowded(arm))
            .OrderByDescending(GoesOn)
            .ThenByDescending(arm => Math.Round(walls[arm.Wall].Masonry.Size))
            .ThenBy(arm => arm.Wall)
            .FirstOrDefault();
    }

    // Of walls that leave an end to the same side, the outermost turns the corner: the others are linings and leaves inside it.
    private static bool Crowds(ImmutableArray<WallDraft> walls, Arm end, Encounter corner, Encounter other) =>
        SideOf(walls, end, corner) == SideOf(walls, end, other)
            ? Reach(end, corner) < Reach(end, other)
            : corner.Height.Size < Dominates * other.Height.Size;

    // To the left (1) or right (-1) of the end's wall.
    private static int SideOf(ImmutableArray<WallDraft> walls, Arm end, Encounter corner)
    {
        var other = corner.OtherThan(end.Wall);
        var away = walls[other.Wall].Space.Direction * (other.Side == JunctionSide.Start ? 1 : -1);
        return Math.Sign(Vector2.Cross(walls[end.Wall].Space.Direction, away));
    }

    private static double Reach(Arm end, Encounter corner)
    {
        var arm = corner.ArmOf(end.Wall);
        return Math.Round(end.Side == JunctionSide.End ? arm.Stretch.To : -arm.Stretch.From);
    }

    // Over at least half of the lower one's height.
    private static bool AreLevel(Encounter a, Encounter b) =>
        a.Height.Common(b.Height) >= Math.Min(a.Height.Size, b.Height.Size) / 2;

    // An end that turns a corner does not butt as well, on a lining or leaf beyond the corner.
    private static bool ButtsBesideCorner(Encounter encounter, ImmutableArray<Encounter> all) =>
        encounter.Kind == JunctionKind.Tee
        && all.Any(other => other.Kind == JunctionKind.Corner
            && other.TakesEnd(encounter.Second.Wall, encounter.Second.Side)
            && AreLevel(encounter, other));

    // A wall that butts at one end on two hosts which continue each other keeps the one that stands farther out; where both stand
    // alike, the one that takes more of it.
    private static bool IsDoubled(ImmutableArray<WallDraft> walls, Encounter encounter, ImmutableArray<Encounter> all)
    {
        double Held(Encounter tee) => Math.Round(walls[tee.First.Wall].Run.Common(tee.First.Stretch));
        double Out(Encounter tee) => Held(tee) < LeastHeld ? double.NegativeInfinity : Math.Round(tee.Second.Side == JunctionSide.End ? -tee.Second.Near : tee.Second.Near);
        return encounter.Kind == JunctionKind.Tee && all.Any(other =>
            other.Kind == JunctionKind.Tee
            && other.Second.Wall == encounter.Second.Wall
            && other.Second.Side == encounter.Second.Side
            && AreLevel(encounter, other)
            && AreContinued(all, other.First.Wall, encounter.First.Wall)
            && (Out(other), Held(other), encounter.First.Wall).CompareTo((Out(encounter), Held(encounter), other.First.Wall)) > 0);
    }

    // An end that a host stops, as a lining in front of a wall, does not reach the host behind that one.
    private static bool IsStoppedBefore(ImmutableArray<WallDraft> walls, Encounter encounter, ImmutableArray<Encounter> all)
    {
        double Short(Encounter tee) => tee.Second.Side == JunctionSide.End ? -tee.Second.Near : tee.Second.Near;
        bool Stops(Encounter tee) =>
            walls[tee.First.Wall].Run.Common(tee.First.Stretch) > tee.First.Stretch.Size - LeastHeld
            && tee.Height.From <= encounter.Height.From + EncounterFinder.Level
            && tee.Height.To >= encounter.Height.To - EncounterFinder.Level;
        return encounter.Kind == JunctionKind.Tee && all.Any(other =>
            other.Kind == JunctionKind.Tee
            && other.Second.Wall == encounter.Second.Wall
            && other.Second.Side == encounter.Second.Side
            && Short(other) > Short(encounter) + LeastHeld
            && Stops(other));
    }

    private static bool AreContinued(ImmutableArray<Encounter> all, int a, int b) => all.Any(encounter =>
        encounter.Kind == JunctionKind.Continued
        && ((encounter.First.Wall == a && encounter.Second.Wall == b) || (encounter.First.Wall == b && encounter.Second.Wall == a)));
}
