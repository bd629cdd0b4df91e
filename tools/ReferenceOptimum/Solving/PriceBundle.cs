namespace ReferenceOptimum.Solving;

/// <summary>
/// Finds prices that raise what pairs cost at least, by a bundle method (Lemaréchal 1975; Kiwiel 1990): at no prices does a pair cost more than any of its
/// fillings met so far, so these tell which way to go, and how far is chosen by what is to be gained (after Lemaréchal, Nemirovskii and Nesterov 1995).
/// Where a joint's price goes those of places nearby go with it, the less the farther: a joint there is as good.
/// </summary>
/// <param name="courses">Of the block.</param>
/// <param name="isOfCuts">Whether cuts have a price; else breaches alone do.</param>
/// <param name="breaches">That the bond may have.</param>
/// <param name="centre">The best prices known.</param>
/// <param name="reach">Doubled cells within which joints' prices go together.</param>
internal sealed class PriceBundle(int courses, bool isOfCuts, int breaches, BondPrices centre, double reach)
{
    /// <summary>How far the shares of a cut go where a joint's price goes by one.</summary>
    private const double OfShare = 0.05;

    private const int MostTurns = 12;
    private const double LongestStride = 2;

    private readonly List<BundledFilling>[] _pairs = [.. Enumerable.Range(1, courses - 1).Select(_ => new List<BundledFilling>())];
    private readonly List<BundledFilling> _all = [];
    private BondPrices _centre = centre;
    private double _reach = reach;
    private double _stride = 0.05;

    /// <summary>Whether prices would have to go too far: the places whose prices go together differ too much.</summary>
    public bool IsTooWide => _stride > LongestStride;

    private bool AreBreachesPriced => isOfCuts && breaches > 0;

    /// <summary>Takes in the cheapest fillings of all pairs at some prices.</summary>
    public void Meet(PricedFilling[] fillings)
    {
        for (var pair = 0; pair < fillings.Length; pair++)
        {
            var more = fillings[pair].Breaches(_centre.Part(pair), _centre.Part(pair + 1)) - (isOfCuts ? breaches / (courses - 1.0) : 0);
            var met = new BundledFilling(_all.Count, pair, fillings[pair], more) { Weight = _pairs[pair].Count == 0 ? 1 : 0 };
            met.Cost = Cost(met, _centre);
            _pairs[pair].Add(met);
            _all.Add(met);
            Multiply(met);
        }

        Incline();
    }

    /// <summary>Goes on from other prices.</summary>
    public void MoveTo(BondPrices prices)
    {
        _centre = prices;
        _all.ForEach(filling => filling.Cost = Cost(filling, prices));
    }

    /// <summary>Lets prices of fewer places go together.</summary>
    public void Narrow()
    {
        _reach /= 2;
        _stride /= 2;
        _all.ForEach(filling => filling.Products.Clear());
        _all.ForEach(Multiply);
        Incline();
    }

    /// <summary>The nearest prices at which the fillings known would cost so much more.</summary>
    /// <param name="best">What they cost at the best prices known.</param>
    /// <param name="gain">How much more.</param>
    public BondPrices Raised(double best, double gain)
    {
        var most = BundleWeights.Settle(_pairs, _all, _stride);
        for (var turn = 0; turn < MostTurns && (most - best < 0.8 * gain || most - best > 1.25 * gain); turn++)
        {
            _stride *= Math.Clamp(gain / Math.Max(1e-6, most - best), 0.5, 2);
            most = BundleWeights.Settle(_pairs, _all, _stride);
        }

        return Gone();
    }

    private double Cost(BundledFilling of, BondPrices at)
    {
        var (lower, upper, pair) = (of.Filling.Lower, of.Filling.Upper, of.Pair);
        var cuts = isOfCuts ? ((1 - at.Shares[pair]) * lower.Cuts) + (at.Shares[pair + 1] * upper.Cuts) : 0;
        return cuts + (at.Breach * of.Breaches) - lower.Joints.Sum(joint => at.Joints[pair][joint]) + upper.Joints.Sum(joint => at.Joints[pair + 1][joint]);
    }

    private void Multiply(BundledFilling filling)
    {
        for (var number = 0; number <= filling.Number; number++)
        {
            var product = Product(_all[number], filling);
            filling.Products.Add(product);
            if (number < filling.Number)
            {
                _all[number].Products.Add(product);
            }
        }
    }

    private void Incline() => _all.ForEach(filling => filling.Slope = _all.Sum(other => other.Weight * filling.Products[other.Number]));

    private double Product(BundledFilling one, BundledFilling other) => (AreBreachesPriced ? one.Breaches * other.Breaches : 0) + (other.Pair - one.Pair) switch
    {
        0 => Product(one.Pair, one.Filling.Lower, other.Filling.Lower) + Product(one.Pair + 1, one.Filling.Upper, other.Filling.Upper),
        1 => -Product(other.Pair, one.Filling.Upper, other.Filling.Lower),
        -1 => -Product(one.Pair, one.Filling.Lower, other.Filling.Upper),
        _ => 0,
    };

    private double Product(int course, PricedCourse one, PricedCourse other) => !_centre.IsShared(course)
        ? 0
        : one.Joints.Sum(joint => other.Joints.Sum(beside => Nearness(joint - beside))) + (isOfCuts ? OfShare * one.Cuts * other.Cuts : 0);

    private double Nearness(int distance) => Math.Max(0, 1 - (Math.Abs(distance) / (_reach + 1)));

    /// <summary>The prices at the end of the way.</summary>
    private BondPrices Gone()
    {
        double[][] joints = [.. _centre.Joints.Select(prices => (double[])prices.Clone())];
        double[] shares = [.. _centre.Shares];
        var breach = _centre.Breach;
        foreach (var filling in _all.Where(filling => filling.Weight > 0))
        {
            var part = _stride * filling.Weight;
            Go(filling.Pair, filling.Filling.Lower, -part);
            Go(filling.Pair + 1, filling.Filling.Upper, part);
            breach += AreBreachesPriced ? part * filling.Breaches : 0;
        }

        return new BondPrices(joints, [.. shares.Select(share => Math.Clamp(share, 0, 1))], Math.Max(0, breach));

        void Go(int course, PricedCourse laid, double part)
        {
            if (_centre.IsShared(course))
            {
                laid.Joints.ForEach(joint => Spread(joints[course], joint, part));
                shares[course] += isOfCuts ? part * OfShare * laid.Cuts : 0;
            }
        }
    }

    private void Spread(double[] prices, int joint, double part)
    {
        for (var at = Math.Max(0, joint - (int)_reach); at <= Math.Min(prices.Length - 1, joint + (int)_reach); at++)
        {
            prices[at] += part * Nearness(at - joint);
        }
    }
}
