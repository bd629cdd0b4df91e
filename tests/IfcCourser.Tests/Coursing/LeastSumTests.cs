using CsCheck;
using IfcCourser.Coursing;

namespace IfcCourser.Tests.Coursing;

public sealed class LeastSumTests
{
    private static readonly Gen<(int[] Sizes, (int First, int Second)[] Pairs, int Seed)> _problems =
        from sizes in Gen.Int[1, 4].Array[1, 6]
        from pairs in Gen.Select(Gen.Int[0, sizes.Length - 1], Gen.Int[0, sizes.Length - 1]).Array[0, 9]
        from seed in Gen.Int[0, 1 << 20]
        select (sizes, pairs.Where(pair => pair.Item1 != pair.Item2).ToArray(), seed);

    [Fact]
    public void The_sum_is_the_least_of_all_combinations() => _problems.ForAll((sizes, places, seed) =>
    {
        long Cost(params ReadOnlySpan<int> of)
        {
            var mixed = seed;
            foreach (var number in of)
            {
                mixed = unchecked((mixed * 31) + number + 7);
            }

            return Math.Abs((long)mixed % 50);
        }

        var single = sizes.Select((size, v) => Enumerable.Range(0, size).Select(value => Cost(v, value)).ToArray()).ToList();
        var pairs = new List<LeastSum.Pair>();
        foreach (var (first, second) in places)
        {
            var costs = Enumerable.Range(0, sizes[first])
                .Select(i => Enumerable.Range(0, sizes[second]).Select(j => Cost(first, second, i, j)).ToArray())
                .ToArray();
            pairs.Add(new LeastSum.Pair(first, second, costs));
        }

        long Sum(int[] values) => values.Select((value, v) => single[v][value]).Sum() + pairs.Sum(pair => pair.Costs[values[pair.First]][values[pair.Second]]);
        Assert.Equal(Combinations(sizes).Min(Sum), Sum(LeastSum.Solve(single, pairs)));
    });

    /// <summary>A chain of variables with 3 values each needs tables of two variables, 9 entries; a ring one more variable, 27.</summary>
    [Theory]
    [InlineData(false, 9)]
    [InlineData(true, 27)]
    public void The_largest_table_follows_the_pairs(bool isRing, int entries)
    {
        var pairs = Enumerable.Range(0, isRing ? 6 : 5).Select(i => (i, (i + 1) % 6));
        Assert.Equal(entries, LeastSum.Largest([3, 3, 3, 3, 3, 3], pairs));
    }

    private static IEnumerable<int[]> Combinations(int[] sizes) => sizes.Aggregate(
        (IEnumerable<int[]>)[[]], (before, size) => before.SelectMany(values => Enumerable.Range(0, size).Select(value => (int[])[.. values, value])));
}
