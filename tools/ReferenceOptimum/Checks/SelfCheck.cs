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

            if (block.IsPair && best is { Breaches: 0, Bearings: 0 } && !Allows(PairBound.Of(block, mayBear: false), best.Cuts))
            {
                yield return $"toy wall {number}: the pair's bound excludes the best bond, {best}";
            }
        }
    }

    private static bool Allows(CutPairs pairs, int cuts) => Enumerable.Range(0, cuts + 1).Any(lower => pairs.Allow(lower, cuts - lower));

    /// <summary>A bond to start from: every stretch in pieces as short as fit.</summary>
    private static BlockBond Worst(Block block) => new(
        [.. block.Stretches.Select(stretch => Exhaustive.Fillings(stretch, block.Sizes).MaxBy(run => run.Length))],
        [.. block.Bars.Select(bar => bar.Least2)]);
}
