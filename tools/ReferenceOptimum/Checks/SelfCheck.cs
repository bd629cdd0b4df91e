using ReferenceOptimum.Problems;
using ReferenceOptimum.Solving;

namespace ReferenceOptimum.Checks;

/// <summary>Holds the reference to exhaustive search: its optimum is the optimum, its bounds are bounds.</summary>
internal static class SelfCheck
{
    private const double Effort = 20;

    public static IEnumerable<string> Faults(int seed, int count)
    {
        for (var number = 0; number < count; number++)
        {
            var block = ToyWalls.Make(seed, number);
            var best = Exhaustive.Best(block);
            var worst = Worst(block);
            var optimum = new BlockSolver(Effort).Solve(block, worst);
            if (optimum.Found != best || optimum.Least != best)
            {
                yield return $"toy wall {number}: every filling tried, the best is {best}; the reference found {optimum.Found} and says least {optimum.Least}";
            }

            if (BlockCount.Faults(block, optimum.Bond) is { } fault)
            {
                yield return $"toy wall {number}: the reference's bond is none: {fault}";
            }

            if (block.IsPair && PairFault(block) is { } excluded)
            {
                yield return $"toy wall {number}: {excluded}";
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
