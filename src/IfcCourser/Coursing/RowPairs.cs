using System.Collections.Immutable;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>Gathers rows for segments above each other that are filled together: what the one could not know of the other.</summary>
internal sealed class RowPairs
{
    private readonly ImmutableArray<SegmentRows> _segments;
    private readonly ImmutableArray<(int Lower, int Upper)> _pairs;
    private readonly RowLaps _laps;
    private readonly LayoutRules _rules;
    private readonly PairSolver _solver;
    private readonly Dictionary<(SegmentRows Lower, SegmentRows Upper), long> _least = [];

    /// <param name="segments">The wall's segments; equal ones share their rows.</param>
    /// <param name="pairs">Segments of neighbouring courses whose joints may come near each other, from below.</param>
    /// <param name="laps">What laps cost.</param>
    /// <param name="rules">Catalog and rules.</param>
    public RowPairs(ImmutableArray<SegmentRows> segments, IEnumerable<(int Lower, int Upper)> pairs, RowLaps laps, LayoutRules rules)
    {
        (_segments, _laps, _rules, _solver) = (segments, laps, rules, new PairSolver(laps, rules));
        _pairs =
        [
            .. pairs.Where(pair => (segments[pair.Lower], segments[pair.Upper]) is var (lower, upper)
                && !lower.IsRaked && !upper.IsRaked && lower.Left < upper.Right && upper.Left < lower.Right),
        ];
    }

    /// <summary>Gathers the rows that cost least where only the two of a pair count; whether any is new.</summary>
    public bool Gather()
    {
        var none = new JointsBeside(_laps, [], []);
        var isNew = false;
        foreach (var (lower, upper) in _pairs.Select(pair => (_segments[pair.Lower], _segments[pair.Upper])).Distinct())
        {
            var known = lower.Rows.Min(below => upper.Rows.Min(above => below.Cost + above.Cost + _laps.Of(below.Joints, above.Joints)));
            isNew |= Gather(lower, none, upper, none, known);
            _least[(lower, upper)] = lower.Rows.Min(below => upper.Rows.Min(above => below.Cost + above.Cost + _laps.Of(below.Joints, above.Joints)));
        }

        return isNew;
    }

    private bool Gather(SegmentRows lower, JointsBeside besideLower, SegmentRows upper, JointsBeside besideUpper, long known)
    {
        // What saves no cut is not worth the search.
        var limit = known - _rules.Set.Aims.Cut + 1;
        if (lower.Rows[0].Cost + upper.Rows[0].Cost >= limit)
        {
            return false;
        }

        var first = new PairRow(lower.Left, lower.TaskBeside(besideLower), _rules);
        var second = new PairRow(upper.Left, upper.TaskBeside(besideUpper), _rules);
        return _solver.Solve(first, second, limit) is { } rows && (lower.Add(rows.A) | upper.Add(rows.B));
    }
}
