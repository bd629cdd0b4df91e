using System.Collections.Immutable;

namespace IfcCourser.Geometry;

/// <summary>A stretch of a loop that runs along a circle in short chords.</summary>
/// <param name="Centre">Of the circle.</param>
/// <param name="Radius">mm.</param>
/// <param name="Turn">From its first to its last corner, radians; positive to the left.</param>
/// <param name="Corners">Those of the loop that lie on the circle, in the loop's order.</param>
public sealed record LoopArc(Vector2 Centre, double Radius, double Turn, ImmutableArray<Vector2> Corners)
{
    /// <summary>Corners that turn by more, radians (15 degrees), are corners of a polygon.</summary>
    private const double MostPerChord = Math.PI / 12;

    /// <summary>Corners that turn by less are noise.</summary>
    private const double LeastPerChord = 1e-3;

    /// <summary>Fewer corners than this make no circle.</summary>
    private const int Fewest = 3;

    /// <summary>The arcs of a closed loop, in its order; an arc ends where the loop turns the other way, sharply or not at all.</summary>
    public static ImmutableArray<LoopArc> In(ImmutableArray<Vector2> loop)
    {
        var turns = loop.Select((point, i) => Turning(loop[(i + loop.Length - 1) % loop.Length], point, loop[(i + 1) % loop.Length])).ToList();
        var start = turns.FindIndex(turn => Side(turn) == 0);
        var arcs = ImmutableArray.CreateBuilder<LoopArc>();
        var chain = new List<int>();
        for (var k = 0; k <= loop.Length; k++)
        {
            var i = (Math.Max(start, 0) + k) % loop.Length;
            var goesOn = k < loop.Length && Side(turns[i]) != 0 && (chain.Count == 0 || Side(turns[i]) == Side(turns[chain[0]]));
            if (!goesOn && chain.Count >= Fewest)
            {
                ImmutableArray<int> whole = [(chain[0] + loop.Length - 1) % loop.Length, .. chain, (chain[^1] + 1) % loop.Length];
                arcs.Add(Through([.. whole.Select(at => loop[at])], chain.Sum(at => turns[at])));
            }

            chain = goesOn ? [.. chain, i] : k < loop.Length && Side(turns[i]) != 0 ? [i] : [];
        }

        return arcs.ToImmutable();
    }

    private static int Side(double turn) => Math.Abs(turn) is > LeastPerChord and < MostPerChord ? Math.Sign(turn) : 0;

    private static double Turning(Vector2 before, Vector2 at, Vector2 after) =>
        Math.Atan2(Vector2.Cross(at - before, after - at), Vector2.Dot(at - before, after - at));

    // The circle through the first, the middle and the last corner that the loop turns at. The chords before and after them
    // may lead to its ends, or away on a straight line.
    private static LoopArc Through(ImmutableArray<Vector2> corners, double turn)
    {
        const double OnCircle = 1;
        var (a, u, v) = (corners[1], corners[corners.Length / 2] - corners[1], corners[^2] - corners[1]);
        var twice = 2 * Vector2.Cross(u, v);
        var (uu, vv) = (Vector2.Dot(u, u), Vector2.Dot(v, v));
        var toCentre = new Vector2(((v.Y * uu) - (u.Y * vv)) / twice, ((u.X * vv) - (v.X * uu)) / twice);
        var (centre, radius) = (a + toCentre, toCentre.Length);
        bool IsOn(Vector2 point) => Math.Abs((point - centre).Length - radius) <= OnCircle;
        var on = corners[(IsOn(corners[0]) ? 0 : 1)..(IsOn(corners[^1]) ? corners.Length : corners.Length - 1)];
        var (from, to) = (on[0] - centre, on[^1] - centre);
        var between = Math.Atan2(Vector2.Cross(from, to), Vector2.Dot(from, to));
        return new LoopArc(centre, radius, turn + Math.IEEERemainder(between - turn, 2 * Math.PI), on);
    }
}
