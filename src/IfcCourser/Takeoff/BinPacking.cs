using System.Collections.Immutable;

namespace IfcCourser.Takeoff;

/// <summary>
/// Fills the fewest bins of one capacity (one-dimensional cutting stock). Exact where the search ends within its limit: bin after bin, the largest
/// size left with every set of others that leaves room for no more, fullest first (bin completion after Korf 2002); below the
/// bound of Martello and Toth (1990, L2) or a state seen before nothing is tried.
/// </summary>
internal sealed class BinPacking
{
    /// <summary>Sets looked at in a search, at most.</summary>
    private const int MostWork = 200_000;

    /// <summary>Bins that a search goes through at most; longer lists are filled without.</summary>
    private const int MostBins = 1_000;

    /// <summary>Sets tried for a bin at most.</summary>
    private const int MostSets = 2_000;

    private readonly long[] _sizes;
    private readonly long _capacity;
    private readonly HashSet<string> _seen = new(StringComparer.Ordinal);
    private readonly List<int[]> _path = [];
    private List<int[]> _best = [];
    private int _goal;
    private int _work;
    private bool _isCutShort;

    private BinPacking(long[] sizes, long capacity) => (_sizes, _capacity) = (sizes, capacity);

    private bool IsSpent => _work > MostWork || _isCutShort;

    /// <param name="sizes">Each positive and not above the capacity; in any order.</param>
    /// <param name="capacity">Of a bin.</param>
    public static PackingPlan Fill(IEnumerable<long> sizes, long capacity)
    {
        var groups = sizes.GroupBy(size => size).OrderByDescending(group => group.Key).ToArray();
        var packing = new BinPacking([.. groups.Select(group => group.Key)], capacity);
        return packing.Fill([.. groups.Select(group => group.Count())]);
    }

    private PackingPlan Fill(int[] counts)
    {
        var forced = Forced(counts);
        _goal = Bound(counts);
        _best = Fullest(counts);
        var least = _goal;
        if (_best.Count > least && _best.Count <= MostBins)
        {
            (_isCutShort, _work) = (false, 0);
            Search(counts);
            least = IsSpent ? least : _best.Count;
        }

        return new PackingPlan([.. forced.Concat(_best).Select(Sizes)], forced.Count + least);
    }

    /// <summary>Bins that some best filling holds; takes them out of the counts.</summary>
    private List<int[]> Forced(int[] counts)
    {
        var bins = new List<int[]>();
        while (Array.Exists(counts, count => count > 0) && Completions(counts) is [var only])
        {
            Take(counts, only, 1);
            bins.Add(only);
        }

        return bins;
    }

    private ImmutableArray<long> Sizes(int[] bin) => [.. bin.SelectMany((count, i) => Enumerable.Repeat(_sizes[i], count))];

    /// <summary>Bin after bin as full as can be around the largest size left.</summary>
    private List<int[]> Fullest(int[] counts)
    {
        var (bins, left) = (new List<int[]>(), (int[])counts.Clone());
        while (Array.Exists(left, count => count > 0))
        {
            var bin = Completions(left)[0];
            while (left.Zip(bin, (count, taken) => taken <= count).All(fits => fits))
            {
                bins.Add(bin);
                Take(left, bin, 1);
            }
        }

        return bins;
    }

    private void Search(int[] counts)
    {
        if (Array.TrueForAll(counts, count => count == 0))
        {
            _best = [.. _path];
            return;
        }

        if (++_work > MostWork || _path.Count + Bound(counts) >= _best.Count || !_seen.Add(State(counts)))
        {
            return;
        }

        foreach (var bin in Completions(counts))
        {
            Take(counts, bin, 1);
            _path.Add(bin);
            Search(counts);
            _path.RemoveAt(_path.Count - 1);
            Take(counts, bin, -1);
            if (_work > MostWork || _best.Count == _goal || _path.Count + Bound(counts) >= _best.Count)
            {
                return;
            }
        }
    }

