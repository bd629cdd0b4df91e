using Google.OrTools.Sat;

namespace ReferenceOptimum.Solving;

/// <summary>
/// What is known of the cuts of a block's courses before it is solved as a whole: how many some neighbouring courses need, and which counts
/// two neighbours can have together. Told to the constraint solver, it proves windows and blocks that it does not prove from pieces alone.
/// </summary>
internal sealed class CutLimits
{
    private readonly List<Window> _windows = [];
    private readonly SortedDictionary<int, CutPairs> _pairs = [];

    public void Add(Window window) => _windows.Add(window);

    /// <summary>Counts that a course can have together with the one above it.</summary>
    public void Add(int lower, CutPairs pairs) => _pairs.Add(lower, pairs);

    /// <summary>Holds a model to all that is known of the courses from first to last.</summary>
    /// <param name="cutsIn">The model's cuts from one course to another.</param>
    public void Hold(CpModel model, int first, int last, Func<int, int, LinearExpr> cutsIn)
    {
        foreach (var window in _windows.Where(window => window.First >= first && window.Last <= last))
        {
            model.Add(cutsIn(window.First, window.Last) >= window.Least);
        }

        foreach (var (lower, pairs) in _pairs.Where(pair => pair.Key >= first && pair.Key < last))
        {
            Hold(model, pairs, cutsIn(lower, lower), cutsIn(lower + 1, lower + 1));
        }
    }

    /// <summary>No more cuts than these are needed by what is known.</summary>
    /// <param name="most">Cuts of some bond of the block.</param>
    public int Least(int first, int last, int most)
    {
        var model = new CpModel();
        var cuts = Enumerable.Range(first, last - first + 1).Select(course => model.NewIntVar(0, most, $"course {course}")).ToList();
        Hold(model, first, last, (from, to) => LinearExpr.Sum(cuts.Skip(from - first).Take(to - from + 1)));
        return Math.Min(most, Search.Least(model, LinearExpr.Sum(cuts), 1) ?? most);
    }

    /// <summary>As text, courses counted from the first.</summary>
    public string Key(int first, int last) => string.Join(
        ' ',
        _windows.Where(window => window.First >= first && window.Last <= last).Select(window => $"{window.First - first}-{window.Last - first}:{window.Least}")
            .Concat(_pairs.Where(pair => pair.Key >= first && pair.Key < last).Select(pair => $"{pair.Key - first}:{pair.Value.Bits:x4}")));

    private static void Hold(CpModel model, CutPairs pairs, LinearExpr lower, LinearExpr upper)
    {
        foreach (var (a, b) in pairs.Forbidden())
        {
            var isMore = model.NewBoolVar("");
            model.Add(lower > a).OnlyEnforceIf(isMore);
            model.Add(upper > b).OnlyEnforceIf(isMore.Not());
        }

        foreach (var (ofLower, ofUpper) in new[] { (1, 0), (0, 1), (1, 1), (2, 1), (1, 2) })
        {
            model.Add((lower * ofLower) + (upper * ofUpper) >= pairs.Least(ofLower, ofUpper));
        }
    }
}
