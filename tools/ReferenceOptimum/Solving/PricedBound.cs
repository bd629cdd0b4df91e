using System.Collections.Concurrent;
using ReferenceOptimum.Problems;

namespace ReferenceOptimum.Solving;

/// <summary>
/// A bound for all courses of a block from pairs of them, by Lagrangian relaxation (Geoffrion 1974): each course but the first and last is laid twice, in
/// the pair below it and in the pair above it. What it costs is shared by both, and a joint at a place costs in the one what it gains in the other, so that a
/// bond, in which both are the same, costs what it costs whatever the prices are: the cheapest fillings of all pairs together cost no more. Any prices give
/// a bound that holds; better ones are found from where the two differ (<see cref="PriceBundle"/>).
/// </summary>
internal sealed class PricedBound
{
    private const double Dust = 1e-6;

    /// <summary>Nanometres: to begin with, joints' prices go together within it. Of no account for what holds.</summary>
    private const double FirstReach = 40e6;

    /// <summary>What is hoped for with a step to begin with; more where it was a better one, less where not.</summary>
    private const double FirstGain = 1;
    private const double More = 1.3;
    private const double Less = 0.8;

    /// <summary>Where less is hoped for, prices of fewer places go together.</summary>
    private const double LeastGain = 0.01;

    /// <summary>Gain hoped for then.</summary>
    private const double GainAnew = 0.3;

    /// <summary>Cuts that a breach saves at most, where the pairs need as many breaches as the block has: so many that none is broken for a joint's price.</summary>
    private const double DearBreach = 40;

    /// <summary>The same to begin with, where the pairs need fewer.</summary>
    private const double CheapBreach = 4;

    private readonly PricedPair[] _pairs;
    private readonly bool _isOfCuts;
    private readonly BondCount _given;
    private readonly int _aim;
    private readonly int _cells;
    private readonly double _reach;
    private readonly ConcurrentBag<PricedStates> _room = [];

    private PricedBound(Block block, BondCount given, bool isOfCuts)
    {
        var grid = CellGrid.Of(block);
        (_isOfCuts, _given, _aim) = (isOfCuts, given, isOfCuts ? given.Cuts : given.Breaches);
        var mayBreak = given.Breaches > 0;
        var mayBear = !isOfCuts || given.Bearings > 0;
        _pairs =
        [
            .. Enumerable.Range(block.FirstCourse, block.LastCourse - block.FirstCourse)
                .Select(course => new PricedPair(block.Window(course, course + 1), course, grid, mayBear, mayBreak)),
        ];
        (_cells, _reach) = (grid.Cells, FirstReach / block.Sizes.Grid);
    }

    private int Courses => _pairs.Length + 1;

    /// <summary>No bond has fewer breaches.</summary>
    public static int Breaches(Block block, BondCount given, int steps) => Of(block, given, steps, isOfCuts: false);

    /// <summary>No bond with no more breaches and bearings than given has fewer cuts.</summary>
    public static int Cuts(Block block, BondCount given, int steps) => Of(block, given, steps, isOfCuts: true);

    private static int Of(Block block, BondCount given, int steps, bool isOfCuts) =>
        block.LastCourse > block.FirstCourse ? new PricedBound(block, given, isOfCuts).Raised(steps) : 0;

    private int Raised(int steps)
    {
        var prices = First();
        var fillings = Fillings(prices);
        var best = Bound(fillings, prices);
        var bundle = new PriceBundle(Courses, _isOfCuts, _given.Breaches, prices, _reach);
        var gain = FirstGain;
        for (var step = 1; step < steps && Whole(best) < _aim; step++)
        {
            bundle.Meet(fillings);
            prices = bundle.Raised(best, gain);
            fillings = Fillings(prices);
            var bound = Bound(fillings, prices);
            gain *= bound > best ? More : Less;
            if (bound > best)
            {
                best = bound;
                bundle.MoveTo(prices);
            }

            if (bundle.IsTooWide || gain < LeastGain)
            {
                gain = Math.Max(gain, GainAnew);
                bundle.Narrow();
            }
        }

        return Whole(best);
    }

    private static int Whole(double bound) => (int)Math.Clamp(Math.Ceiling(bound - Dust), 0, int.MaxValue);

    /// <summary>Joints without a price, cuts shared evenly.</summary>
    private BondPrices First()
    {
        double[][] joints = [.. Enumerable.Range(0, Courses).Select(_ => new double[(2 * _cells) + 4])];
        double[] shares = [.. Enumerable.Range(0, Courses).Select(course => course == 0 ? 0 : course == Courses - 1 ? 1 : 0.5)];
        var prices = new BondPrices(joints, shares, _isOfCuts ? DearBreach : 1);
        double Broken() => Fillings(prices).Select((filling, pair) => filling.Breaches(prices.Part(pair), prices.Part(pair + 1))).Sum();
        return _isOfCuts && _given.Breaches > 0 && Broken() < _given.Breaches ? prices with { Breach = CheapBreach } : prices;
    }

    private double Bound(PricedFilling[] fillings, BondPrices prices) => fillings.Sum(filling => filling.Least) - (_isOfCuts ? prices.Breach * _given.Breaches : 0);

    private PricedFilling[] Fillings(BondPrices prices)
    {
        var fillings = new PricedFilling[_pairs.Length];
        Parallel.For(0, _pairs.Length, pair =>
        {
            var states = _room.TryTake(out var kept) ? kept : new PricedStates();
            fillings[pair] = _pairs[pair].Cheapest(Prices(prices, pair, 1 - prices.Shares[pair], -1), Prices(prices, pair + 1, prices.Shares[pair + 1], 1), prices.Breach, states);
            _room.Add(states);
        });
        return fillings;
    }

    private CoursePrices Prices(BondPrices prices, int course, double share, int sign) => new(
        _isOfCuts ? share : 0, prices.Part(course) * prices.Breach, sign > 0 ? prices.Joints[course] : [.. prices.Joints[course].Select(price => -price)]);
}
