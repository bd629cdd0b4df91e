using System.Collections.Immutable;
using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>Gathers rows for segments above each other that are filled together: what suits both, when each beside the other's rows does not.</summary>
internal sealed class RowPairs
{
    private readonly ImmutableArray<SegmentRows> _segments;
    private readonly ImmutableArray<(int Lower, int Upper)> _pairs;
    private readonly ILookup<int, int> _beside;
    private readonly RowLaps _laps;
    private readonly JointsBeside _none;
    private readonly BondSolvers _solvers;

    /// <summary>Half of what a cut costs: what saves no cut is not worth a search.</summary>
    private readonly long _worth;

    /// <param name="wall">Its segments.</param>
    /// <param name="solvers">Finds pairs of rows.</param>
    public RowPairs(WallRows wall, BondSolvers solvers)
    {
        (_segments, _solvers, _laps, _worth) = (wall.Segments, solvers, solvers.Laps, solvers.Rules.Set.Aims.Cut / 2);
        _none = new JointsBeside(_laps, [], []);
        _beside = wall.Pairs.Concat(wall.Pairs.Select(pair => (Lower: pair.Upper, Upper: pair.Lower))).ToLookup(pair => pair.Lower, pair => pair.Upper);
        _pairs =
        [
            .. wall.Pairs.Where(pair => (_segments[pair.Lower], _segments[pair.Upper]) is var (lower, upper)
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
                more[(lower, upper)] = more[(upper, lower)] = Gather(new(lower, _none), new(upper, _none)) - lower.Rows[0].Cost - upper.Rows[0].Cost;
                if (more[(lower, upper)] > _worth)
                {
                    // Of an odd number of courses the one row is laid more often.
                    Gather(new(lower, _none, 2), new(upper, _none));
                    Gather(new(lower, _none), new(upper, _none, 2));
                }
            }
        }

        // Pairs without a common segment add up.
        return Math.Max(Sum(_pairs), Sum(_pairs.Reverse()));

        long Sum(IEnumerable<(int Lower, int Upper)> pairs)
        {
            var met = new HashSet<int>();
            return pairs.Where(pair => more[(_segments[pair.Lower], _segments[pair.Upper])] > _worth
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
            var (lower, upper) = (new Side(_segments[pair.Lower], Beside(pair.Lower, pair.Upper, rows)), new Side(_segments[pair.Upper], Beside(pair.Upper, pair.Lower, rows)));
            long Cost(int below, int above) =>
                lower.CostOf(below) + upper.CostOf(above) + _laps.Of(lower.JointsOf(below), upper.JointsOf(above));

            var known = Cost(rows[pair.Lower], rows[pair.Upper]);
            if (Solve(lower, upper, known).Rows is { } found && Cost(found.Lower, found.Upper) < known)
            {
                (rows[pair.Lower], rows[pair.Upper]) = found;
            }
        }

        return rows;
    }

    /// <summary>Gathers pairs of rows beside rows below them, and beside rows above them: the other side is left to the next choice.</summary>
    /// <param name="below">By segment the row that lies below those filled.</param>
    /// <param name="above">By segment the row that lies above those filled.</param>
    public void GatherBeside(int[] below, int[] above)
    {
        var met = new HashSet<(PairTask Lower, PairTask Upper)>();
        foreach (var pair in _pairs)
        {
            var (lower, upper) = (_segments[pair.Lower], _segments[pair.Upper]);
            GatherOnce(new(lower, Beside(pair.Lower, pair.Upper, [.. below[..pair.Lower], .. above[pair.Lower..]])), new(upper, _none));
            GatherOnce(new(lower, _none), new(upper, Beside(pair.Upper, pair.Lower, [.. below[..pair.Upper], .. above[pair.Upper..]])));
        }

        void GatherOnce(Side lower, Side upper)
        {
            if (_solvers.Effort.MaySearch() && met.Add((lower.Task, upper.Task)))
            {
                Gather(lower, upper);
            }
        }
    }

    /// <summary>Gathers rows of two segments that cost less together than those that are known.</summary>
    /// <returns>What rows of the two segments cost at least together, to half a cut.</returns>
    private long Gather(Side lower, Side upper)
    {
        var (below, above) = (lower.Costs(), upper.Costs());
        var known = long.MaxValue;
        for (var a = 0; a < below.Length; a++)
        {
            for (var b = 0; b < above.Length; b++)
            {
                if (below[a] + above[b] < known)
                {
                    _solvers.Effort.SpendComparisons(lower.JointsOf(a).Length + upper.JointsOf(b).Length);
                    known = Math.Min(known, below[a] + above[b] + _laps.Of(lower.JointsOf(a), upper.JointsOf(b)));
                }
            }
        }

        return Solve(lower, upper, known).Least;
    }

    private JointsBeside Beside(int segment, int partner, int[] rows) =>
        new(_laps, [.. _beside[segment].Where(other => other != partner).Select(other => _segments[other].Rows[rows[other]].Joints)], []);

    /// <returns>The rows found, and what two rows cost at least: what is known where no less is worth a search.</returns>
    private ((int Lower, int Upper)? Rows, long Least) Solve(Side lower, Side upper, long known)
    {
        var limit = known - _worth;
        if (lower.Least + upper.Least >= limit)
        {
            return (null, known);
        }

        var answer = _solvers.Pairs.Solve(lower.Task, upper.Task, limit);
        return answer.Pieces is { } pieces
            ? ((lower.Segment.Add(pieces.Lower), upper.Segment.Add(pieces.Upper)), answer.Least)
            : (null, answer.Least < limit ? answer.Least : known);
    }

    /// <summary>One of two segments that are filled together.</summary>
    /// <param name="Segment">Its rows.</param>
    /// <param name="Beside">Joints of other courses that its own lap.</param>
    /// <param name="Weight">How often what it costs alone counts.</param>
    private readonly record struct Side(SegmentRows Segment, JointsBeside Beside, int Weight = 1)
    {
        public PairTask Task => new(Segment.Left, Segment.TaskBeside(Beside), Weight);

        /// <summary>No row costs less.</summary>
        public long Least => Weight * Segment.Rows[0].Cost;

        public Length[] JointsOf(int row) => Segment.Rows[row].Joints;

        public long CostOf(int row) => (Weight * Segment.Rows[row].Cost) + Beside.CostOf(JointsOf(row));

        public long[] Costs() => [.. Enumerable.Range(0, Segment.Rows.Count).Select(CostOf)];
    }
}
