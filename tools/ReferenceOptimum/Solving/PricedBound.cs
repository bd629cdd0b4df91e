using System.Collections.Concurrent;
using ReferenceOptimum.Problems;

namespace ReferenceOptimum.Solving;

/// <summary>
/// A bound for all courses of a block from pairs of them, by Lagrangian relaxation (Geoffrion 1974; subgradient steps after Held and Karp 1971, their
/// length after Polyak 1969): each course but the first and last is laid twice, in the pair below it and in the pair above it. What it costs is shared by both, and a joint at a place
/// costs in the one what it gains in the other, so that a bond, in which both are the same, costs what it costs whatever the prices are: the cheapest fillings of all pairs
/// together cost no more. Prices are raised where the two differ. Any prices give a bound that holds.
/// </summary>
internal sealed class PricedBound
{
    private const double Dust = 1e-6;

    /// <summary>Nanometres: joints nearer than that to one whose price changes are priced too, the less the farther. Of no account for what holds.</summary>
    private const double FirstReach = 40e6;

    /// <summary>Shorter steps lead nowhere.</summary>
    private const double LeastStride = 0.05;

    /// <summary>Steps without a better bound before steps and reach become smaller.</summary>
    private const int Patience = 8;

    /// <summary>Below it a step would go far for little.</summary>
    private const double LeastSlope = 20;

    /// <summary>Cuts that a breach saves at most, where the pairs need as many breaches as the block has: so many that none is broken for a joint's price.</summary>
    private const double DearBreach = 40;

    /// <summary>The same to begin with, where the pairs need fewer.</summary>
    private const double CheapBreach = 4;

    private readonly PricedPair[] _pairs;
    private readonly bool _isOfCuts;
    private readonly BondCount _given;
    private readonly int _aim;
    private readonly double[][] _prices;
    private readonly double[][] _trends;
    private readonly double[] _shares;
    private readonly double[] _shareTrends;
    private readonly ConcurrentBag<PricedStates> _room = [];
    private double _breachPrice;
    private double _best = double.NegativeInfinity;
    private double _stride = 1;
    private double _reach;
    private int _idle;

    private PricedBound(Block block, BondCount given, bool isOfCuts)
    {
        var grid = CellGrid.Of(block);
        var courses = block.LastCourse - block.FirstCourse + 1;
        (_isOfCuts, _given, _aim) = (isOfCuts, given, isOfCuts ? given.Cuts : given.Breaches);
        var mayBreak = given.Breaches > 0;
        var mayBear = !isOfCuts || given.Bearings > 0;
        _pairs = [.. Enumerable.Range(block.FirstCourse, courses - 1).Select(course => new PricedPair(block.Window(course, course + 1), course, grid, mayBear, mayBreak))];
        _prices = [.. Enumerable.Range(0, courses).Select(_ => new double[(2 * grid.Cells) + 4])];
        _trends = [.. Enumerable.Range(0, courses).Select(_ => new double[(2 * grid.Cells) + 4])];
        _shares = [.. Enumerable.Range(0, courses).Select(course => course == 0 ? 0 : course == courses - 1 ? 1 : 0.5)];
        _shareTrends = new double[courses];
        _breachPrice = isOfCuts ? DearBreach : 1;
        _reach = FirstReach / block.Sizes.Grid;
    }

    /// <summary>No bond has fewer breaches.</summary>
    public static int Breaches(Block block, BondCount given, int steps) => Of(block, given, steps, isOfCuts: false);

    /// <summary>No bond with no more breaches and bearings than given has fewer cuts.</summary>
    public static int Cuts(Block block, BondCount given, int steps) => Of(block, given, steps, isOfCuts: true);

    private static int Of(Block block, BondCount given, int steps, bool isOfCuts) =>
        block.LastCourse > block.FirstCourse ? new PricedBound(block, given, isOfCuts).Raised(steps) : 0;

