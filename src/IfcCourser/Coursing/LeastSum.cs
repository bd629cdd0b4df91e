using System.Numerics;

namespace IfcCourser.Coursing;

/// <summary>
/// Chooses a value for each of several variables so that the sum of costs of single values and of pairs is least: exact,
/// by eliminating one variable after the other (bucket elimination, R. Dechter, Artificial Intelligence 113 (1999)).
/// Work and memory grow with the largest table that an elimination needs, not with the number of combinations.
/// </summary>
internal static class LeastSum
{
    /// <summary>The largest table, in entries, that <see cref="Solve"/> is asked for by those who can ask for less.</summary>
    public const long LargestTable = 1 << 20;

    /// <summary>The cost of two variables' values together.</summary>
    /// <param name="First">A variable.</param>
    /// <param name="Second">Another variable.</param>
    /// <param name="Costs">One for each value of the first (rows) with each of the second (columns).</param>
    public readonly record struct Pair(int First, int Second, long[][] Costs);

    /// <summary>The cheapest values, the first of equals in the order of elimination.</summary>
    /// <param name="single">Of each variable, the cost of each of its values.</param>
    /// <param name="pairs">Costs of values together.</param>
    public static int[] Solve(IReadOnlyList<long[]> single, IEnumerable<Pair> pairs)
    {
        Pair[] together = [.. pairs];
        var tables = single.Select((costs, i) => new Table([i], [costs.Length], costs)).Concat(together.Select(Table.Of)).ToList();
        var sizes = single.Select(costs => costs.Length).ToArray();
        var order = new List<(int Variable, int[] Scope, int[] Best)>();
        foreach (var (variable, _) in Order(sizes, together.Select(pair => (pair.First, pair.Second))))
        {
            var touched = tables.Where(table => table.Scope.Contains(variable)).ToList();
            tables.RemoveAll(touched.Contains);
            var (left, best) = Eliminate(variable, sizes, touched);
            order.Add((variable, left.Scope, best));
            tables.Add(left);
        }

        var values = new int[sizes.Length];
        foreach (var (variable, scope, best) in Enumerable.Reverse(order))
        {
            values[variable] = best[Place(scope, sizes, values)];
        }

        return values;
    }

    /// <summary>The entries of the largest table that eliminating such variables with such pairs needs.</summary>
    public static long Largest(int[] sizes, IEnumerable<(int First, int Second)> pairs) => Order(sizes, pairs).Max(step => step.Entries);

    /// <summary>The entries of all tables that eliminating such variables with such pairs needs.</summary>
    public static long Entries(int[] sizes, IEnumerable<(int First, int Second)> pairs) => Order(sizes, pairs).Sum(step => step.Entries);

    private static IEnumerable<(int Variable, long Entries)> Order(int[] sizes, IEnumerable<(int First, int Second)> pairs)
    {
        var graph = new Graph(sizes, pairs);
        while (graph.Next() is { } next)
        {
            yield return next;
            graph.Remove(next.Variable);
        }
    }

    private static (Table Left, int[] Best) Eliminate(int variable, int[] sizes, List<Table> touched)
    {
        int[] scope = [.. touched.SelectMany(table => table.Scope).Where(v => v != variable).Distinct().Order()];
        var extent = scope.Select(v => sizes[v]).ToArray();
        var count = extent.Aggregate(1, (product, size) => checked(product * size));
        var costs = new long[count];
        var best = new int[count];
        var tables = touched.Select(table => new Walk(table.Costs, table.Stride(variable), [.. scope.Select(table.Stride)])).ToArray();
        var digits = new int[scope.Length];
        var sums = new long[sizes[variable]];
        for (var place = 0; place < count; place++)
        {
            Array.Clear(sums);
            foreach (var table in tables)
            {
                table.AddTo(sums);
            }

            best[place] = 0;
            for (var value = 1; value < sums.Length; value++)
            {
                best[place] = sums[value] < sums[best[place]] ? value : best[place];
            }

            costs[place] = sums[best[place]];
            Advance(digits, extent, tables);
        }

        return (new Table(scope, extent, costs), best);
    }

