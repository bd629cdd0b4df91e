using System.Collections.Immutable;
using IfcCourser.Layouts;
using IfcCourser.Walls;

namespace IfcCourser.SettingOut;

/// <summary>Lists the lines parallel to the axes: grid lines, slab edges, outer faces.</summary>
internal static class CheckLines
{
    public static ImmutableArray<CheckLine> Of(SetOutAxes axes, IEnumerable<GridLine> grid, IEnumerable<SetOutOutline> edges, IEnumerable<SetOutOutline> faces) =>
    [
        .. PlanLine.Of(grid).Concat(PlanLine.Of(edges)).Concat(PlanLine.Of(faces))
            .Select(line => Measured(axes, line))
            .OfType<CheckLine>()
            .DistinctBy(line => (line.Line, line.IsUpright, line.At))
            .OrderBy(line => line.IsUpright).ThenBy(line => line.At).ThenBy(line => line.Line.Kind).ThenBy(line => line.Line.Tag, StringComparer.Ordinal),
    ];

    private static CheckLine? Measured(SetOutAxes axes, PlanLine line)
    {
        var (x, y) = axes.Measured((line.From + line.To) * 0.5);
        return PlanLine.IsParallel(line.Direction, axes.Along.Left) ? new CheckLine(line.Line, true, x, line.From, line.To)
            : PlanLine.IsParallel(line.Direction, axes.Along) ? new CheckLine(line.Line, false, y, line.From, line.To)
            : null;
    }
}
