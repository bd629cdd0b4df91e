using ReferenceOptimum.Problems;

namespace ReferenceOptimum.Solving;

/// <summary>
/// Bounds for a block from a few neighbouring courses at a time, nothing asked of the others. A bond of the block fills each
/// window too; windows without a common course have no piece, lap or core in common, so that their least counts add up.
/// </summary>
/// <param name="effort">Deterministic time for one window.</param>
internal sealed class Windows(double effort)
{
    private const int Widest = 6;
    private const int WidestOfBreaches = 3;

    private readonly Dictionary<(string Block, BondLimits Limits, bool IsOfCuts, string Known), int> _known = [];
    private readonly Dictionary<(string Block, bool MayBear, byte Most), PairCounts> _knownCounts = [];

    /// <summary>No bond of the block has fewer breaches.</summary>
    /// <param name="block">What to bond.</param>
    /// <param name="given">Some bond of it.</param>
    public int Breaches(Block block, BlockBond given)
    {
        var limits = new CourseLimits();
        AddCounts(block, BlockCount.Of(block, given) with { Bearings = 1 }, limits);
        AddBreaches(block, given, limits);
        return limits.LeastBreaches(block.FirstCourse, block.LastCourse);
    }

    /// <summary>No bond with the breaches and bearings of a given one has fewer cuts; and what is known of its courses.</summary>
    public (int Least, CourseLimits Limits) Cuts(Block block, BlockBond bond)
    {
        var given = BlockCount.Of(block, bond);
        var limits = new CourseLimits();
        AddCounts(block, given, limits);
        AddBreaches(block, bond, limits);
        var least = limits.LeastCuts(block.FirstCourse, block.LastCourse, given.Cuts, given.Breaches);
        for (var width = 1; width <= Math.Min(Widest, block.LastCourse - block.FirstCourse + 1) && least < given.Cuts; width++)
        {
            for (var first = block.FirstCourse; first + width - 1 <= block.LastCourse; first++)
            {
                var last = first + width - 1;
                var elsewhere = limits.LeastBreaches(block.FirstCourse, first - 1) + limits.LeastBreaches(last + 1, block.LastCourse);
                var most = new BondLimits(given.Breaches - elsewhere, given.Bearings, null);
                limits.AddCuts(new Window(first, last, Least(block, bond, first, last, most, limits, isOfCuts: true)));
            }

            least = limits.LeastCuts(block.FirstCourse, block.LastCourse, given.Cuts, given.Breaches);
        }

        return (least, limits);
    }

    /// <summary>Stretches that can't be filled without a broken rule whatever their neighbours are.</summary>
    public HashSet<int> Forced(Block block) =>
    [
        .. Enumerable.Range(0, block.Stretches.Length)
            .Where(i => IsForced(block with { Stretches = [block.Stretches[i]], Bars = [] })),
    ];

    private bool IsForced(Block stretch)
    {
        var model = new BlockModel(stretch, BondLimits.None, Breadth.All);
        return Search.Minimise(model, model.Breaches, effort).Bound > 0;
    }

    /// <summary>Counts of single courses and of pairs, without the constraint solver.</summary>
    private void AddCounts(Block block, BondCount given, CourseLimits limits)
    {
        for (var first = block.FirstCourse; first <= block.LastCourse; first++)
        {
            for (var last = first; last <= Math.Min(first + 1, block.LastCourse); last++)
            {
                var window = block.Window(first, last);
                if (!window.Stretches.IsEmpty && window.LastCourse - window.FirstCourse == last - first)
                {
                    var key = (window.Key(), given.Bearings > 0, (byte)Math.Min(given.Breaches, PairCounts.None - 1));
                    if (!_knownCounts.TryGetValue(key, out var counts))
                    {
                        counts = PairBound.Of(window, key.Item2, key.Item3);
                        _knownCounts.Add(key, counts);
                    }

                    limits.Add(first, last, counts);
                }
            }
        }
    }

    /// <summary>Breaches of some neighbouring courses, as long as fewer than enough are known to be needed.</summary>
    private void AddBreaches(Block block, BlockBond given, CourseLimits limits)
    {
        var enough = BlockCount.Of(block, given).Breaches;
        for (var width = 1; width <= WidestOfBreaches && limits.LeastBreaches(block.FirstCourse, block.LastCourse) < enough; width++)
        {
            for (var first = block.FirstCourse; first + width - 1 <= block.LastCourse; first++)
            {
                var last = first + width - 1;
                limits.AddBreaches(new Window(first, last, Least(block, given, first, last, BondLimits.None, limits, isOfCuts: false)));
            }
        }
    }

    /// <summary>What some courses need; not searched where the given bond has no more than is known to be needed.</summary>
    private int Least(Block block, BlockBond given, int first, int last, BondLimits limits, CourseLimits known, bool isOfCuts)
    {
        var window = block.Window(first, last);
        if (window.Stretches.IsEmpty)
        {
            return 0;
        }

        var bond = given.Within(block, window);
        var count = BlockCount.Of(window, bond);
        var needed = isOfCuts ? known.LeastCuts(first, last, count.Cuts, limits.Breaches ?? count.Breaches) : known.LeastBreaches(first, last);
        if (needed == (isOfCuts ? count.Cuts : count.Breaches))
        {
            return needed;
        }

        var key = (window.Key(), limits, isOfCuts, known.Key(first, last));
        if (!_known.TryGetValue(key, out var least))
        {
            var model = new BlockModel(window, limits, Breadth.All);
            known.Hold(model.Model, first, last, model.CutsIn, model.BreachesIn);
            model.Hint(bond);
            least = Search.Minimise(model, isOfCuts ? model.Cuts : model.Breaches, effort).Bound ?? 0;
            _known.Add(key, least);
        }

        return least;
    }
}
