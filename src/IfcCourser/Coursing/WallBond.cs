using System.Collections.Immutable;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>
/// Bonds a wall. Built from the bottom up, each course is filled exactly, given the one below; where the wall so reaches what
/// its segments cost at least on their own, nothing can save a cut. Otherwise rows of pieces are gathered for every segment
/// (exact answers to the neighbours' rows), the best wall that they can make is chosen exactly, and its neighbours'
/// answers are gathered in turn, until there are no new ones.
/// </summary>
internal sealed class WallBond
{
    private const int MostRounds = 8;

    private readonly ImmutableArray<ShapedCourse> _shapes;
    private readonly BondAims _aims;
    private readonly RowLaps _laps;
    private readonly ImmutableArray<SegmentRows> _segments;
    private readonly ImmutableArray<ImmutableArray<int>> _ofCourse;
    private readonly ImmutableArray<(int Lower, int Upper)> _pairs;

    public WallBond(
        ImmutableArray<ShapedCourse> shapes, ImmutableArray<Lintel> lintels, ImmutableArray<Bar> bars, Length thickness, LayoutRules rules, RestTables tables)
    {
        _shapes = shapes;
        _aims = rules.Set.Aims;
        _laps = new RowLaps(thickness, rules);
        var (solver, costs) = (new SegmentSolver(rules, tables), new PieceCosts(rules));
        var fixedZones = new FixedZones(shapes, lintels, bars, _laps, rules);
        var known = new Dictionary<(Length Left, SegmentTask Alone), SegmentRows>();
        var segments = ImmutableArray.CreateBuilder<SegmentRows>();
        var courses = ImmutableArray.CreateBuilder<ImmutableArray<int>>(shapes.Length);
        for (var course = 0; course < shapes.Length; course++)
        {
            courses.Add([.. Enumerable.Range(segments.Count, shapes[course].Segments.Length)]);
            var zones = fixedZones.Of(course);
            foreach (var segment in shapes[course].Segments)
            {
                var (left, size) = (segment.Box.Left, segment.Box.Width);
                var alone = new SegmentTask(size, segment.Start, segment.End, [.. SegmentRows.Within(zones, left, size)]);
                if (!known.TryGetValue((left, alone), out var rows))
                {
                    rows = new SegmentRows(left, alone, solver, costs);
                    known.Add((left, alone), rows);
                }

                segments.Add(rows);
            }
        }

        _segments = segments.ToImmutable();
        _ofCourse = courses.ToImmutable();
        _pairs = [.. Pairs()];
    }

    public ImmutableArray<LaidCourse> Solve()
    {
        var alone = _segments.Sum(segment => segment.Rows[segment.Cheapest(new JointsBeside(_laps, [], []))].Cost);
        bool IsBest(int[] rows) => CostOf(rows) - alone < _aims.Short;

        var best = Build(Enumerable.Range(0, _shapes.Length));
        if (!IsBest(best))
        {
            best = Better(best, Build(Enumerable.Range(0, _shapes.Length).Reverse()));
        }

        if (!IsBest(best))
        {
            foreach (var segment in _segments.Distinct())
            {
                segment.AddLeaning(_aims.CutAtJamb);
            }

            for (var (round, isNew) = (0, true); isNew && round < MostRounds && !IsBest(best); round++)
            {
                isNew = GatherToRows() | Gather(best);
                best = Better(best, Choose(best));
            }
        }

        return Courses(Settle(best));
    }

    /// <summary>Fills course by course, each given those filled before.</summary>
    private int[] Build(IEnumerable<int> courses)
    {
        var rows = new int[_segments.Length];
        Array.Fill(rows, -1);
        foreach (var course in courses)
        {
            var beside = Beside(rows, [course - 1, course + 1], [course - 2, course + 2]);
            foreach (var s in _ofCourse[course])
            {
                rows[s] = _segments[s].Cheapest(beside);
            }
        }

        return rows;
    }

    /// <summary>The best wall that the gathered rows make.</summary>
    private int[] Choose(int[] best)
    {
        var allowed = Allowed(best);
        var single = allowed.Select((rows, s) => rows.Select(row => _segments[s].Rows[row].Cost).ToArray()).ToList();
        var known = new Dictionary<(SegmentRows Lower, SegmentRows Upper), long[][]>();
        var pairs = _pairs.Select(pair => new LeastSum.Pair(pair.Lower, pair.Upper, Part(LapsOf(pair, known), allowed[pair.Lower], allowed[pair.Upper])));
        var chosen = LeastSum.Solve(single, pairs);
        return [.. chosen.Select((row, s) => allowed[s][row])];
    }

    /// <summary>The rows that a choice is made from: all, or where the search would grow too large the cheapest and the best wall's.</summary>
    private ImmutableArray<ImmutableArray<int>> Allowed(int[] best)
    {
        for (var most = _segments.Max(segment => segment.Rows.Count); ; most -= Math.Max(1, most / 4))
        {
            var allowed = _segments.Select((segment, s) => Enumerable.Range(0, segment.Rows.Count)
                .OrderBy(row => row == best[s] ? 0 : 1)
                .ThenBy(row => segment.Rows[row].Cost)
                .Take(most)
                .ToImmutableArray()).ToImmutableArray();
            if (most == 1 || LeastSum.Largest([.. allowed.Select(rows => rows.Length)], _pairs) <= LeastSum.LargestTable)
            {
                return allowed;
            }
        }
    }

