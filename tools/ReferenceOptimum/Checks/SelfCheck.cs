using ReferenceOptimum.Problems;
using ReferenceOptimum.Solving;

namespace ReferenceOptimum.Checks;

/// <summary>Holds the reference to exhaustive search: its optimum is the optimum, its bounds are bounds.</summary>
internal static class SelfCheck
{
    private const double Effort = 20;
    private const double Dust = 1e-6;

    /// <summary>Of prices.</summary>
    private const int Steps = 12;

    public static IEnumerable<string> Faults(int seed, int count)
    {
        for (var number = 0; number < count; number++)
        {
            var block = ToyWalls.Make(seed, number);
            if (block.Stretches.Any(stretch => Exhaustive.Fillings(stretch, block.Sizes).Count == 0))
            {
                continue;
            }

            var best = Exhaustive.Best(block);
            var worst = Worst(block);
            var optimum = new BlockSolver(Effort).Solve(block, worst);
            if (optimum.Found != best || optimum.Least != best)
            {
                yield return $"toy wall {number}: every filling tried, the best is {best}; the reference found {optimum.Found} and says least {optimum.Least}";
            }

            if (BlockCount.Faults(block, optimum.Bond) is { } none)
            {
                yield return $"toy wall {number}: the reference's bond is none: {none}";
            }

            foreach (var fault in PricedFaults(block, best).Concat(block.IsPair ? PairFaults(block, number) : []))
            {
                yield return $"toy wall {number}: {fault}";
            }
        }
    }

    /// <summary>What the bounds from priced pairs say that the best bond has not.</summary>
    private static IEnumerable<string> PricedFaults(Block block, BondCount best)
    {
        if (PricedBound.Breaches(block, best with { Breaches = best.Breaches + 1 }, Steps) is var breaches && breaches > best.Breaches)
        {
            yield return $"the best is {best}; priced pairs say that {breaches} rules must be broken";
        }

        if (PricedBound.Cuts(block, best with { Cuts = best.Cuts + 1 }, Steps) is var cuts && cuts > best.Cuts)
        {
            yield return $"the best is {best}; priced pairs say that {cuts} cuts are needed";
        }
    }

    private static IEnumerable<string> PairFaults(Block pair, int number)
    {
        if (PairFault(pair) is { } excluded)
        {
            yield return excluded;
        }

        var grid = CellGrid.Of(pair);
#pragma warning disable CA5394 // Do not use insecure randomness: the prices shall be the same each time.
        var random = new Random(number);
        CoursePrices Prices() => new(random.NextDouble(), 2, [.. Enumerable.Range(0, (2 * grid.Cells) + 4).Select(_ => random.NextDouble() - 0.5)]);
#pragma warning restore CA5394
        var (lower, upper) = (Prices(), Prices());
        foreach (var (mayBear, mayBreak) in new[] { (false, false), (true, false), (false, true), (true, true) })
        {
            var least = new PricedPair(pair, pair.FirstCourse, grid, mayBear, mayBreak).Cheapest(lower, upper, 2, new PricedStates()).Least;
            var cheapest = Exhaustive.Cheapest(pair, lower, upper, 2, mayBear, mayBreak);
            var isExact = pair.Bars.IsEmpty && pair.Stretches.All(stretch => stretch.Run.Start == default && stretch.Run.End == default);
            if (least > cheapest + Dust || (isExact && least < cheapest - Dust))
            {
                yield return FormattableString.Invariant($"the cheapest pair costs {cheapest}, priced pairs say {least} (bearings {mayBear}, breaches {mayBreak})");
            }
        }
    }

    /// <summary>A count that some bond of a pair has and its bound excludes.</summary>
    private static string? PairFault(Block pair)
    {
        var bounds = new Dictionary<(bool MayBear, byte Most), PairCounts>();
        foreach (var ((lower, upper, bears), breaches) in Exhaustive.Pairs(pair))
        {
            foreach (var most in new[] { 0, breaches, breaches + 2 }.Where(most => most >= breaches).Distinct())
            {
                var key = (bears, (byte)most);
                var bound = bounds.TryGetValue(key, out var known) ? known : bounds[key] = PairBound.Of(pair, bears, key.Item2);
                if (bound.Fewest(lower, upper) > breaches)
                {
                    return $"{lower} and {upper} cuts are possible with {breaches} breaches, the pair's bound says {bound.Fewest(lower, upper)}";
                }
            }
        }

        return null;
    }

    /// <summary>A bond to start from: every stretch in pieces as short as fit.</summary>
    private static BlockBond Worst(Block block) => new(
        [.. block.Stretches.Select(stretch => Exhaustive.Fillings(stretch, block.Sizes).MaxBy(run => run.Length))],
        [.. block.Bars.Select(bar => bar.Least2)]);
}
