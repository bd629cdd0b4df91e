using System.Collections.Immutable;
using IfcCourser.Rules;

namespace IfcCourser.Coursing;

/// <summary>Gathers rows for segments above each other that are filled together: what suits both, when each beside the other's rows does not.</summary>
internal sealed class RowPairs
{
    private readonly ImmutableArray<SegmentRows> _segments;
    private readonly ImmutableArray<(int Lower, int Upper)> _pairs;
    private readonly ILookup<int, int> _beside;
    private readonly RowLaps _laps;
    private readonly LayoutRules _rules;
    private readonly PairSolver _solver;

    /// <param name="segments">The wall's segments; equal ones share their rows.</param>
    /// <param name="pairs">Segments of neighbouring courses whose joints may come near each other, from below.</param>
    /// <param name="solvers">Finds pairs of rows.</param>
    public RowPairs(ImmutableArray<SegmentRows> segments, ImmutableArray<(int Lower, int Upper)> pairs, BondSolvers solvers)
    {
        (_segments, _laps, _rules, _solver) = (segments, solvers.Laps, solvers.Rules, solvers.Pairs);
        _beside = pairs.Concat(pairs.Select(pair => (Lower: pair.Upper, Upper: pair.Lower))).ToLookup(pair => pair.Lower, pair => pair.Upper);
        _pairs =
        [
            .. pairs.Where(pair => (segments[pair.Lower], segments[pair.Upper]) is var (lower, upper)
                && !lower.IsRaked && !upper.IsRaked && lower.Left < upper.Right && upper.Left < lower.Right),
        ];
    }

    /// <summary>Gathers the rows that cost least where but the two of a pair count.</summary>
    /// <returns>What the wall costs at least over what its segments cost alone, as far as pairs say.</returns>
    public long Gather()
    {
        var more = new Dictionary<(SegmentRows Lower, SegmentRows Upper), long>();
        foreach (var (lower, upper) in _pairs.Select(pair => (_segments[pair.Lower], _segments[pair.Upper])))
        {
            if (!more.ContainsKey((lower, upper)))
            {
                more[(lower, upper)] = more[(upper, lower)] = Gather(lower, 1, upper, 1) - lower.Rows[0].Cost - upper.Rows[0].Cost;
                if (more[(lower, upper)] > _rules.Set.Aims.Cut / 2)
                {
                    // Of an odd number of courses the one row is laid more often.
                    Gather(lower, 2, upper, 1);
                    Gather(lower, 1, upper, 2);
                }
            }
        }

        // Pairs without a common segment add up.
        return Math.Max(Sum(_pairs), Sum(_pairs.Reverse()));

        long Sum(IEnumerable<(int Lower, int Upper)> pairs)
        {
            var met = new HashSet<int>();
            return pairs.Where(pair => more[(_segments[pair.Lower], _segments[pair.Upper])] > _rules.Set.Aims.Cut / 2
                    && !met.Contains(pair.Lower) && !met.Contains(pair.Upper) && met.Add(pair.Lower) && met.Add(pair.Upper))
                .Sum(pair => more[(_segments[pair.Lower], _segments[pair.Upper])]);
        }
    }

    /// <summary>A wall in which pair after pair is filled anew beside the rows about it, where that saves a cut or worse.</summary>
    public int[] Improve(int[] wall)
    {
        var rows = (int[])wall.Clone();
        foreach (var pair in _pairs)
        {
            var (lower, upper) = (_segments[pair.Lower], _segments[pair.Upper]);
            var (besideLower, besideUpper) = (Beside(pair.Lower, pair.Upper, rows), Beside(pair.Upper, pair.Lower, rows));
            long Cost(int below, int above) =>
                lower.Rows[below].Cost + besideLower.CostOf(lower.Rows[below].Joints) + upper.Rows[above].Cost + besideUpper.CostOf(upper.Rows[above].Joints)
                + _laps.Of(lower.Rows[below].Joints, upper.Rows[above].Joints);

            var known = Cost(rows[pair.Lower], rows[pair.Upper]);
            if (Solve(lower, besideLower, 1, upper, besideUpper, 1, known).Rows is { } found && Cost(found.Lower, found.Upper) < known)
            {
                (rows[pair.Lower], rows[pair.Upper]) = found;
            }
        }

        return rows;
    }