    private long[][] LapsOf((int Lower, int Upper) pair, Dictionary<(SegmentRows Lower, SegmentRows Upper), long[][]> known)
    {
        var (lower, upper) = (_segments[pair.Lower], _segments[pair.Upper]);
        if (!known.TryGetValue((lower, upper), out var costs))
        {
            costs = [.. lower.Rows.Select(below => upper.Rows.Select(above => _laps.Of(below.Joints, above.Joints)).ToArray())];
            known.Add((lower, upper), costs);
        }

        return costs;
    }

    private static long[][] Part(long[][] costs, ImmutableArray<int> rows, ImmutableArray<int> columns) =>
        [.. rows.Select(row => columns.Select(column => costs[row][column]).ToArray())];

    /// <summary>Gathers the segments' answers to single rows below and above them; whether any is new.</summary>
    private bool GatherToRows()
    {
        var isNew = false;
        foreach (var (lower, upper) in _pairs.Select(pair => (_segments[pair.Lower], _segments[pair.Upper])).Distinct())
        {
            isNew |= AddAnswers(lower, upper) | AddAnswers(upper, lower);
        }

        return isNew;
    }

    private bool AddAnswers(SegmentRows segment, SegmentRows other)
    {
        const int MostAnswered = 2;
        var isNew = false;
        for (var row = 0; row < Math.Min(MostAnswered, other.Rows.Count); row++)
        {
            isNew |= segment.AddCheapest(new JointsBeside(_laps, [other.Rows[row].Joints], []));
        }

        return isNew;
    }

    /// <summary>Gathers the segments' answers to a wall; whether any is new.</summary>
    private bool Gather(int[] rows)
    {
        var isNew = false;
        for (var course = 0; course < _shapes.Length; course++)
        {
            int[] repeated = [course - 2, course + 2];
            JointsBeside[] contexts =
            [
                Beside(rows, [course - 1, course + 1], repeated), Beside(rows, [course - 1], repeated), Beside(rows, [course + 1], repeated),
                Beside(rows, [course - 1, course + 1], []),
            ];
            foreach (var s in _ofCourse[course])
            {
                foreach (var beside in contexts)
                {
                    isNew |= _segments[s].AddCheapest(beside);
                }
            }
        }

        return isNew;
    }

    /// <summary>Moves single segments to cheaper rows, repeated courses counted, while there are any.</summary>
    private int[] Settle(int[] rows)
    {
        const int MostSweeps = 4;
        var settled = (int[])rows.Clone();
        for (var (sweep, moved) = (0, true); moved && sweep < MostSweeps; sweep++)
        {
            moved = false;
            for (var course = 0; course < _shapes.Length; course++)
            {
                var beside = Beside(settled, [course - 1, course + 1], [course - 2, course + 2]);
                foreach (var s in _ofCourse[course])
                {
                    var better = _segments[s].Cheapest(beside);
                    moved |= better != settled[s];
                    settled[s] = better;
                }
            }
        }

        return settled;
    }

    private int[] Better(int[] best, int[] other) => CostOf(other) < CostOf(best) ? other : best;

    /// <summary>The cost of a wall; whether courses repeat is left out.</summary>
    private long CostOf(int[] rows) =>
        rows.Select((row, s) => _segments[s].Rows[row].Cost).Sum()
        + _pairs.Sum(pair => _laps.Of(JointsOf(pair.Lower, rows), JointsOf(pair.Upper, rows)));

    private Length[] JointsOf(int segment, int[] rows) => _segments[segment].Rows[rows[segment]].Joints;

    /// <summary>Segments of neighbouring courses whose joints may come near each other.</summary>
    private IEnumerable<(int Lower, int Upper)> Pairs()
    {
        for (var course = 1; course < _shapes.Length; course++)
        {
            foreach (var lower in Enumerable.Range(0, _ofCourse[course - 1].Length))
            {
                foreach (var upper in Enumerable.Range(0, _ofCourse[course].Length))
                {
                    var (below, above) = (_shapes[course - 1].Segments[lower].Box, _shapes[course].Segments[upper].Box);
                    if (below.Left < above.Right + _laps.Reach && above.Left < below.Right + _laps.Reach)
                    {
                        yield return (_ofCourse[course - 1][lower], _ofCourse[course][upper]);
                    }
                }
            }
        }
    }

    private JointsBeside Beside(int[] rows, ReadOnlySpan<int> near, ReadOnlySpan<int> repeated) => new(_laps, Joints(rows, near), Joints(rows, repeated));

    private ImmutableArray<Length[]> Joints(int[] rows, ReadOnlySpan<int> courses)
    {
        var joints = ImmutableArray.CreateBuilder<Length[]>(courses.Length);
        foreach (var course in courses)
        {
            if (course >= 0 && course < _shapes.Length)
            {
                joints.Add([.. _ofCourse[course].Where(s => rows[s] >= 0).SelectMany(s => JointsOf(s, rows)).Order()]);
            }
        }

        return joints.ToImmutable();
    }

    private ImmutableArray<LaidCourse> Courses(int[] rows) =>
        [.. _shapes.Select((shape, course) => LaidCourse.Of(shape, [.. _ofCourse[course].Select(s => _segments[s].Rows[rows[s]].Pieces)]))];
}
