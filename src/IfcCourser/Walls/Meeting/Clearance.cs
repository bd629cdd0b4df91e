using System.Collections.Immutable;
using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Units;
using IfcCourser.Walls.Reading;

namespace IfcCourser.Walls.Meeting;

/// <summary>
/// Walls that run into each other although no junction tells which of them gives way, as a partition through a lining: the
/// one that ends there is cut back; where both pass, the thinner one is laid around the other.
/// </summary>
public static class Clearance
{
    /// <summary>What walls share in plan is of no account up to this width, mm, as with gaps.</summary>
    private const double Least = EncounterFinder.WidestJoined;

    /// <summary>The walls apart, and what was cut.</summary>
    /// <param name="walls">Settled.</param>
    /// <param name="joined">Encounters that were settled; walls that meet there share their place by the rules of coursing.</param>
    public static (ImmutableArray<WallDraft> Walls, ImmutableArray<Finding> Findings) Of(ImmutableArray<WallDraft> walls, ImmutableArray<Encounter> joined, UnitSystem units)
    {
        var met = joined.Select(encounter => (encounter.First.Wall, encounter.Second.Wall)).ToHashSet();
        var slants = Enumerable.Range(0, walls.Length).Select(wall => Slants(joined, wall)).ToList();
        var (apart, findings) = (walls.ToArray(), ImmutableArray.CreateBuilder<Finding>());
        for (var i = 0; i < apart.Length; i++)
        {
            for (var j = i + 1; j < apart.Length; j++)
            {
                if (!met.Contains((i, j)) && !met.Contains((j, i)) && Shared(apart[i], apart[j], slants[i], slants[j]) is { } shared)
                {
                    findings.Add(WallFindings.Pair(FindingCodes.WallsOverlap, apart[i].Identity, apart[j].Identity, ("over", Math.Max(shared.OnFirst.Bounds.Width, shared.OnSecond.Bounds.Width)), units));
                    (apart[i], apart[j]) = Parted(apart[i], apart[j], shared);
                }
            }
        }

        return ([.. apart], findings.ToImmutable());
    }

    private static (double Start, double End) Slants(ImmutableArray<Encounter> joined, int wall)
    {
        double At(JunctionSide side) => joined
            .Where(encounter => encounter.Kind != JunctionKind.Tee || encounter.Second.Wall == wall)
            .Select(encounter => encounter.First.Wall == wall ? encounter.First : encounter.Second)
            .FirstOrDefault(arm => arm.Wall == wall && arm.Side == side)?.Slant ?? 0;
        return (At(JunctionSide.Start), At(JunctionSide.End));
    }

    // What the two take of each other's elevation; null where they keep apart.
    private static (Region OnFirst, Region OnSecond)? Shared(WallDraft first, WallDraft second, (double, double) slants, (double, double) otherSlants)
    {
        if (Math.Abs(Vector2.Cross(first.Space.Direction, second.Space.Direction)) < EncounterFinder.Parallel
            || first.Height.Common(second.Height) <= Least
            || (Middle(first) - Middle(second)).Length > first.Run.Size + second.Run.Size + first.Masonry.Size + second.Masonry.Size)
        {
            return null;
        }

        var plan = Footprint(first, slants, first.Space).Intersect(Footprint(second, otherSlants, first.Space)).WithoutNarrow(Least);
        if (plan.IsEmpty)
        {
            return null;
        }

        var corners = plan.Outline.Select(point => first.Space.ToModel(point.X, point.Y, 0).Plan).ToList();
        var (onFirst, onSecond) = (Strip(first, corners), Strip(second, corners));
        var height = Levels(first, onFirst).Intersect(Levels(second, onSecond));
        return height.Size <= Least ? null : (Column(first, onFirst, height), Column(second, onSecond, height));
    }

    private static Vector2 Middle(WallDraft wall) => wall.Space.ToModel(wall.Run.Middle, wall.Masonry.Middle, 0).Plan;

    private static Region Footprint(WallDraft wall, (double Start, double End) slants, WallSpace seenFrom)
    {
        var box = wall.Outline.Bounds;
        Vector2 At(double along, double left) => seenFrom.Plan(wall.Space.ToModel(along, left, 0).Plan);
        return Region.Of([
            [
                At(box.Left + Math.Max(0, slants.Start), wall.Masonry.From),
                At(box.Right - Math.Max(0, -slants.End), wall.Masonry.From),
                At(box.Right - Math.Max(0, slants.End), wall.Masonry.To),
                At(box.Left + Math.Max(0, -slants.Start), wall.Masonry.To),
            ],
        ]);
    }

    private static Slab Strip(WallDraft wall, IEnumerable<Vector2> corners)
    {
        var along = corners.Select(corner => wall.Space.Plan(corner).X).ToList();
        return new Slab(along.Min(), along.Max());
    }

    private static Region Column(WallDraft wall, Slab strip, Slab height) =>
        wall.Net.Intersect(Region.Of(new Rect(strip.From, height.From - wall.Space.Origin.Z, strip.To, height.To - wall.Space.Origin.Z)));

    private static Slab Levels(WallDraft wall, Slab strip)
    {
        var part = Column(wall, strip, wall.Height);
        return part.IsEmpty ? default : new Slab(part.Bounds.Bottom, part.Bounds.Top).ShiftedBy(wall.Space.Origin.Z);
    }

    private static (WallDraft First, WallDraft Second) Parted(WallDraft first, WallDraft second, (Region OnFirst, Region OnSecond) shared)
    {
        var (ofFirst, ofSecond) = (first.Outline.Subtract(shared.OnFirst), second.Outline.Subtract(shared.OnSecond));
        var (canFirst, canSecond) = (IsEnd(ofFirst, first), IsEnd(ofSecond, second));
        return (canFirst, canSecond) switch
        {
            (true, true) when first.Masonry.Size < second.Masonry.Size => (first.Cut(ofFirst.Parts[0]), second),
            (_, true) => (first, second.Cut(ofSecond.Parts[0])),
            (true, _) => (first.Cut(ofFirst.Parts[0]), second),
            _ when first.Masonry.Size < second.Masonry.Size => (Around(first, second, shared.OnFirst), second),
            _ => (first, Around(second, first, shared.OnSecond)),
        };
    }

    private static bool IsEnd(Region rest, WallDraft wall) =>
        !rest.IsEmpty && rest.Parts[0].Area >= rest.Area - (Least * Least)
        && (rest.Bounds.Left > wall.Outline.Bounds.Left || rest.Bounds.Right < wall.Outline.Bounds.Right);

    private static WallDraft Around(WallDraft wall, WallDraft other, Region shared)
    {
        var place = new WallOpening($"{wall.Identity.GlobalId}/{other.Identity.GlobalId}", null, other.Identity.Label, OpeningKind.Void, null, null, default, null);
        return wall with { Openings = wall.Openings.Add(new OpeningDraft(shared, GoesThrough: true, place)) };
    }
}
