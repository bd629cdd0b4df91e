using System.Collections.Immutable;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>
/// Bonds a wall: each course is filled exactly, given its neighbours; then courses are filled again, given both
/// neighbours, until nothing improves. The wall is built from the bottom up and from the top down, with the first course's
/// cuts where they suit it, at the start or at the end of its stretches, and the best wall is kept.
/// </summary>
internal sealed class WallBond
{
    private const int Sweeps = 4;

    private readonly ImmutableArray<ShapedCourse> _shapes;
    private readonly ImmutableArray<Lintel> _lintels;
    private readonly ImmutableArray<Bar> _bars;
    private readonly LayoutRules _rules;
    private readonly SegmentSolver _solver;
    private readonly Length _preferredLap;
    private readonly Dictionary<SegmentTask, SegmentFill> _known = [];

    public WallBond(
        ImmutableArray<ShapedCourse> shapes, ImmutableArray<Lintel> lintels, ImmutableArray<Bar> bars, Length thickness, LayoutRules rules)
    {
        _shapes = shapes;
        _lintels = lintels;
        _bars = bars;
        _rules = rules;
        _solver = new SegmentSolver(rules);
        var lap = rules.PreferredLap(thickness);
        _preferredLap = Length.Min(lap, rules.Catalog.Pitch - lap);
    }

    public ImmutableArray<LaidCourse> Solve()
    {
        var fewest = FewestCuts();
        bool IsBest(BondScore score) => score.Breaches == 0 && score.Cuts == fewest;

        var best = Improve(Build(Orders()[0], Lean.None), IsBest);
        foreach (var (order, lean) in Orders().SelectMany(order => Enum.GetValues<Lean>(), (order, lean) => (order, lean)).Skip(1))
        {
            if (IsBest(best.Score))
            {
                break;
            }

            var other = Improve(Build(order, lean), IsBest);
            best = other.Score.CompareTo(best.Score) < 0 ? other : best;
        }

        return [.. best.Courses];
    }

    private ImmutableArray<int>[] Orders() =>
        [[.. Enumerable.Range(0, _shapes.Length)], [.. Enumerable.Range(0, _shapes.Length).Reverse()]];

    /// <summary>The cuts that no bond can save: those of each course on its own.</summary>
    private int FewestCuts() => _shapes
        .SelectMany(shape => shape.Segments)
        .SelectMany(segment => Fill(segment, []).Pieces)
        .Count(piece => piece.Size != _rules.Catalog.UnitLength && !_rules.Catalog.PartLengths.Contains(piece.Size));

    private LaidCourse[] Build(ImmutableArray<int> order, Lean lean)
    {
        var courses = new LaidCourse[_shapes.Length];
        foreach (var i in order)
        {
            courses[i] = Fill(courses, i, i == order[0] ? lean : Lean.None);
        }

        return courses;
    }

    private (LaidCourse[] Courses, BondScore Score) Improve(LaidCourse[] courses, Func<BondScore, bool> isBest)
    {
        var score = BondScore.Of(courses, _bars, _rules);
        for (var sweep = 0; sweep < Sweeps && !isBest(score); sweep++)
        {
            var next = (LaidCourse[])courses.Clone();
            for (var i = 0; i < next.Length; i++)
            {
                next[i] = Fill(next, i);
            }

            var better = BondScore.Of(next, _bars, _rules);
            if (better.CompareTo(score) >= 0)
            {
                break;
            }

            (courses, score) = (next, better);
        }

        return (courses, score);
    }

    private LaidCourse Fill(LaidCourse?[] courses, int i, Lean lean = Lean.None)
    {
        var shape = _shapes[i];
        var zones = Zones(courses, i);
        var fills = shape.Segments.Select(segment => Fill(Leaning(segment, lean), zones)).ToImmutableArray();
        return LaidCourse.Of(shape, fills);
    }

    private static Segment Leaning(Segment segment, Lean lean) => lean switch
    {
        Lean.Start => segment with { StartCost = -BondWeights.CutAtJamb, EndCost = 0 },
        Lean.End => segment with { StartCost = 0, EndCost = -BondWeights.CutAtJamb },
        _ => segment,
    };

    private SegmentFill Fill(Segment segment, List<JointZone> zones)
    {
        var (from, size) = (segment.Box.Left, segment.Box.Width);
        var task = new SegmentTask(size, segment.StartCost, segment.EndCost,
        [
            .. zones
                .Select(zone => zone with { Centre = zone.Centre - from })
                .Where(zone => zone.Centre + zone.Reach > Length.Zero && zone.Centre - zone.Reach < size),
        ]);
        if (!_known.TryGetValue(task, out var fill))
        {
            fill = _solver.Solve(task);
            _known.Add(task, fill);
        }

        return fill;
    }

    private List<JointZone> Zones(LaidCourse?[] courses, int i)
    {
        var zones = new List<JointZone>();
        foreach (var neighbour in new[] { i - 1, i + 1 }.Where(n => n >= 0 && n < _shapes.Length))
        {
            foreach (var joint in courses[neighbour]?.Joints ?? _shapes[neighbour].EdgeJoints.Concat(_shapes[neighbour].JambJoints))
            {
                zones.Add(new JointZone(joint, _rules.MinOverlap, BondWeights.Breach));
                zones.Add(new JointZone(joint, _preferredLap, BondWeights.LapUnderPreferred));
            }
        }

        var cell = _rules.Catalog.CutGrid;
        zones.AddRange(new[] { i - 2, i + 2 }
            .Where(n => n >= 0 && n < _shapes.Length && courses[n] is not null)
            .SelectMany(n => courses[n]!.PieceJoints)
            .Select(joint => new JointZone(joint, cell, -BondWeights.NotRepeated)));
        zones.AddRange(_bars
            .Where(bar => bar.Passes(_shapes[i].Band))
            .Select(bar => new JointZone(bar.At, _rules.CoreClearance, BondWeights.Breach)));
        zones.AddRange(LintelZones.Of(_lintels, _shapes[i].Band, _rules));
        return zones;
    }

    /// <summary>Where the first course that is laid puts its cut pieces: what suits it best may cost the next course cuts.</summary>
    private enum Lean
    {
        None,
        Start,
        End,
    }
}