    /// <summary>The next combination of the scope's values, with each table's place; the last variable runs fastest.</summary>
    private static void Advance(int[] digits, int[] extent, Walk[] tables)
    {
        for (var d = digits.Length - 1; d >= 0; d--)
        {
            digits[d]++;
            var isTurned = digits[d] == extent[d];
            foreach (var table in tables)
            {
                table.Move(d, isTurned ? 1 - extent[d] : 1);
            }

            if (!isTurned)
            {
                return;
            }

            digits[d] = 0;
        }
    }

    private static int Place(int[] scope, int[] sizes, int[] values)
    {
        var place = 0;
        foreach (var variable in scope)
        {
            place = (place * sizes[variable]) + values[variable];
        }

        return place;
    }

    /// <summary>Costs of the combinations of some variables' values, the last variable's running fastest.</summary>
    private sealed record Table(int[] Scope, int[] Extent, long[] Costs)
    {
        public static Table Of(Pair pair) =>
            new([pair.First, pair.Second], [pair.Costs.Length, pair.Costs[0].Length], [.. pair.Costs.SelectMany(row => row)]);

        /// <summary>How far apart the entries of a variable's neighbouring values lie; 0 where it is not in the table.</summary>
        public int Stride(int variable)
        {
            var place = Array.IndexOf(Scope, variable);
            return place < 0 ? 0 : Extent.Skip(place + 1).Aggregate(1, (product, size) => product * size);
        }
    }

    /// <summary>A place in a table that moves with the values of the scope's variables.</summary>
    /// <param name="costs">The table's.</param>
    /// <param name="own">How far apart the values of the variable to be eliminated lie.</param>
    /// <param name="others">By variable of the scope, how far apart its values lie.</param>
    private sealed class Walk(long[] costs, int own, int[] others)
    {
        private int _at;

        public void Move(int variable, int steps) => _at += others[variable] * steps;

        /// <summary>Adds the costs here, value by value of the variable to be eliminated.</summary>
        public void AddTo(long[] sums)
        {
            var at = _at;
            for (var value = 0; value < sums.Length; value++)
            {
                sums[value] += costs[at];
                at += own;
            }
        }
    }

    /// <summary>Which variables share a table, as variables are eliminated.</summary>
    private sealed class Graph
    {
        private const int Word = 64;
        private const long MostEntries = long.MaxValue / 4096;

        private readonly int[] _sizes;

        /// <summary>By variable, a bit for each variable that it shares a table with.</summary>
        private readonly ulong[][] _beside;

        /// <summary>By variable, the entries of the table that its elimination needs; 0 once it is eliminated.</summary>
        private readonly long[] _entries;

        public Graph(int[] sizes, IEnumerable<(int First, int Second)> pairs)
        {
            _sizes = sizes;
            _beside = [.. sizes.Select(_ => new ulong[(sizes.Length + Word - 1) / Word])];
            foreach (var (first, second) in pairs)
            {
                _beside[first][second / Word] |= 1UL << (second % Word);
                _beside[second][first / Word] |= 1UL << (first % Word);
            }

            _entries = [.. Enumerable.Range(0, sizes.Length).Select(Entries)];
        }

        /// <summary>The variable whose elimination needs the smallest table; null where none is left.</summary>
        public (int Variable, long Entries)? Next()
        {
            var best = -1;
            for (var v = 0; v < _entries.Length; v++)
            {
                best = _entries[v] > 0 && (best < 0 || _entries[v] < _entries[best]) ? v : best;
            }

            return best < 0 ? null : (best, _entries[best]);
        }

        public void Remove(int variable)
        {
            var beside = _beside[variable];
            _entries[variable] = 0;
            foreach (var other in Members(beside))
            {
                var own = _beside[other];
                for (var word = 0; word < own.Length; word++)
                {
                    own[word] |= beside[word];
                }

                own[other / Word] &= ~(1UL << (other % Word));
                own[variable / Word] &= ~(1UL << (variable % Word));
            }

            foreach (var other in Members(beside))
            {
                _entries[other] = Entries(other);
            }
        }

        private long Entries(int variable)
        {
            long entries = _sizes[variable];
            foreach (var other in Members(_beside[variable]))
            {
                entries = Math.Min(MostEntries, entries * _sizes[other]);
            }

            return entries;
        }

        private static IEnumerable<int> Members(ulong[] set)
        {
            for (var word = 0; word < set.Length; word++)
            {
                for (var open = set[word]; open != 0; open &= open - 1)
                {
                    yield return (word * Word) + BitOperations.TrailingZeroCount(open);
                }
            }
        }
    }
}
