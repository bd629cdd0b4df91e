using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Walls;

namespace IfcCourser.SettingOut;

/// <summary>The order in which a man with a tape walks along bars: wall after wall, each next one the nearest to where he stands.</summary>
internal static class WalkingOrder
{
    /// <param name="walls">Walls with their bars.</param>
    /// <param name="axes">He starts at their origin, along x where several walls are as near.</param>
    public static IEnumerable<(WallLayout Wall, Core Core)> Of(IEnumerable<(WallLayout Wall, ImmutableArray<Core> Cores)> walls, SetOutAxes axes)
    {
        var left = walls.Where(wall => !wall.Cores.IsEmpty).ToList();
        var at = axes.Origin;
        while (left.Count > 0)
        {
            var (next, isForward, end) = left.SelectMany(Ways)
                .OrderBy(way => Math.Round((way.From - at).Length))
                .ThenByDescending(way => Math.Round(Vector2.Dot(way.To - way.From, axes.Along)))
                .ThenBy(way => way.Wall.Wall.Identity.GlobalId, StringComparer.Ordinal)
                .Select(way => (way.Wall, way.IsForward, way.To))
                .First();
            left.Remove(next);
            at = end;
            var cores = next.Cores.OrderBy(core => core.At);
            foreach (var core in isForward ? cores : cores.Reverse())
            {
                yield return (next.Wall, core);
            }
        }
    }

    private static IEnumerable<((WallLayout Wall, ImmutableArray<Core> Cores) Wall, bool IsForward, Vector2 From, Vector2 To)> Ways(
        (WallLayout Wall, ImmutableArray<Core> Cores) wall)
    {
        var frame = wall.Wall.Frame;
        var (start, end) = (Middle(frame, default), Middle(frame, frame.Length));
        yield return (wall, true, start, end);
        yield return (wall, false, end, start);
    }

    private static Vector2 Middle(WallFrame frame, Units.Length s) => frame.PointAt(s, frame.Thickness / 2, default).Plan;
}
