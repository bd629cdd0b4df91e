using System.Collections.Immutable;
using IfcCourser.Rules;
using IfcCourser.Units;

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
    private readonly HashSet<(SegmentTask Lower, SegmentTask Upper, Length Shift, long Limit)> _tried = [];

    /// <param name="segments">The wall's segments; equal ones share their rows.</param>
    /// <param name="pairs">Segments of neighbouring courses whose joints may come near each other, from below.</param>
    /// <param name="laps">What laps cost.</param>
    /// <param name="rules">Catalog and rules.</param>
    public RowPairs(ImmutableArray<SegmentRows> segments, ImmutableArray<(int Lower, int Upper)> pairs, RowLaps laps, LayoutRules rules)
    {
        (_segments, _laps, _rules, _solver) = (segments, laps, rules, new PairSolver(laps, rules));
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
        var none = new JointsBeside(_laps, [], []);
        var more = new Dictionary<(SegmentRows Lower, SegmentRows Upper), long>();
        foreach (var pair in _pairs)
        {
            var (lower, upper) = (_segments[pair.Lower], _segments[pair.Upper]);
            if (more.TryGetValue((upper, lower), out var turned))
            {
                more[(lower, upper)] = turned;
            }
            else if (!more.ContainsKey((lower, upper)))
            {
                var known = lower.Rows.Min(below => upper.Rows.Min(above => below.Cost + above.Cost + _laps.Of(below.Joints, above.Joints)));
                known = Solve(lower, none, upper, none, known)?.Cost ?? known;
                more.Add((lower, upper), known - lower.Rows[0].Cost - upper.Rows[0].Cost);
            }
        }

        // Pairs without a common segment add up.
        return Math.Max(Sum(_pairs), Sum(_pairs.Reverse()));

        long Sum(IEnumerable<(int Lower, int Upper)> pairs)
        {
            var met = new HashSet<int>();
            return pairs.Where(pair => more[(_segments[pair.Lower], _segments[pair.Upper])] >= _rules.Set.Aims.Cut
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
            var (below, above) = (lower.Rows[rows[pair.Lower]], upper.Rows[rows[pair.Upper]]);
            var known = below.Cost + above.Cost + _laps.Of(below.Joints, above.Joints) + besideLower.CostOf(below.Joints) + besideUpper.CostOf(above.Joints);
            if (Solve(lower, besideLower, upper, besideUpper, known) is { } found)
            {
                (rows[pair.Lower], rows[pair.Upper]) = (found.Lower, found.Upper);
            }
        }

        return rows;
    }

    private JointsBeside Beside(int segment, int partner, int[] rows) =>
        new(_laps, [.. _beside[segment].Where(other => other != partner).Select(other => _segments[other].Rows[rows[other]].Joints)], []);

    private (int Lower, int Upper, long Cost)? Solve(SegmentRows lower, JointsBeside besideLower, SegmentRows upper, JointsBeside besideUpper, long known)
    {
        // What saves no cut is not worth the search.
        var limit = known - _rules.Set.Aims.Cut + 1;
        var (below, above) = (lower.TaskBeside(besideLower), upper.TaskBeside(besideUpper));
        if (lower.Rows[0].Cost + upper.Rows[0].Cost >= limit || !_tried.Add((below, above, upper.Left - lower.Left, limit))
            || _solver.Solve(new PairRow(lower.Left, below, _rules), new PairRow(upper.Left, above, _rules), limit) is not { } pieces)
        {
            return null;
        }

        var (first, second) = (lower.Add(pieces.A), upper.Add(pieces.B));
        var (rowBelow, rowAbove) = (lower.Rows[first], upper.Rows[second]);
        var cost = rowBelow.Cost + rowAbove.Cost + _laps.Of(rowBelow.Joints, rowAbove.Joints)
            + besideLower.CostOf(rowBelow.Joints) + besideUpper.CostOf(rowAbove.Joints);
        return cost < known ? (first, second, cost) : null;
    }
}
