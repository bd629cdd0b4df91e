using System.Collections.Immutable;

namespace IfcCourser.Coursing;

/// <summary>Chooses of the rows gathered for a wall's segments those that cost least together, exactly where the search does not grow too large.</summary>
/// <param name="segments">The wall's segments, numbered from below; equal ones share their rows.</param>
/// <param name="pairs">Segments whose joints may come near each other.</param>
/// <param name="solvers">What laps cost, and the count of what is compared.</param>
internal sealed class RowChoice(ImmutableArray<SegmentRows> segments, ImmutableArray<(int Lower, int Upper)> pairs, BondSolvers solvers)
{
    private readonly Dictionary<(SegmentRows Lower, SegmentRows Upper), List<List<long>>> _known = [];

    private readonly ILookup<int, (int Other, (int Lower, int Upper) Pair)> _beside = pairs
        .SelectMany(pair => new[] { (Segment: pair.Lower, Other: pair.Upper, Pair: pair), (Segment: pair.Upper, Other: pair.Lower, Pair: pair) })
        .ToLookup(side => side.Segment, side => (side.Other, side.Pair));

    /// <summary>The best wall that the gathered rows make.</summary>
    /// <param name="best">A good wall: its rows are always among those chosen from.</param>
    /// <param name="cost">What it costs.</param>
    public int[] Best(int[] best, long cost)
    {
        var allowed = Allowed(best, Hopeful(best, cost));
        if (allowed.All(rows => rows.Length == 1))
        {
            return best;
        }

        var single = allowed.Select((rows, s) => rows.Select(row => segments[s].Rows[row].Cost).ToArray()).ToList();
        var costs = pairs.Select(pair => new LeastSum.Pair(pair.Lower, pair.Upper, Part(LapsOf(pair), allowed[pair.Lower], allowed[pair.Upper])));
        solvers.Effort.SpendEntries(LeastSum.Entries([.. allowed.Select(rows => rows.Length)], pairs));
        var chosen = LeastSum.Solve(single, costs);
        return [.. chosen.Select((row, s) => allowed[s][row])];
    }

    /// <summary>
    /// By segment and row, what the wall costs more from its foot, or from its top, up to the row than up to the segment's best one. Segments met on two ways
    /// count twice; told as differences, costs do not grow from course to course.
    /// </summary>
    /// <param name="isFromBelow">Whether from the foot.</param>
    public long[][] Reaching(bool isFromBelow)
    {
        var costs = new long[segments.Length][];
        foreach (var s in isFromBelow ? Enumerable.Range(0, costs.Length) : Enumerable.Range(0, costs.Length).Reverse())
        {
            costs[s] = [.. segments[s].Rows.Select(row => row.Cost)];
            foreach (var (other, pair) in _beside[s].Where(side => isFromBelow ? side.Other < s : side.Other > s))
            {
                var laps = LapsOf(pair);
                solvers.Effort.SpendComparisons((long)costs[s].Length * costs[other].Length);
                for (var row = 0; row < costs[s].Length; row++)
                {
                    var least = long.MaxValue;
                    for (var beside = 0; beside < costs[other].Length; beside++)
                    {
                        least = Math.Min(least, costs[other][beside] + (pair.Lower == s ? laps[row][beside] : laps[beside][row]));
                    }

                    costs[s][row] += least;
                }
            }

            var best = costs[s].Min();
            costs[s] = [.. costs[s].Select(cost => cost - best)];
        }

        return costs;
    }

    /// <summary>
    /// By segment the rows that a wall cheaper than a known one may have: a wall costs at least, segment by segment, what the row costs and
    /// half of what its laps with rows still hopeful cost at least.
    /// </summary>
    private List<int>[] Hopeful(int[] best, long cost)
    {
        List<int>[] hopeful = [.. segments.Select(segment => Enumerable.Range(0, segment.Rows.Count).ToList())];
        for (var isNew = true; isNew;)
        {
            var twice = segments.Select((_, s) => hopeful[s].ConvertAll(row => TwiceAtLeast(s, row, hopeful))).ToList();
            var room = (2 * cost) - twice.Sum(costs => costs.Min());
            isNew = false;
            for (var s = 0; s < hopeful.Length; s++)
            {
                var most = room + twice[s].Min();
                List<int> left = [.. hopeful[s].Where((row, i) => twice[s][i] < most || row == best[s])];
                isNew |= left.Count < hopeful[s].Count;
                hopeful[s] = left;
            }
        }

        return hopeful;
    }

    private long TwiceAtLeast(int segment, int row, List<int>[] hopeful)
    {
        var cost = 2 * segments[segment].Rows[row].Cost;
        foreach (var (other, pair) in _beside[segment])
        {
            var costs = LapsOf(pair);
            var least = long.MaxValue;
            solvers.Effort.SpendComparisons(hopeful[other].Count);
            foreach (var beside in hopeful[other])
            {
                least = Math.Min(least, pair.Lower == segment ? costs[row][beside] : costs[beside][row]);
            }

            cost += least;
        }

        return cost;
    }

    /// <summary>The rows that a choice is made from: all, or where the search would grow too large the cheapest and the best wall's.</summary>
    private ImmutableArray<ImmutableArray<int>> Allowed(int[] best, List<int>[] hopeful)
    {
        var byCost = hopeful.Select((rows, s) => rows
            .OrderBy(row => row == best[s] ? 0 : 1)
            .ThenBy(row => segments[s].Rows[row].Cost)
            .ToImmutableArray()).ToImmutableArray();
        var most = byCost.Max(rows => rows.Length);
        while (most > 1 && LeastSum.Largest([.. byCost.Select(rows => Math.Min(most, rows.Length))], pairs) > LeastSum.LargestTable)
        {
            most -= Math.Max(1, most / 4);
        }

        return [.. byCost.Select(rows => rows[..Math.Min(most, rows.Length)])];
    }

    private List<List<long>> LapsOf((int Lower, int Upper) pair)
    {
        var (lower, upper) = (segments[pair.Lower].Rows, segments[pair.Upper].Rows);
        if (!_known.TryGetValue((segments[pair.Lower], segments[pair.Upper]), out var costs))
        {
            _known.Add((segments[pair.Lower], segments[pair.Upper]), costs = []);
        }

        // Rows come to be more, and stay in their order.
        while (costs.Count < lower.Count)
        {
            costs.Add([]);
        }

        for (var below = 0; below < lower.Count; below++)
        {
            for (var above = costs[below].Count; above < upper.Count; above++)
            {
                solvers.Effort.SpendComparisons(lower[below].Joints.Length + upper[above].Joints.Length);
                costs[below].Add(solvers.Laps.Of(lower[below].Joints, upper[above].Joints));
            }
        }

        return costs;
    }

    private static long[][] Part(List<List<long>> costs, ImmutableArray<int> rows, ImmutableArray<int> columns) =>
        [.. rows.Select(row => columns.Select(column => costs[row][column]).ToArray())];
}
