using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Walls.Reading;

namespace IfcCourser.Walls.Meeting;

/// <summary>
/// Finds which walls meet, from their bodies: a body that stops on its partner's face, on its axis or on its far side, a
/// mitre and a corner left open all give the same encounter. Curved walls are left out.
/// </summary>
public static class EncounterFinder
{
    /// <summary>Gaps up to this, mm, are near misses; wider ones are no encounter.</summary>
    public const double FarthestGap = 300;

    /// <summary>Gaps up to this, mm, are closed. Common practice, no source.</summary>
    public const double WidestJoined = 20;

    /// <summary>Tops and bottoms that differ by no more than this, mm, count as level.</summary>
    public const double Level = 20;

    /// <summary>A wall that passes another by no more than this, mm, ends there.</summary>
    private const double Stub = 20;

    /// <summary>Walls share at least this height, mm, to meet.</summary>
    private const double LeastHeight = 100;

    /// <summary>Below this sine the runs count as parallel.</summary>
    public const double Parallel = 0.1;

    /// <summary>All encounters, near misses included, by first and second wall.</summary>
    public static ImmutableArray<Encounter> All(ImmutableArray<WallDraft> walls)
    {
        var found = ImmutableArray.CreateBuilder<Encounter>();
        for (var i = 0; i < walls.Length; i++)
        {
            for (var j = i + 1; j < walls.Length; j++)
            {
                if (Between(walls, i, j) is { } encounter)
                {
                    found.Add(encounter);
                }
            }
        }

        return found.ToImmutable();
    }

    private static Encounter? Between(ImmutableArray<WallDraft> walls, int i, int j)
    {
        var (a, b) = (walls[i], walls[j]);
        if (a.Curve is not null || b.Curve is not null)
        {
            return null;
        }

        var height = a.Height.Intersect(b.Height);
        var reach = a.Run.Size + b.Run.Size + a.Across.Size + b.Across.Size + FarthestGap;
        if (height.Size < LeastHeight || (a.Space.ToModel(a.Run.Middle, a.Across.Middle, 0) - b.Space.ToModel(b.Run.Middle, b.Across.Middle, 0)).Plan.Length > reach)
        {
            return null;
        }

        var sine = Math.Abs(Vector2.Cross(a.Space.Direction, b.Space.Direction));
        return sine < Parallel ? InLine(a, b, i, j, height) : Crossed(a, b, i, j, sine, height);
    }

    private static Encounter? Crossed(WallDraft a, WallDraft b, int i, int j, double sine, Slab height)
    {
        var (onA, onB) = (Crossing.On(a.Space, a.Across, b.Space, b.Across), Crossing.On(b.Space, b.Across, a.Space, a.Across));
        if (Approach.Of(a.Run, onA) is not { } toB || Approach.Of(b.Run, onB) is not { } toA)
        {
            return null;
        }

        var first = new Arm(i, toB.Side, Crossing.On(a.Space, a.Masonry, b.Space, b.Masonry), onA, Slant(a, b));
        var second = new Arm(j, toA.Side, Crossing.On(b.Space, b.Masonry, a.Space, a.Masonry), onB, Slant(b, a));
        var gap = Math.Max(toA.Gap, toB.Gap);
        return (toB.Side, toA.Side) switch
        {
            (JunctionSide.Along, JunctionSide.Along) => new Encounter(JunctionKind.Cross, first, second, gap, sine, height),
            (JunctionSide.Along, _) => new Encounter(JunctionKind.Tee, first, second, gap, sine, height),
            (_, JunctionSide.Along) => new Encounter(JunctionKind.Tee, second, first, gap, sine, height),
            _ => new Encounter(JunctionKind.Corner, first, second, gap, sine, height),
        };
    }

    // Less than this, mm, is square.
    private static double Slant(WallDraft wall, WallDraft other)
    {
        const double Square = 1;
        var slant = Crossing.Slant(wall.Space, wall.Masonry, other.Space);
        return Math.Abs(slant) > Square ? slant : 0;
    }

    private static Encounter? InLine(WallDraft a, WallDraft b, int i, int j, Slab height)
    {
        var (run, across) = (SeenFrom(a.Space, b.Space, b.Run, along: true), SeenFrom(a.Space, b.Space, b.Across, along: false));
        var gap = -a.Run.Common(run);
        if (gap is > FarthestGap or < -WidestJoined || a.Across.Common(across) < Math.Min(a.Across.Size, b.Across.Size) / 2)
        {
            return null;
        }

        var side = run.Middle > a.Run.Middle ? JunctionSide.End : JunctionSide.Start;
        var middle = side == JunctionSide.End ? (a.Run.To + run.From) / 2 : (a.Run.From + run.To) / 2;
        var seenFromB = SeenFrom(b.Space, a.Space, new Slab(middle, middle), along: true).From;
        var otherSide = seenFromB > b.Run.Middle ? JunctionSide.End : JunctionSide.Start;
        var (onA, onB) = (new Slab(middle, middle), new Slab(seenFromB, seenFromB));
        return new Encounter(
            JunctionKind.Continued,
            new Arm(i, side, onA, onA, 0),
            new Arm(j, otherSide, onB, onB, 0),
            Math.Max(0, gap),
            0,
            height);
    }

    /// <summary>A range of a parallel wall's coordinate in the coordinates of another.</summary>
    internal static Slab SeenFrom(WallSpace wall, WallSpace other, Slab range, bool along)
    {
        var origin = wall.Plan(other.Origin.Plan);
        var shift = along ? origin.X : origin.Y;
        return Vector2.Dot(wall.Direction, other.Direction) > 0
            ? range.ShiftedBy(shift)
            : new Slab(shift - range.To, shift - range.From);
    }

    private readonly record struct Approach(JunctionSide Side, double Gap)
    {
        // How a run stands to the stretch where the other wall crosses its line.
        public static Approach? Of(Slab run, Slab crossing)
        {
            var (before, after) = (crossing.From - run.From, run.To - crossing.To);
            if (before > Stub && after > Stub)
            {
                return new Approach(JunctionSide.Along, 0);
            }

            var side = after <= before ? JunctionSide.End : JunctionSide.Start;
            var gap = side == JunctionSide.End ? crossing.From - run.To : run.From - crossing.To;
            return gap > FarthestGap ? null : new Approach(side, Math.Max(0, gap));
        }
    }
}