    private int Raised(int steps)
    {
        for (var step = 0; step < steps && Whole(_best) < _aim && _stride > LeastStride; step++)
        {
            var fillings = Fillings();
            if (step == 0 && _isOfCuts && Breaches(fillings) < _given.Breaches)
            {
                _breachPrice = CheapBreach;
                continue;
            }

            var bound = fillings.Sum(filling => filling.Least) - (_isOfCuts ? _breachPrice * _given.Breaches : 0);
            _idle = bound > _best + Dust ? 0 : _idle + 1;
            _best = Math.Max(_best, bound);
            if (_idle >= Patience)
            {
                (_idle, _stride, _reach) = (0, _stride * 0.6, Math.Max(4, _reach * 0.7));
            }

            Reprice(fillings, bound);
        }

        return Whole(_best);
    }

    private static int Whole(double bound) => (int)Math.Clamp(Math.Ceiling(bound - Dust), 0, int.MaxValue);

    private PricedFilling[] Fillings()
    {
        var fillings = new PricedFilling[_pairs.Length];
        Parallel.For(0, _pairs.Length, pair =>
        {
            var states = _room.TryTake(out var kept) ? kept : new PricedStates();
            fillings[pair] = _pairs[pair].Cheapest(Prices(pair, 1 - _shares[pair], -1), Prices(pair + 1, _shares[pair + 1], 1), _breachPrice, states);
            _room.Add(states);
        });
        return fillings;
    }

    /// <summary>Of a breach of the course's own each pair that it is in bears the same share.</summary>
    private double Half(int course) => course == 0 || course == _prices.Length - 1 ? 1 : 0.5;

    private CoursePrices Prices(int course, double share, int sign) => new(
        _isOfCuts ? share : 0, Half(course) * _breachPrice, sign > 0 ? _prices[course] : [.. _prices[course].Select(price => -price)]);

    /// <summary>Prices go on as they went, and towards what makes both fillings of a course the same.</summary>
    private void Reprice(PricedFilling[] fillings, double bound)
    {
        const double Kept = 0.7;
        var slope = 0.0;
        for (var course = 1; course < _prices.Length - 1; course++)
        {
            var (below, above) = (fillings[course - 1].Upper, fillings[course].Lower);
            var trend = _trends[course];
            for (var centre = 0; centre < trend.Length; centre++)
            {
                trend[centre] *= Kept;
            }

            Spread(trend, below.Joints, 1);
            Spread(trend, above.Joints, -1);
            slope += below.Joints.Sum(centre => trend[centre]) - above.Joints.Sum(centre => trend[centre]);
            var differs = _isOfCuts ? below.Cuts - above.Cuts : 0;
            _shareTrends[course] = (Kept * _shareTrends[course]) + differs;
            slope += _shareTrends[course] * differs;
        }

        var excess = _isOfCuts ? Breaches(fillings) - _given.Breaches : 0;
        var aim = Math.Min(_aim - 1 + (2 * Dust), _best + Math.Max(1, (_aim - _best) * 0.3));
        var length = _stride * (aim - bound) / Math.Max(slope + (excess * excess), LeastSlope);
        for (var course = 1; course < _prices.Length - 1; course++)
        {
            for (var centre = 0; centre < _prices[course].Length; centre++)
            {
                _prices[course][centre] += length * _trends[course][centre];
            }

            _shares[course] = Math.Clamp(_shares[course] + (length * _shareTrends[course]), 0, 1);
        }

        _breachPrice = Math.Max(0, _breachPrice + (length * excess));
    }

    private double Breaches(PricedFilling[] fillings) => fillings
        .Select((filling, pair) => filling.Laps + (filling.Lower.Breaches * Half(pair)) + (filling.Upper.Breaches * Half(pair + 1))).Sum();

    private void Spread(double[] trend, List<int> centres, int sign)
    {
        var reach = (int)_reach;
        foreach (var centre in centres)
        {
            for (var at = Math.Max(0, centre - reach); at <= Math.Min(trend.Length - 1, centre + reach); at++)
            {
                trend[at] += sign * (1 - (Math.Abs(at - centre) / (reach + 1.0)));
            }
        }
    }
}
