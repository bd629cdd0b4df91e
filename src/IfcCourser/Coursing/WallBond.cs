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

    /// <summary>Where no cut can be saved.</summary>
    private const int FewRounds = 1;
    private const int MostSweeps = 4;

    /// <summary>How many rows of a neighbour, the cheapest first, are answered one by one: the way to a better wall may lead over rows that help but later.</summary>
    private const int MostAnswered = 24;

    /// <summary>How many rows of a segment where a rule is broken a wall is built from anew.</summary>
    private const int MostRestarts = 24;

    private readonly ImmutableArray<ShapedCourse> _shapes;
    private readonly BondAims _aims;
    private readonly RowLaps _laps;
    private readonly ImmutableArray<SegmentRows> _segments;
    private readonly ImmutableArray<ImmutableArray<int>> _ofCourse;
    private readonly ImmutableArray<(int Lower, int Upper)> _pairs;
    private readonly RowChoice _choice;
    private readonly BondSolvers _solvers;

    public WallBond(ImmutableArray<ShapedCourse> shapes, ImmutableArray<Lintel> lintels, ImmutableArray<Bar> bars, BondSolvers solvers)
    {
        (_shapes, _solvers, _laps, _aims) = (shapes, solvers, solvers.Laps, solvers.Rules.Set.Aims);
        var fixedZones = new FixedZones(shapes, lintels, bars, _laps, solvers.Rules);
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
                var alone = new SegmentTask(size, segment.Start, segment.End, Within(zones, left, size));
                if (!known.TryGetValue((left, alone), out var rows))
                {
                    rows = new SegmentRows(left, alone, solvers);
                    known.Add((left, alone), rows);
                }

                segments.Add(rows);
            }
        }

        _segments = segments.ToImmutable();
        _ofCourse = courses.ToImmutable();
        _pairs = [.. Pairs()];
        _choice = new RowChoice(_segments, _pairs, solvers);
    }

    /// <param name="isDraft">Whether to leave out what takes long and saves little: to tell one attempt from another.</param>
    public ImmutableArray<LaidCourse> Solve(bool isDraft = false)
    {
        var least = _segments.Sum(segment => segment.Rows[segment.Cheapest(new JointsBeside(_laps, [], []))].Cost);
        bool IsBest(int[] rows) => CostOf(rows) - least < _aims.Short;
        var leastInPairs = least;
        bool HasFewestCuts(int[] rows) => CostOf(rows) - leastInPairs < _aims.Cut;

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

            _solvers.Effort.AllowPairs(CostOf(best) >= BondAims.Breach);
            var pairs = new RowPairs(_segments, _pairs, _solvers);
            leastInPairs += pairs.Gather();
            best = Choose(best);
            best = Improve(best, isDraft || HasFewestCuts(best) ? FewRounds : MostRounds, IsBest);
            for (var (sweep, cost) = (0, long.MaxValue); !isDraft && !_solvers.Effort.ArePairsSpent(JointWidths.Useful) && sweep < MostSweeps && !HasFewestCuts(best) && CostOf(best) < cost && _solvers.Effort.MaySearch(); sweep++)
            {
                cost = CostOf(best);
                best = Improve(Choose(pairs.Improve(best)), MostRounds, IsBest);
                if (!HasFewestCuts(best))
                {
                    pairs.GatherBetween(best);
                    pairs.GatherBeside(new int[_segments.Length]);
                    best = Improve(Choose(best), MostRounds, IsBest);
                }
            }
        }

        if (!isDraft && CostOf(best) / BondAims.Breach > leastInPairs / BondAims.Breach && _solvers.Effort.MaySearch())
        {
            best = Improve(Choose(Restarted(best)), MostRounds, IsBest);
        }

        return Courses(Settle(best));
    }

    /// <summary>
    /// The best of walls that are built up and down from other rows where a wall breaks a rule. Where several courses must change at once
    /// to keep it, such walls bring the rows that the next choice is made from.
    /// </summary>
    private int[] Restarted(int[] best)
    {
        var met = new HashSet<SegmentRows>();
        foreach (var (course, segment) in Broken(best).Where(place => met.Add(_segments[place.Segment])))
        {
            var rows = _segments[segment].Rows;
            foreach (var row in Enumerable.Range(0, rows.Count).OrderBy(row => rows[row].Cost).Take(MostRestarts).TakeWhile(_ => _solvers.Effort.MaySearch()).ToList())
            {
                best = Better(best, BuildFrom(course, segment, row));
            }
        }

        return best;
    }

    /// <summary>Where a wall breaks a rule that is not broken in every row of the segment.</summary>
    private IEnumerable<(int Course, int Segment)> Broken(int[] wall)
    {
        var laps = _pairs.Where(pair => _laps.Of(JointsOf(pair.Lower, wall), JointsOf(pair.Upper, wall)) >= BondAims.Breach).SelectMany(pair => new[] { pair.Lower, pair.Upper });
        var rows = Enumerable.Range(0, wall.Length).Where(s => _segments[s].Rows[wall[s]].Cost - _segments[s].Rows[0].Cost >= BondAims.Breach);
        var segments = laps.Concat(rows).ToHashSet();
        return [.. Enumerable.Range(0, _shapes.Length).SelectMany(course => _ofCourse[course].Where(segments.Contains).Select(s => (course, s)))];
    }

    private static ImmutableArray<JointZone> Within(ImmutableArray<JointZone> zones, Length left, Length size) =>
        [.. zones.Select(zone => zone with { Centre = zone.Centre - left }).Where(zone => zone.MeetsJointsOf(size))];

    /// <summary>Gathers rows and chooses of them, in turn.</summary>
    private int[] Improve(int[] best, int rounds, Func<int[], bool> isBest)
    {
        for (var (round, isNew) = (0, true); isNew && round < rounds && !isBest(best) && _solvers.Effort.MaySearch(); round++)
        {
            isNew = GatherToRows() | Gather(best);
            best = Choose(best);
        }

        return best;
    }

    private int[] Choose(int[] best) => Better(best, _choice.Best(best, CostOf(best)));

    /// <summary>Fills course by course, each given those filled before.</summary>
    private int[] Build(IEnumerable<int> courses) => Build(courses, Enumerable.Repeat(-1, _segments.Length).ToArray());

    /// <summary>Fills down and up from a course where one segment's row is given.</summary>
    private int[] BuildFrom(int course, int segment, int row)
    {
        var rows = Enumerable.Repeat(-1, _segments.Length).ToArray();
        rows[segment] = row;
        return Build(Enumerable.Range(0, course + 1).Reverse().Concat(Enumerable.Range(course + 1, _shapes.Length - course - 1)), rows);
    }

    private int[] Build(IEnumerable<int> courses, int[] rows)
    {
        foreach (var course in courses)
        {
            var beside = Beside(rows, [course - 1, course + 1], [course - 2, course + 2]);
            foreach (var s in _ofCourse[course].Where(s => rows[s] < 0))
            {
                rows[s] = _segments[s].Cheapest(beside);
            }
        }

        return rows;
    }

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
        var isNew = false;
        foreach (var row in other.Rows.OrderBy(row => row.Cost).Take(MostAnswered).ToList())
        {
            isNew |= segment.AddCheapest(new JointsBeside(_laps, [row.Joints], []));
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
