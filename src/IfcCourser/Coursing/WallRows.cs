using System.Collections.Immutable;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>
/// A wall's segments, numbered course by course from below, with the rows of pieces that are gathered for each. A bond of the wall is told as the place of
/// each segment's row.
/// </summary>
internal sealed class WallRows
{
    private const int MostSweeps = 4;

    private readonly ImmutableArray<ShapedCourse> _shapes;
    private readonly ImmutableArray<ImmutableArray<int>> _ofCourse;
    private readonly RowLaps _laps;

    /// <param name="shapes">The wall's courses.</param>
    /// <param name="lintels">Bear on pieces.</param>
    /// <param name="bars">Stand in pieces.</param>
    /// <param name="mostRows">Rows of a segment that answers are added to.</param>
    /// <param name="solvers">Find rows.</param>
    public WallRows(ImmutableArray<ShapedCourse> shapes, ImmutableArray<Lintel> lintels, ImmutableArray<Bar> bars, int mostRows, BondSolvers solvers)
    {
        (_shapes, _laps) = (shapes, solvers.Laps);
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
                    rows = new SegmentRows(left, alone, mostRows, solvers);
                    known.Add((left, alone), rows);
                }

                segments.Add(rows);
            }
        }

        Segments = segments.ToImmutable();
        _ofCourse = courses.ToImmutable();
        Pairs = [.. PairsOf()];
    }

    /// <summary>The rows of each segment; equal segments share theirs.</summary>
    public ImmutableArray<SegmentRows> Segments { get; }

    /// <summary>Segments of neighbouring courses whose joints may come near each other, from below.</summary>
    public ImmutableArray<(int Lower, int Upper)> Pairs { get; }

    /// <summary>What the segments cost at least, each on its own.</summary>
    public long LeastAlone() => Segments.Sum(segment => segment.Rows[segment.Cheapest(new JointsBeside(_laps, [], []))].Cost);

    /// <summary>The cost of a bond; whether courses repeat is left out.</summary>
    public long CostOf(int[] bond) =>
        bond.Select((row, s) => Segments[s].Rows[row].Cost).Sum()
        + Pairs.Sum(pair => _laps.Of(JointsOf(pair.Lower, bond), JointsOf(pair.Upper, bond)));

    public int[] Better(int[] best, int[] other) => CostOf(other) < CostOf(best) ? other : best;

    /// <summary>Fills course by course from below, each given the one before it.</summary>
    public int[] BuildUp() => Build(Enumerable.Range(0, _shapes.Length), NoRows());

    /// <summary>Fills course by course from above, each given the one before it.</summary>
    public int[] BuildDown() => Build(Enumerable.Range(0, _shapes.Length).Reverse(), NoRows());

    /// <summary>Fills down and up from a course where one segment's row is given.</summary>
    public int[] BuildFrom(int course, int segment, int row)
    {
        var rows = NoRows();
        rows[segment] = row;
        return Build(Enumerable.Range(0, course + 1).Reverse().Concat(Enumerable.Range(course + 1, _shapes.Length - course - 1)), rows);
    }

    /// <summary>Gathers the segments' answers to a bond; whether any is new.</summary>
    public bool AddAnswers(int[] bond)
    {
        var isNew = false;
        for (var course = 0; course < _shapes.Length; course++)
        {
            int[] repeated = [course - 2, course + 2];
            JointsBeside[] contexts =
            [
                Beside(bond, [course - 1, course + 1], repeated), Beside(bond, [course - 1], repeated), Beside(bond, [course + 1], repeated),
                Beside(bond, [course - 1, course + 1], []),
            ];
            foreach (var s in _ofCourse[course])
            {
                foreach (var beside in contexts)
                {
                    isNew |= Segments[s].AddCheapest(beside);
                }
            }
        }

        return isNew;
    }

    /// <summary>Where a bond breaks a rule that is not broken in every row of the segment.</summary>
    public IEnumerable<(int Course, int Segment)> Broken(int[] bond)
    {
        var laps = Pairs.Where(pair => _laps.Of(JointsOf(pair.Lower, bond), JointsOf(pair.Upper, bond)) >= BondAims.Breach).SelectMany(pair => new[] { pair.Lower, pair.Upper });
        var rows = Enumerable.Range(0, bond.Length).Where(s => Segments[s].Rows[bond[s]].Cost - Segments[s].Rows[0].Cost >= BondAims.Breach);
        var segments = laps.Concat(rows).ToHashSet();
        return [.. Enumerable.Range(0, _shapes.Length).SelectMany(course => _ofCourse[course].Where(segments.Contains).Select(s => (course, s)))];
    }

    /// <summary>The courses of a bond, single segments moved to cheaper rows, repeated courses counted, while there are any.</summary>
    public ImmutableArray<LaidCourse> Settle(int[] bond)
    {
        var settled = (int[])bond.Clone();
        for (var (sweep, moved) = (0, true); moved && sweep < MostSweeps; sweep++)
        {
            moved = false;
            for (var course = 0; course < _shapes.Length; course++)
            {
                var beside = Beside(settled, [course - 1, course + 1], [course - 2, course + 2]);
                foreach (var s in _ofCourse[course])
                {
                    var better = Segments[s].Cheapest(beside);
                    moved |= better != settled[s];
                    settled[s] = better;
                }
            }
        }

        return [.. _shapes.Select((shape, course) => LaidCourse.Of(shape, [.. _ofCourse[course].Select(s => Segments[s].Rows[settled[s]].Pieces)]))];
    }

    private static ImmutableArray<JointZone> Within(ImmutableArray<JointZone> zones, Length left, Length size) =>
        [.. zones.Select(zone => zone with { Centre = zone.Centre - left }).Where(zone => zone.MeetsJointsOf(size))];

    private int[] NoRows() => Enumerable.Repeat(-1, Segments.Length).ToArray();

    private int[] Build(IEnumerable<int> courses, int[] rows)
    {
        foreach (var course in courses)
        {
            var beside = Beside(rows, [course - 1, course + 1], [course - 2, course + 2]);
            foreach (var s in _ofCourse[course].Where(s => rows[s] < 0))
            {
                rows[s] = Segments[s].Cheapest(beside);
            }
        }

        return rows;
    }

    private Length[] JointsOf(int segment, int[] bond) => Segments[segment].Rows[bond[segment]].Joints;

    private IEnumerable<(int Lower, int Upper)> PairsOf()
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
}
