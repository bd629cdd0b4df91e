using System.Collections.Immutable;
using IfcCourser.Coursing;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Reinforcement;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace ReferenceOptimum.Problems;

/// <summary>
/// Reads which bars a wall needs and where each may stand: the demands of the rules for ends, corners and jambs; bars between
/// them move by what the largest spacing leaves.
/// </summary>
internal static class BarReader
{
    /// <param name="wall">The wall.</param>
    /// <param name="layout">The layout, for cores that other walls list.</param>
    /// <param name="model">The walls as read, for corners.</param>
    /// <returns>Each bar with twice the place where the layout has it, from left to right.</returns>
    public static ImmutableArray<(BarProblem Bar, long At2)> Read(WallLayout wall, Layout layout, WallModel model)
    {
        var bars = ImmutableArray.CreateBuilder<(BarProblem Bar, long At2)>();
        var cores = Cores(wall, layout).OrderBy(core => core.At).ToList();
        var ranges = Ranges(wall, layout, model, cores);
        var spacing = layout.Rules.Set.Bars?.LargestSpacing ?? Length.Zero;
        for (var i = 0; i < cores.Count; i++)
        {
            var core = cores[i];
            var passed = Enumerable.Range(0, wall.Courses.Length)
                .Where(c => wall.Courses[c].Top > core.Heights.From && wall.Courses[c].Bottom < core.Heights.To).ToList();
            int? spaced = i > 0 && core.At - cores[i - 1].At <= spacing ? i - 1 : null;
            bars.Add((
                new BarProblem(2 * ranges[i].From.Nanometres, 2 * ranges[i].To.Nanometres, passed.FirstOrDefault(), passed.Count == 0 ? -1 : passed[^1], spaced),
                2 * core.At.Nanometres));
        }

        return bars.ToImmutable();
    }

    private static IEnumerable<(Length At, Interval Heights, bool IsSpacing)> Cores(WallLayout wall, Layout layout)
    {
        foreach (var owner in layout.Walls)
        {
            foreach (var core in owner.Cores.Where(core => owner == wall || core.SharedWith.Contains(wall.Identity.GlobalId, StringComparer.Ordinal)))
            {
                var (dx, dy) = (core.Point.X - wall.Frame.Origin.X, core.Point.Y - wall.Frame.Origin.Y);
                var at = owner == wall ? core.At : Length.FromModelMm((dx * wall.Frame.Direction.X) + (dy * wall.Frame.Direction.Y));
                var lift = Length.FromModelMm(owner.Frame.Origin.Z - wall.Frame.Origin.Z);
                yield return (at, new Interval(core.Bottom + lift, core.Top + lift), core.Why is ["spacing"]);
            }
        }
    }

    private static ImmutableArray<Interval> Ranges(WallLayout wall, Layout layout, WallModel model, List<(Length At, Interval Heights, bool IsSpacing)> cores)
    {
        if (layout.Rules.Set.Bars is not { } rule)
        {
            return [];
        }

        var tees = model.Junctions.Where(junction => junction.Kind == JunctionKind.Tee && model.Walls[junction.First].Identity == wall.Identity)
            .Select(junction => new Interval(junction.FirstPlace.From, junction.FirstPlace.To));
        var site = new BarSite(wall.Wall, wall.Openings, wall.Lintels, wall.MovementJoints, Corners(wall, model), [.. tees], []);
        var required = new BarPlacement(site, layout.Rules, rule, new BarEffort()).Required;
        return [.. cores.Select((core, i) => core.IsSpacing
            ? Play(i)
            : required.Where(bar => bar.Range.Contains(core.At)).Select(bar => bar.Range).DefaultIfEmpty(new Interval(core.At, core.At)).MinBy(range => range.Size))];

        Interval Play(int i)
        {
            var at = cores[i].At;
            var before = i > 0 ? at - cores[i - 1].At : rule.LargestSpacing;
            var after = i + 1 < cores.Count ? cores[i + 1].At - at : rule.LargestSpacing;
            return new Interval(
                Length.Min(at, at - (rule.LargestSpacing - after)),
                Length.Max(at, at + (rule.LargestSpacing - before)));
        }
    }

    private static ImmutableArray<CornerPlace> Corners(WallLayout wall, WallModel model)
    {
        var index = Enumerable.Range(0, model.Walls.Length).First(i => model.Walls[i].Identity == wall.Identity);
        return
        [
            .. Enumerable.Range(0, model.Junctions.Length)
                .Where(j => model.Junctions[j].Kind == JunctionKind.Corner && (model.Junctions[j].First == index || model.Junctions[j].Second == index))
                .Select(j => new CornerPlace(j, JunctionPlan.PlaceOn(model.Junctions[j], index))),
        ];
    }
}
