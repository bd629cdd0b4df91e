using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.SettingOut;

/// <summary>
/// The order in which a man with a tape walks along bars: wall after wall, each next one the nearest to where he stands; a
/// corner's bar with the first of its walls that he comes to.
/// </summary>
internal static class WalkingOrder
{
    /// <param name="walls">Of the storey.</param>
    /// <param name="cores">The bars to walk to, each with the wall that lists it.</param>
    /// <param name="axes">He starts at their origin, along x where several walls are as near.</param>
    public static IEnumerable<(WallLayout Wall, Core Core)> Of(
        IReadOnlyCollection<WallLayout> walls, IEnumerable<(WallLayout Wall, Core Core)> cores, SetOutAxes axes)
    {
        var left = cores.ToList();
        var at = axes.Origin;
        while (left.Count > 0)
        {
            var way = walls.Where(wall => left.Exists(bar => IsOf(bar, wall))).SelectMany(Ways)
                .OrderBy(way => Math.Round((way.From - at).Length))
                .ThenByDescending(way => Math.Round(Vector2.Dot(way.To - way.From, axes.Along)))
                .ThenBy(way => way.Wall.Identity.GlobalId, StringComparer.Ordinal)
                .First();
            at = way.To;
            var along = left.Where(bar => IsOf(bar, way.Wall)).OrderBy(bar => Along(way.Wall, bar)).ToImmutableArray();
            foreach (var bar in way.IsForward ? along : along.Reverse())
            {
                left.Remove(bar);
                yield return bar;
            }
        }
    }

    private static bool IsOf((WallLayout Wall, Core Core) bar, WallLayout wall) =>
        bar.Wall == wall || bar.Core.SharedWith.Contains(wall.Identity.GlobalId, StringComparer.Ordinal);

    private static double Along(WallLayout wall, (WallLayout Wall, Core Core) bar) =>
        bar.Wall == wall ? bar.Core.At.Mm : Vector2.Dot(bar.Core.Point - wall.Frame.Origin.Plan, wall.Frame.Direction);

    private static IEnumerable<(WallLayout Wall, bool IsForward, Vector2 From, Vector2 To)> Ways(WallLayout wall)
    {
        var (start, end) = (Middle(wall.Frame, Length.Zero), Middle(wall.Frame, wall.Frame.Length));
        yield return (wall, true, start, end);
        yield return (wall, false, end, start);
    }

    private static Vector2 Middle(WallFrame frame, Length s) => frame.PointAt(s, frame.Thickness / 2, Length.Zero).Plan;
}
