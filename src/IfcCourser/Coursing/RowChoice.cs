using System.Collections.Immutable;

namespace IfcCourser.Coursing;

/// <summary>Chooses of the rows gathered for a wall's segments those that cost least together, exactly where the search does not grow too large.</summary>
/// <param name="segments">The wall's segments; equal ones share their rows.</param>
/// <param name="pairs">Segments whose joints may come near each other.</param>
/// <param name="laps">What laps cost.</param>
internal sealed class RowChoice(ImmutableArray<SegmentRows> segments, ImmutableArray<(int Lower, int Upper)> pairs, RowLaps laps)
{
    private readonly Dictionary<(SegmentRows Lower, SegmentRows Upper), List<List<long>>> _known = [];

    /// <summary>The best wall that the gathered rows make.</summary>
    /// <param name="best">A good wall: its rows are always among those chosen from.</param>
    public int[] Best(int[] best)
    {
        var allowed = Allowed(best);
        var single = allowed.Select((rows, s) => rows.Select(row => segments[s].Rows[row].Cost).ToArray()).ToList();
        var costs = pairs.Select(pair => new LeastSum.Pair(pair.Lower, pair.Upper, Part(LapsOf(pair), allowed[pair.Lower], allowed[pair.Upper])));
        var chosen = LeastSum.Solve(single, costs);
        return [.. chosen.Select((row, s) => allowed[s][row])];
    }

    /// <summary>The rows that a choice is made from: all, or where the search would grow too large the cheapest and the best wall's.</summary>
    private ImmutableArray<ImmutableArray<int>> Allowed(int[] best)
    {
        for (var most = segments.Max(segment => segment.Rows.Count); ; most -= Math.Max(1, most / 4))
        {
            var allowed = segments.Select((segment, s) => Enumerable.Range(0, segment.Rows.Count)
                .OrderBy(row => row == best[s] ? 0 : 1)
                .ThenBy(row => segment.Rows[row].Cost)
                .Take(most)
                .ToImmutableArray()).ToImmutableArray();
            if (most == 1 || LeastSum.Largest([.. allowed.Select(rows => rows.Length)], pairs) <= LeastSum.LargestTable)
            {
                return allowed;
            }
        }
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
                costs[below].Add(laps.Of(lower[below].Joints, upper[above].Joints));
            }
        }

        return costs;
    }

    private static long[][] Part(List<List<long>> costs, ImmutableArray<int> rows, ImmutableArray<int> columns) =>
        [.. rows.Select(row => columns.Select(column => costs[row][column]).ToArray())];
}