    /// <summary>Gathers pairs of rows beside the rows of a wall below them, and beside those above them: the other side is left to the next choice.</summary>
    public void GatherBeside(int[] wall)
    {
        var none = new JointsBeside(_laps, [], []);
        foreach (var pair in _pairs)
        {
            var (lower, upper) = (_segments[pair.Lower], _segments[pair.Upper]);
            Gather(lower, Beside(pair.Lower, pair.Upper, wall), upper, none);
            Gather(lower, none, upper, Beside(pair.Upper, pair.Lower, wall));
        }
    }

    private void Gather(SegmentRows lower, JointsBeside besideLower, SegmentRows upper, JointsBeside besideUpper)
    {
        var below = lower.Rows.Select(row => row.Cost + besideLower.CostOf(row.Joints)).ToList();
        var above = upper.Rows.Select(row => row.Cost + besideUpper.CostOf(row.Joints)).ToList();
        var known = Enumerable.Range(0, below.Count)
            .Min(a => Enumerable.Range(0, above.Count).Min(b => below[a] + above[b] + _laps.Of(lower.Rows[a].Joints, upper.Rows[b].Joints)));
        Solve(lower, besideLower, 1, upper, besideUpper, 1, known);
    }

    /// <summary>Gathers the segments' answers to cheap rows below them together with cheap rows above: those of a wall and some others.</summary>
    public void GatherBetween(int[] wall)
    {
        const int MostRows = 8;
        var met = new HashSet<(SegmentRows Below, SegmentRows Between, SegmentRows Above)>();
        IEnumerable<int> Cheap(int segment) => Enumerable.Range(0, _segments[segment].Rows.Count)
            .OrderBy(row => _segments[segment].Rows[row].Cost).Take(MostRows).Prepend(wall[segment]).Distinct();

        // Segments are numbered from below.
        foreach (var (below, between, above) in Enumerable.Range(0, _segments.Length).SelectMany(s =>
            _beside[s].Where(other => other < s).SelectMany(lower => _beside[s].Where(other => other > s).Select(upper => (lower, s, upper)))))
        {
            if (met.Add((_segments[below], _segments[between], _segments[above])))
            {
                foreach (var (lower, upper) in Cheap(below).SelectMany(lower => Cheap(above).Select(upper => (lower, upper))))
                {
                    var rows = (int[])wall.Clone();
                    (rows[below], rows[above]) = (lower, upper);
                    _segments[between].AddCheapest(Beside(between, between, rows));
                }
            }
        }
    }

    /// <returns>What rows of the two segments cost at least together, to half a cut.</returns>
    private long Gather(SegmentRows lower, int lowerWeight, SegmentRows upper, int upperWeight)
    {
        var none = new JointsBeside(_laps, [], []);
        return Solve(lower, none, lowerWeight, upper, none, upperWeight, Known(lower, lowerWeight, upper, upperWeight)).Least;
    }

    /// <summary>What the gathered rows of two segments cost at least together.</summary>
    private long Known(SegmentRows lower, int lowerWeight, SegmentRows upper, int upperWeight) => lower.Rows.Min(below =>
        upper.Rows.Min(above => (lowerWeight * below.Cost) + (upperWeight * above.Cost) + _laps.Of(below.Joints, above.Joints)));

    private JointsBeside Beside(int segment, int partner, int[] rows) =>
        new(_laps, [.. _beside[segment].Where(other => other != partner).Select(other => _segments[other].Rows[rows[other]].Joints)], []);

    /// <returns>The rows found, and what two rows cost at least: what is known where no less is worth a search.</returns>
    private ((int Lower, int Upper)? Rows, long Least) Solve(
        SegmentRows lower, JointsBeside besideLower, int lowerWeight, SegmentRows upper, JointsBeside besideUpper, int upperWeight, long known)
    {
        // What saves no cut is not worth the search.
        var limit = known - (_rules.Set.Aims.Cut / 2);
        if ((lowerWeight * lower.Rows[0].Cost) + (upperWeight * upper.Rows[0].Cost) >= limit)
        {
            return (null, known);
        }

        var (below, above) = (lower.TaskBeside(besideLower), upper.TaskBeside(besideUpper));
        var answer = _solver.Solve(new PairTask(lower.Left, below, lowerWeight), new PairTask(upper.Left, above, upperWeight), limit);
        return answer.Pieces is { } pieces
            ? ((lower.Add(pieces.Lower), upper.Add(pieces.Upper)), answer.Least)
            : (null, answer.Least < limit ? answer.Least : known);
    }
}
