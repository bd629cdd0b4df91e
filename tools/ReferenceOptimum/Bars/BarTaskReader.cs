using System.Collections.Immutable;
using IfcCourser.Catalogs;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Units;
using IfcCourser.Walls;
using ReferenceOptimum.Problems;

namespace ReferenceOptimum.Bars;

/// <summary>
/// States where the bars of a wall may stand, from its pieces, openings and lintels and the rule alone. Best bars can always be pushed to the end until each
/// stands where something ends or as far as the spacing reaches from the one before: only such places are options, none of them bound to the cut grid.
/// </summary>
internal sealed class BarTaskReader
{
    /// <summary>Places of bars that other walls list come from model coordinates.</summary>
    private const long Nearly2 = 4_000;

    /// <summary>Of tops under slopes, where a bar ends under the lower of its sides.</summary>
    private const long Nearly = 5_000_000;

    private readonly WallElevation _elevation;
    private readonly ImmutableArray<CornerMasonry> _beside;
    private readonly BarRule _rule;
    private readonly ImmutableArray<BarNeed> _needs;
    private readonly ImmutableArray<JunctionPlace> _corners;
    private readonly ImmutableArray<(long Bottom, long Top, ImmutableArray<long> Joints2, ImmutableArray<(long From2, long To2)> Pieces)> _courses;
    private readonly ImmutableArray<WallElevation.Box> _movement;
    private readonly long _clearance2;
    private readonly long _length2;

    private BarTaskReader(WallLayout wall, Layout layout, WallModel model)
    {
        _rule = layout.Rules.Set.Bars!;
        _elevation = new WallElevation(wall, CornerLintels(wall, layout, model), _rule);
        _beside = [.. CornersOf(wall, layout, model).Select(corner => new CornerMasonry(
            corner.Own.From.Nanometres + corner.Own.To.Nanometres,
            [.. new WallElevation(corner.Wall, CornerLintels(corner.Wall, layout, model), _rule).Free(corner.Place.From.Nanometres + corner.Place.To.Nanometres)
                .Select(free => (free.From + corner.Up, free.To + corner.Up))]))];
        var needs = new BarNeeds(wall, layout, model, _elevation);
        (_needs, _corners) = ([.. needs.All()], needs.Corners);
        var (problem, bond) = ProblemReader.Read(wall, layout, model);
        _courses =
        [
            .. wall.Courses.Select((course, i) => (
                course.Bottom.Nanometres, course.Top.Nanometres,
                bond.Courses[i].SelectMany(run => run.Zip(run.Skip(1), (a, b) => a.To + b.From)).Concat(problem.Courses[i].Edges).Concat(problem.Courses[i].Fixed).ToImmutableArray(),
                course.Pieces.Select(piece => (2 * piece.From.Nanometres, 2 * piece.To.Nanometres)).ToImmutableArray())),
        ];
        _movement = [.. wall.MovementJoints.Select(joint => WallElevation.Box.Of(joint.Rect))];
        _clearance2 = 2 * layout.Rules.CoreClearance.Nanometres;
        _length2 = 2 * wall.Frame.Length.Nanometres;
    }

    /// <param name="wall">A straight wall with upright and level edges.</param>
    /// <param name="layout">The layout, for cores that other walls list.</param>
    /// <param name="model">The walls as read, for corners and tees.</param>
    public static BarTask Read(WallLayout wall, Layout layout, WallModel model)
    {
        var reader = new BarTaskReader(wall, layout, model);
        var places = reader.Places();
        return new BarTask(
            [.. places.SelectMany(reader.OptionsAt)],
            reader._needs,
            [.. reader._elevation.Rows()],
            2 * reader._rule.LargestSpacing.Nanometres,
            [.. Cores(wall, layout).Select(reader.AsOption)]);
    }

