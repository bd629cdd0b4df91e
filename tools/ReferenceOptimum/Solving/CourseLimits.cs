using Google.OrTools.Sat;

namespace ReferenceOptimum.Solving;

/// <summary>
/// What is known of the cuts and breaches of a block's courses before it is solved as a whole: how many some neighbouring courses need, and which
/// counts one or two of them can have together. Told to the constraint solver, it proves windows and blocks that it does not prove from pieces alone.
/// </summary>
internal sealed class CourseLimits
{
    private readonly List<Window> _breaches = [];
    private readonly List<Window> _cuts = [];
    private readonly List<(int First, int Last, PairCounts Counts)> _counts = [];

    /// <summary>Breaches that some courses need.</summary>
    public void AddBreaches(Window window) => _breaches.Add(window);

    /// <summary>Cuts that some courses need where the block has no more breaches than it must.</summary>
    public void AddCuts(Window window) => _cuts.Add(window);

    /// <summary>Counts that one course or two neighbouring ones can have.</summary>
    public void Add(int first, int last, PairCounts counts) => _counts.Add((first, last, counts));

    /// <summary>Holds a model to all that is known of the courses from first to last.</summary>
    /// <param name="model">Whose counts they are.</param>
    /// <param name="first">The first course.</param>
    /// <param name="last">The last course.</param>
    /// <param name="cutsIn">Cuts from one course to another.</param>
    /// <param name="breachesIn">Breaches between one course and another, of laps among them too.</param>
    public void Hold(CpModel model, int first, int last, Func<int, int, LinearExpr> cutsIn, Func<int, int, LinearExpr> breachesIn)
    {
        foreach (var window in Within(_cuts, first, last))
        {
            model.Add(cutsIn(window.First, window.Last) >= window.Least);
        }

        HoldCounts(model, first, last, cutsIn, breachesIn);
    }

    /// <summary>No fewer breaches than these are needed by what is known.</summary>
    public int LeastBreaches(int first, int last)
    {
        if (first > last)
        {
            return 0;
        }

        var (model, cuts, breaches) = Counts(first, last, 1000, 1000);
        HoldCounts(model, first, last, cuts, breaches);
        return Search.Least(model, breaches(first, last), 1) ?? 0;
    }

    /// <summary>No fewer cuts than these are needed by what is known.</summary>
    /// <param name="first">The first course.</param>
    /// <param name="last">The last course.</param>
    /// <param name="most">Cuts of some bond of the courses.</param>
    /// <param name="mostBreaches">Its breaches.</param>
    public int LeastCuts(int first, int last, int most, int mostBreaches)
    {
        var (model, cuts, breaches) = Counts(first, last, most, mostBreaches);
        Hold(model, first, last, cuts, breaches);
        return Math.Min(most, Search.Least(model, cuts(first, last), 1) ?? most);
    }

    /// <summary>As text, courses counted from the first.</summary>
    public string Key(int first, int last) => string.Join(
        ' ',
        Within(_cuts, first, last).Select(window => $"{window.First - first}-{window.Last - first}:{window.Least}")
            .Concat(Within(_breaches, first, last).Select(window => $"{window.First - first}-{window.Last - first}!{window.Least}"))
            .Concat(_counts.Where(one => one.First >= first && one.Last <= last).Select(one => $"{one.First - first}-{one.Last - first}:{one.Counts.Key()}")));

    private static IEnumerable<Window> Within(List<Window> windows, int first, int last) => windows.Where(window => window.First >= first && window.Last <= last);

    /// <summary>Counts alone: cuts and breaches of each course, and breaches of each with the one above it.</summary>
    private static (CpModel Model, Func<int, int, LinearExpr> Cuts, Func<int, int, LinearExpr> Breaches) Counts(int first, int last, int mostCuts, int mostBreaches)
    {
        var model = new CpModel();
        var courses = Enumerable.Range(first, last - first + 1).ToList();
        var cuts = courses.ToDictionary(course => course, course => model.NewIntVar(0, mostCuts, $"cuts {course}"));
        var own = courses.ToDictionary(course => course, course => model.NewIntVar(0, mostBreaches, $"own {course}"));
        var laps = courses.ToDictionary(course => course, course => model.NewIntVar(0, mostBreaches, $"laps {course}"));
        model.Add(Breaches(first, last) <= mostBreaches);
        return (model, (from, to) => LinearExpr.Sum(courses.Where(course => course >= from && course <= to).Select(course => cuts[course])), Breaches);

        LinearExpr Breaches(int from, int to) => LinearExpr.Sum(courses.Where(course => course >= from && course <= to).Select(course => own[course])
            .Concat(courses.Where(course => course >= from && course < to).Select(course => laps[course])));
    }

    private void HoldCounts(CpModel model, int first, int last, Func<int, int, LinearExpr> cutsIn, Func<int, int, LinearExpr> breachesIn)
    {
        foreach (var window in Within(_breaches, first, last))
        {
            model.Add(breachesIn(window.First, window.Last) >= window.Least);
        }

        foreach (var (lower, upper, counts) in _counts.Where(one => one.First >= first && one.Last <= last))
        {
            Hold(model, counts, cutsIn(lower, lower), upper > lower ? cutsIn(upper, upper) : LinearExpr.Constant(0), breachesIn(lower, upper));
        }
    }

    private static void Hold(CpModel model, PairCounts counts, LinearExpr lower, LinearExpr upper, LinearExpr breaches)
    {
        model.Add(breaches >= counts.Fewest(PairCounts.Most, PairCounts.Most));
        foreach (var broken in counts.Steps)
        {
            foreach (var (a, b) in counts.Forbidden(broken))
            {
                model.AddBoolOr(
                [
                    IsMore(breaches, broken),
                    .. a is { } ofLower ? [IsMore(lower, ofLower)] : Array.Empty<ILiteral>(),
                    .. b is { } ofUpper ? [IsMore(upper, ofUpper)] : Array.Empty<ILiteral>(),
                ]);
            }
        }

        foreach (var (ofLower, ofUpper) in new[] { (1, 0), (0, 1), (1, 1), (2, 1), (1, 2) })
        {
            model.Add((lower * ofLower) + (upper * ofUpper) >= counts.Least(ofLower, ofUpper, PairCounts.None - 1));
        }

        ILiteral IsMore(LinearExpr count, int than)
        {
            var isMore = model.NewBoolVar("");
            model.Add(count > than).OnlyEnforceIf(isMore);
            return isMore;
        }
    }
}
