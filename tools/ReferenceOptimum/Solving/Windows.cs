using Google.OrTools.Sat;
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

    private readonly Dictionary<(string Block, BondLimits Limits, string? Known), int> _known = [];
    private readonly Dictionary<(string Block, bool MayBear), CutPairs> _knownPairs = [];

    /// <summary>No bond of the block has fewer breaches.</summary>
    /// <param name="enough">No more is asked for.</param>
    public int Breaches(Block block, int enough) => Packed(BreachWindows(block, enough), block.FirstCourse, block.LastCourse);

    /// <summary>No bond with the given breaches and bearings has fewer cuts; and what is known of its courses' cuts.</summary>
    public (int Least, CutLimits Limits) Cuts(Block block, BondCount given)
    {
        var breaches = given.Breaches == 0 ? [] : BreachWindows(block, given.Breaches);
        var limits = new CutLimits();
        var least = 0;
        for (var width = 1; width <= Math.Min(Widest, block.LastCourse - block.FirstCourse + 1) && least < given.Cuts; width++)
        {
            for (var first = block.FirstCourse; first + width - 1 <= block.LastCourse; first++)
            {
                var last = first + width - 1;
                var most = new BondLimits(given.Breaches - Elsewhere(first, last), given.Bearings, null);
                limits.Add(new Window(first, last, Least(block.Window(first, last), most, limits)));
            }

            least = limits.Least(block.FirstCourse, block.LastCourse, given.Cuts);
            if (width == 2 && least < given.Cuts)
            {
                AddPairs(block, given, limits, first => given.Breaches == Elsewhere(first, first + 1));
                least = limits.Least(block.FirstCourse, block.LastCourse, given.Cuts);
            }
        }

        return (least, limits);

        int Elsewhere(int first, int last) => Packed(breaches, block.FirstCourse, first - 1) + Packed(breaches, last + 1, block.LastCourse);
    }

    /// <summary>Stretches that can't be filled without a broken rule whatever their neighbours are.</summary>
    public HashSet<int> Forced(Block block) =>
    [
        .. Enumerable.Range(0, block.Stretches.Length)
            .Where(i => Least(block with { Stretches = [block.Stretches[i]], Bars = [] }, BondLimits.None, null) > 0),
    ];

    private void AddPairs(Block block, BondCount given, CutLimits limits, Func<int, bool> isWhole)
    {
        for (var first = block.FirstCourse; first < block.LastCourse; first++)
        {
            var pair = block.Window(first, first + 1);
            if (!pair.Stretches.IsEmpty && pair.IsPair && isWhole(first))
            {
                var key = (pair.Key(), given.Bearings > 0);
                if (!_knownPairs.TryGetValue(key, out var pairs))
                {
                    pairs = PairBound.Of(pair, given.Bearings > 0);
                    _knownPairs.Add(key, pairs);
                }

                limits.Add(first, pairs);
            }
        }
    }

    private List<Window> BreachWindows(Block block, int enough)
    {
        var windows = new List<Window>();
        for (var width = 1; width <= WidestOfBreaches && Packed(windows, block.FirstCourse, block.LastCourse) < enough; width++)
        {
            for (var first = block.FirstCourse; first + width - 1 <= block.LastCourse; first++)
            {
                windows.Add(new Window(first, first + width - 1, Least(block.Window(first, first + width - 1), BondLimits.None, null)));
            }
        }

        return windows;
    }

    /// <summary>The most that windows which share no course ask for together.</summary>
    private static int Packed(List<Window> windows, int first, int last)
    {
        var most = new int[Math.Max(0, last - first + 1) + 1];
        for (var course = first; course <= last; course++)
        {
            most[course - first + 1] = windows.Where(window => window.Last == course && window.First >= first)
                .Select(window => most[window.First - first] + window.Least).Append(most[course - first]).Max();
        }

        return most[^1];
    }

    /// <param name="known">What is known of the cuts, where these are counted; null: breaches are.</param>
    private int Least(Block window, BondLimits limits, CutLimits? known)
    {
        if (window.Stretches.IsEmpty)
        {
            return 0;
        }

        var key = (window.Key(), limits, known?.Key(window.FirstCourse, window.LastCourse));
        if (!_known.TryGetValue(key, out var least))
        {
            var model = new BlockModel(window, limits, Breadth.All);
            known?.Hold(model.Model, window.FirstCourse, window.LastCourse, model.CutsIn);
            least = Search.Minimise(model, known is null ? model.Breaches : model.Cuts, effort).Bound ?? 0;
            _known.Add(key, least);
        }

        return least;
    }
}
