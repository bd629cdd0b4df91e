using Google.OrTools.Sat;
using ReferenceOptimum.Problems;

namespace ReferenceOptimum.Solving;

/// <summary>
/// Finds the best bond of a block or a bound for it: fewest breaches, then fewest joints under bearings, then fewest cuts.
/// Bounds come from windows of one to three courses first, each solved on its own: windows that share no course add up.
/// Where they do not reach the given bond, the whole block is solved; what that leaves open gets a bound from priced pairs.
/// </summary>
/// <param name="effort">Deterministic time for one solution of the constraint program.</param>
internal sealed class BlockSolver(double effort)
{
    /// <summary>Steps of prices for a unit of deterministic time.</summary>
    private const int StepsOfEffort = 60;

    private readonly Dictionary<string, BlockOptimum> _known = new(StringComparer.Ordinal);
    private readonly Windows _windows = new(effort / 4);

    private int Steps => (int)(StepsOfEffort * effort);

    /// <param name="block">What to bond.</param>
    /// <param name="given">A bond to better.</param>
    public BlockOptimum Solve(Block block, BlockBond given)
    {
        var key = block.Key();
        if (_known.TryGetValue(key, out var known))
        {
            return known with { Bond = known.Bond.Shifted(block.Origin - known.Bond.Runs.Min(run => run[0].From)) };
        }

        var optimum = FewestCuts(block, FewestBearings(block, FewestBreaches(block, given)));
        if (optimum.Found == optimum.Least)
        {
            _known.Add(key, optimum);
        }

        return optimum;
    }

    private BlockOptimum FewestBreaches(Block block, BlockBond given)
    {
        var best = new BlockOptimum(BlockCount.Of(block, given), default, given);
        if (best.Found.Breaches == 0)
        {
            return best;
        }

        var forced = _windows.Forced(block);
        var least = _windows.Breaches(block, best.Bond);
        foreach (var breadth in Enum.GetValues<Breadth>().Reverse())
        {
            if (least < best.Found.Breaches)
            {
                var (better, bound) = Better(best, block, new BlockModel(block, BondLimits.None, breadth, forced), model => model.Breaches);
                best = better;
                least = breadth != Breadth.All ? least : Math.Max(least, bound);
            }
        }

        least = least < best.Found.Breaches ? Math.Max(least, PricedBound.Breaches(block, best.Found, Steps)) : least;
        return best with { Least = new BondCount(least, 0, 0) };
    }

    private BlockOptimum FewestBearings(Block block, BlockOptimum best)
    {
        var breaches = best.Found.Breaches;
        if (best.Found.Bearings == 0 || best.Least.Breaches < breaches)
        {
            return best;
        }

        var (better, least) = Better(best, block, new BlockModel(block, new BondLimits(breaches, null, null), Breadth.All), model => model.Bearings);
        return better with { Least = new BondCount(breaches, Math.Min(least, better.Found.Bearings), 0) };
    }

    private BlockOptimum FewestCuts(Block block, BlockOptimum best)
    {
        var (breaches, bearings, cuts) = best.Found;
        if (best.Least.Breaches < breaches || best.Least.Bearings < bearings)
        {
            return best;
        }

        var forced = breaches == 0 ? null : _windows.Forced(block);
        var (least, limits) = _windows.Cuts(block, best.Bond);
        foreach (var breadth in Enum.GetValues<Breadth>().Reverse())
        {
            if (least < best.Found.Cuts)
            {
                var model = new BlockModel(block, new BondLimits(breaches, bearings, best.Found.Cuts), breadth, forced);
                limits.Hold(model.Model, block.FirstCourse, block.LastCourse, model.CutsIn, model.BreachesIn);
                var (better, bound) = Better(best, block, model, m => m.Cuts);
                best = better;
                least = breadth != Breadth.All ? least : Math.Max(least, bound);
            }
        }

        least = least < best.Found.Cuts ? Math.Max(least, PricedBound.Cuts(block, best.Found, Steps)) : least;
        return best with { Least = new BondCount(breaches, bearings, Math.Min(least, best.Found.Cuts)) };
    }

    private (BlockOptimum Best, int Bound) Better(BlockOptimum best, Block block, BlockModel model, Func<BlockModel, LinearExpr> aim)
    {
        model.Hint(best.Bond);
        var (bond, bound) = Search.Minimise(model, aim(model), effort);
        return bond is not null && BlockCount.Of(block, bond) is var count && count.CompareTo(best.Found) < 0
            ? (best with { Found = count, Bond = bond }, bound ?? 0)
            : (best, bound ?? 0);
    }
}