    private SortedSet<long> Places()
    {
        var jamb = 2 * _rule.FromJamb.Least.Nanometres;
        var end = 2 * _rule.FromEnd.Least.Nanometres;
        var joint = 2 * _rule.FromMovementJoint.Least.Nanometres;
        var ends = new SortedSet<long>(_needs.SelectMany(need => new[] { need.From2, need.To2 })
            .Concat(_elevation.Voids.SelectMany(box => new[] { box.Left2 - jamb, box.Left2, box.Right2, box.Right2 + jamb }))
            .Concat(_movement.SelectMany(box => new[] { box.Left2 - joint, box.Left2, box.Right2, box.Right2 + joint }))
            .Concat(_elevation.Solid.SelectMany(box => new[] { box.Left2, box.Right2 - 2, box.Right2 }))
            .Concat(_elevation.Outline.SelectMany(point => new[] { point.S2 - 2, point.S2 }))
            .Concat(_corners.SelectMany(corner => new[] { 2 * corner.From.Nanometres, 2 * corner.To.Nanometres }))
            .Concat([end, _length2 - end])
            .Concat(_courses.SelectMany(course => course.Joints2.SelectMany(place => new[] { place - _clearance2, place + _clearance2 })))
            .Where(place => place >= 0 && place <= _length2));
        var rising = ends.ToList();
        var all = new SortedSet<long>();
        for (var i = 0; i < rising.Count; i++)
        {
            var after = i + 1 < rising.Count ? rising[i] + ((rising[i + 1] - rising[i]) / 2) : rising[i];
            if (i + 1 < rising.Count && rising[i + 1] - rising[i] > 2 && IsLike(OptionsAt(rising[i]), OptionsAt(after)))
            {
                continue;
            }

            for (var place = rising[i]; place <= _length2 && all.Add(place); place += 2 * _rule.LargestSpacing.Nanometres)
            {
            }
        }

        return all;
    }

    private static bool IsLike(List<BarOption> a, List<BarOption> b) => a.Count == b.Count
        && a.Zip(b).All(pair => (pair.First.From, pair.First.To, pair.First.OnJoint) == (pair.Second.From, pair.Second.To, pair.Second.OnJoint) && pair.First.Serves.SequenceEqual(pair.Second.Serves));

    private List<BarOption> OptionsAt(long at2) => [.. Free(at2).Select(free => Option(at2, free)).Where(bar => PassesPiece(bar) && (!bar.Serves.IsEmpty || IsOffEdges(bar)))];

    private BarOption AsOption((Length At, Length Bottom, Length Top) core)
    {
        var at2 = 2 * core.At.Nanometres;
        var near = _needs.SelectMany(need => new[] { need.From2, need.To2 }).Where(place => Math.Abs(place - at2) <= Nearly2).DefaultIfEmpty(at2).MinBy(place => Math.Abs(place - at2));
        var heights = (From: core.Bottom.Nanometres, To: core.Top.Nanometres);
        var feet = Stretches(near).Select(free => free.From).ToList();
        return Option(near, Free(near).Where(free => free.From <= heights.From + Nearly && Math.Abs(free.To - heights.To) <= Nearly && feet.Exists(foot => Math.Abs(foot - heights.From) <= Nearly))
            .DefaultIfEmpty(heights).First());
    }

    private BarOption Option(long at2, (long From, long To) free)
    {
        var stretches = Free(at2);
        var serves = Enumerable.Range(0, _needs.Length).Where(need => _needs[need].From2 <= at2 && _needs[need].To2 >= at2 && Taking(stretches, _needs[need]) == free);
        var onJoint = _courses.Count(course => course.Bottom < free.To && course.Top > free.From && course.Joints2.Any(joint => Math.Abs(joint - at2) < _clearance2));
        return new BarOption(at2, free.From, free.To, [.. serves], onJoint);
    }

    /// <summary>
    /// What a bar can take at a place. Where walls cross it stands in the blocks of both, clear of the lintels of both: it goes as high as either lets it, also where
    /// this wall is the lower one or its opening reaches into the corner.
    /// </summary>
    private List<(long From, long To)> Free(long at2)
    {
        var joined = new List<(long From, long To)>();
        foreach (var (from, to) in Stretches(at2))
        {
            if (joined.Count > 0 && from <= joined[^1].To)
            {
                joined[^1] = (joined[^1].From, Math.Max(joined[^1].To, to));
            }
            else
            {
                joined.Add((from, to));
            }
        }

        return joined;
    }

    /// <summary>Those of both walls where they cross, rising. A bar's foot may be that of either: over a step of the slab they differ.</summary>
    private IEnumerable<(long From, long To)> Stretches(long at2) =>
        _elevation.Free(at2).Concat(_beside.Where(corner => Math.Abs(corner.At2 - at2) <= Nearly2).SelectMany(corner => corner.Free)).Order();

    /// <summary>The stretch that shares most with what is asked for, the lowest where equal.</summary>
    private static (long From, long To)? Taking(List<(long From, long To)> stretches, BarNeed need)
    {
        var shared = stretches.Select(free => (Free: free, Size: Math.Min(free.To, need.Top) - Math.Max(free.From, need.Bottom))).Where(share => share.Size > 0).ToList();
        return shared.Count == 0 ? null : shared.MaxBy(share => share.Size).Free;
    }

