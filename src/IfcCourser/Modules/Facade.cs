using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Modules;

/// <summary>
/// Walls that stand on each other in one plane: their openings share module lines and stacks. Places are counted along the
/// first wall's run; a wall drawn the other way round is mirrored onto it.
/// </summary>
internal sealed class Facade
{
    /// <summary>Walls further above each other than a floor is thick are not one facade. Common practice, no source.</summary>
    private const double LargestStepMm = 1000;

    /// <summary>Directions that differ by less (sine of the angle) are one.</summary>
    private const double Aligned = 1e-4;

    private Facade(ImmutableArray<int> walls, ImmutableArray<Length> offsets, ImmutableArray<bool> mirrored)
    {
        Walls = walls;
        Offsets = offsets;
        IsMirrored = mirrored;
    }

    /// <summary>Indices of the walls, the first of them giving the run.</summary>
    public ImmutableArray<int> Walls { get; }

    /// <summary>Where the walls' starts lie on the first one's run.</summary>
    private ImmutableArray<Length> Offsets { get; }

    private ImmutableArray<bool> IsMirrored { get; }

    /// <summary>Every wall on its own.</summary>
    public static ImmutableArray<Facade> Single(ImmutableArray<Wall> walls) =>
        [.. Enumerable.Range(0, walls.Length).Select(i => new Facade([i], [Length.Zero], [false]))];

    /// <summary>Walls joined where one stands on the other, over several storeys.</summary>
    public static ImmutableArray<Facade> Stacked(ImmutableArray<Wall> walls)
    {
        var facades = new List<Facade>();
        var isTaken = new bool[walls.Length];
        for (var first = 0; first < walls.Length; first++)
        {
            if (isTaken[first])
            {
                continue;
            }

            var members = new List<int> { first };
            isTaken[first] = true;
            for (var i = 0; i < members.Count; i++)
            {
                foreach (var other in Enumerable.Range(0, walls.Length).Where(other => !isTaken[other] && Stands(walls[members[i]], walls[other])))
                {
                    isTaken[other] = true;
                    members.Add(other);
                }
            }

            facades.Add(Over(walls, [.. members.Order()]));
        }

        return [.. facades];
    }

    /// <summary>A stretch of a member's run on the facade's.</summary>
    public Interval FromWall(int member, Interval run) => IsMirrored[member]
        ? new Interval(Offsets[member] - run.To, Offsets[member] - run.From)
        : new Interval(Offsets[member] + run.From, Offsets[member] + run.To);

    /// <summary>Shifts of jambs on the facade's run as a member sees them.</summary>
    public JambShift ToWall(int member, JambShift shift) => IsMirrored[member] ? new JambShift(-shift.Right, -shift.Left) : shift;

    /// <summary>Where a module line of the facade's run stands on a member's: mirrored, starts of masonry become ends, a joint off.</summary>
    public Length LineToWall(int member, Length line, Length joint) =>
        IsMirrored[member] ? Offsets[member] - line + joint : line - Offsets[member];

    /// <summary>Where a module line of a member's run stands on the facade's.</summary>
    public Length LineFromWall(int member, Length line, Length joint) =>
        IsMirrored[member] ? Offsets[member] - line + joint : line + Offsets[member];

    private static Facade Over(ImmutableArray<Wall> walls, ImmutableArray<int> members)
    {
        var frame = walls[members[0]].Frame;
        Length OffsetOf(int wall) => Length.FromModelMm(Vector2.Dot(walls[wall].Frame.Origin.Plan - frame.Origin.Plan, frame.Direction));
        return new Facade(
            members,
            [.. members.Select((wall, i) => i == 0 ? Length.Zero : OffsetOf(wall))],
            [.. members.Select(wall => Vector2.Dot(walls[wall].Frame.Direction, frame.Direction) < 0)]);
    }

    /// <summary>Whether one of two walls stands on the other, in one plane and over a part of its run.</summary>
    private static bool Stands(Wall a, Wall b)
    {
        var (frame, other) = (a.Frame, b.Frame);
        if (frame.Curve is not null || other.Curve is not null || Math.Abs(Vector2.Cross(frame.Direction, other.Direction)) > Aligned)
        {
            return false;
        }

        var (from, to) = (Middle(other, Length.Zero), Middle(other, other.Length));
        var start = Middle(frame, Length.Zero);
        var across = Math.Abs(Vector2.Dot(from - start, frame.Normal));
        var (s0, s1) = (Vector2.Dot(from - start, frame.Direction), Vector2.Dot(to - start, frame.Direction));
        var step = a.Frame.Origin.Z < b.Frame.Origin.Z ? other.Origin.Z - CrestOf(a) : frame.Origin.Z - CrestOf(b);
        return across < Length.Max(frame.Thickness, other.Thickness).Mm / 2
            && Math.Min(frame.Length.Mm, Math.Max(s0, s1)) > Math.Max(0, Math.Min(s0, s1))
            && step is >= -1 and <= LargestStepMm;
    }

    private static Vector2 Middle(WallFrame frame, Length s) => frame.PointAt(s, frame.Thickness / 2, Length.Zero).Plan;

    private static double CrestOf(Wall wall) => wall.Frame.Origin.Z + wall.Outline.Max(point => point.Z).Mm;
}