    // A state reached again with as many bins or more leads to nothing better.
    private string State(int[] counts) => string.Create(counts.Length + 1, (counts, _path.Count), static (text, state) =>
    {
        for (var i = 0; i < state.counts.Length; i++)
        {
            text[i] = (char)state.counts[i];
        }

        text[^1] = (char)state.Count;
    });

    private static void Take(int[] counts, int[] bin, int sign)
    {
        for (var i = 0; i < counts.Length; i++)
        {
            counts[i] -= sign * bin[i];
        }
    }

    /// <summary>
    /// The sets with the largest size left that leave room for nothing more, the fullest first. One alone where it must be right: where only one more
    /// fits in any way, the largest that does.
    /// </summary>
    private List<int[]> Completions(int[] counts)
    {
        var largest = Array.FindIndex(counts, count => count > 0);
        var bin = new int[counts.Length];
        bin[largest] = 1;
        var room = _capacity - _sizes[largest];
        counts[largest]--;
        var second = Largest(counts, 0, room);
        if (second < 0 || _sizes[second] == room || Smallest(counts, 2) > room)
        {
            if (second >= 0)
            {
                bin[second]++;
            }

            counts[largest]++;
            return [bin];
        }

        var sets = new List<(long Room, int[] Bin)>();
        Complete(counts, bin, largest, room, sets);
        counts[largest]++;
        return [.. sets.OrderBy(set => set.Room).Select(set => set.Bin)];
    }

    private void Complete(int[] counts, int[] bin, int from, long room, List<(long Room, int[] Bin)> sets)
    {
        if (Largest(counts, 0, room) < 0)
        {
            _work++;
            sets.Add((room, (int[])bin.Clone()));
            return;
        }

        for (var i = Largest(counts, from, room); i >= 0; i = Largest(counts, i + 1, room))
        {
            if (sets.Count >= MostSets)
            {
                _isCutShort = true;
                return;
            }

            counts[i]--;
            bin[i]++;
            Complete(counts, bin, i, room - _sizes[i], sets);
            bin[i]--;
            counts[i]++;
        }
    }

    /// <summary>The largest size left that fits, from an index on; -1 where none does.</summary>
    private int Largest(int[] counts, int from, long room)
    {
        for (var i = from; i < counts.Length; i++)
        {
            if (counts[i] > 0 && _sizes[i] <= room)
            {
                return i;
            }
        }

        return -1;
    }

    /// <summary>The sum of the smallest sizes left; more than any room where so many are not left.</summary>
    private long Smallest(int[] counts, int number)
    {
        var sum = 0L;
        for (var i = counts.Length - 1; i >= 0 && number > 0; i--)
        {
            var taken = Math.Min(number, counts[i]);
            (sum, number) = (sum + (taken * _sizes[i]), number - taken);
        }

        return number > 0 ? _capacity + 1 : sum;
    }

    private int Bound(int[] counts)
    {
        var most = 0L;
        var half = _capacity / 2;
        foreach (var least in _sizes.Where((size, i) => size <= half && counts[i] > 0).Append(0))
        {
            var (alone, large, largeSum, smallSum) = (0L, 0L, 0L, 0L);
            for (var i = 0; i < _sizes.Length; i++)
            {
                if (_sizes[i] > _capacity - least)
                {
                    alone += counts[i];
                }
                else if (_sizes[i] > half)
                {
                    (large, largeSum) = (large + counts[i], largeSum + (counts[i] * _sizes[i]));
                }
                else if (_sizes[i] >= least)
                {
                    smallSum += counts[i] * _sizes[i];
                }
            }

            var rest = smallSum - ((large * _capacity) - largeSum);
            most = Math.Max(most, alone + large + (rest > 0 ? (rest + _capacity - 1) / _capacity : 0));
        }

        return (int)most;
    }
}