    private bool PassesPiece(BarOption bar) => _beside.Any(corner => Math.Abs(corner.At2 - bar.At2) <= Nearly2)
        || _courses.Any(course => course.Bottom < bar.To && course.Top > bar.From && course.Pieces.Any(piece => piece.From2 < bar.At2 && piece.To2 > bar.At2));

    /// <summary>Bars for the spacing keep the least distances of those that are demanded, and leave corners to these.</summary>
    private bool IsOffEdges(BarOption bar)
    {
        var end = 2 * _rule.FromEnd.Least.Nanometres;
        return bar.At2 >= end && bar.At2 <= _length2 - end
            && !_corners.Any(corner => 2 * corner.From.Nanometres < bar.At2 && 2 * corner.To.Nanometres > bar.At2)
            && !_elevation.Voids.Any(box => IsNear(box, _rule.FromJamb.Least))
            && !_movement.Any(box => IsNear(box, _rule.FromMovementJoint.Least));

        bool IsNear(WallElevation.Box box, Length least) => box.IsBeside(bar.From, bar.To)
            && ((bar.At2 <= box.Left2 && box.Left2 - bar.At2 < 2 * least.Nanometres) || (bar.At2 >= box.Right2 && bar.At2 - box.Right2 < 2 * least.Nanometres));
    }

    /// <summary>Where a lintel of another wall lies over the middle of a corner that it shares with this one.</summary>
    private static IEnumerable<ElevationRect> CornerLintels(WallLayout wall, Layout layout, WallModel model) =>
        from corner in CornersOf(wall, layout, model)
        from lintel in corner.Wall.Lintels
        where lintel.Kind != LintelKind.Trough && lintel.From * 2 < corner.Place.From + corner.Place.To && lintel.To * 2 > corner.Place.From + corner.Place.To
        select new ElevationRect(corner.Own.From, corner.Own.To, lintel.Bottom + new Length(corner.Up), lintel.Top + new Length(corner.Up));

    /// <summary>The walls with cores that share a corner with this one: where on either run, and how much higher the other stands.</summary>
    private static IEnumerable<(WallLayout Wall, JunctionPlace Own, JunctionPlace Place, long Up)> CornersOf(WallLayout wall, Layout layout, WallModel model)
    {
        var index = Enumerable.Range(0, model.Walls.Length).First(i => model.Walls[i].Identity == wall.Identity);
        foreach (var junction in model.Junctions.Where(junction => junction.Kind == JunctionKind.Corner && (junction.First == index || junction.Second == index)))
        {
            var (own, place, other) = junction.First == index
                ? (junction.FirstPlace, junction.SecondPlace, junction.Second)
                : (junction.SecondPlace, junction.FirstPlace, junction.First);
            foreach (var neighbour in layout.Walls.Where(layoutWall => layoutWall.Identity == model.Walls[other].Identity && !BarNeeds.HasNoCores(layoutWall)))
            {
                yield return (neighbour, own, place, Length.FromModelMm(neighbour.Frame.Origin.Z - wall.Frame.Origin.Z).Nanometres);
            }
        }
    }

    private static IEnumerable<(Length At, Length Bottom, Length Top)> Cores(WallLayout wall, Layout layout)
    {
        foreach (var owner in layout.Walls)
        {
            foreach (var core in owner.Cores.Where(core => owner == wall || core.SharedWith.Contains(wall.Identity.GlobalId, StringComparer.Ordinal)))
            {
                var (dx, dy) = (core.Point.X - wall.Frame.Origin.X, core.Point.Y - wall.Frame.Origin.Y);
                var at = owner == wall ? core.At : Length.FromModelMm((dx * wall.Frame.Direction.X) + (dy * wall.Frame.Direction.Y));
                var lift = Length.FromModelMm(owner.Frame.Origin.Z - wall.Frame.Origin.Z);
                yield return (at, core.Bottom + lift, core.Top + lift);
            }
        }
    }

    /// <summary>What the other wall of a corner has for a bar where the walls cross.</summary>
    /// <param name="At2">Twice the place on this wall's run.</param>
    /// <param name="Free">Stretches in this wall's heights.</param>
    private sealed record CornerMasonry(long At2, ImmutableArray<(long From, long To)> Free);
}
