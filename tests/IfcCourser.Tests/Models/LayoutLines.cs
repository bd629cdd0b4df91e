using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Walls;

namespace IfcCourser.Tests.Models;

/// <summary>
/// A layout as lines of text that name walls by GlobalId and hold lengths to the nanometre: all that was decided in the walls'
/// elevations, nothing of where the walls stand in plan or in the file.
/// </summary>
internal static class LayoutLines
{
    public static IEnumerable<string> Of(Layout layout) =>
    [
        .. layout.Walls.OrderBy(wall => wall.Identity.GlobalId, StringComparer.Ordinal).SelectMany(wall => Wall(layout, wall)),
        .. layout.Skipped.Select(wall => $"{wall.Identity.GlobalId} skipped {wall.Reason.Code.Id}").Order(StringComparer.Ordinal),
        .. layout.Junctions.Select(Junction).Order(StringComparer.Ordinal),
        .. layout.Findings.Select(finding => finding.Code.Id).Order(StringComparer.Ordinal),
    ];

    private static IEnumerable<string> Wall(Layout layout, WallLayout wall)
    {
        string Partners(WallEnd end) => Joined(end.With.Select(i => layout.WallIds[i]).Order(StringComparer.Ordinal));
        IEnumerable<string> lines =
        [
            $"{wall.Frame.Length} {wall.Frame.Thickness} {wall.Identity.Name} level line {wall.LevelLine} modules {wall.ModuleLines}",
            $"outline {Joined(wall.Outline.Select(Point))}",
            $"ends {wall.Wall.Start.Kind} {Partners(wall.Wall.Start)} {wall.Wall.End.Kind} {Partners(wall.Wall.End)}",
            .. wall.Openings.Select(o => $"opening {o.Opening.GlobalId} {o.Opening.Kind} {o.Opening.Model} {o.Design} {o.Placed} {o.OnModule}"),
            .. wall.Courses.SelectMany(Course),
            .. wall.Lintels.Select(l => $"lintel {l with { RestsOn = [] }} {Joined(l.RestsOn)}"),
            .. wall.Cores.Select(core => $"core {core.Id} {core.At} {core.Across} {core.Bottom} {core.Top} {Joined(core.Why)} {core.PlayMinus} {core.PlayPlus} {Joined(core.SharedWith)}"),
            .. wall.Findings.Select(finding => $"finding {finding.Code.Id} {finding.At}").Order(StringComparer.Ordinal),
        ];
        return lines.Select(line => $"{wall.Identity.GlobalId} {line}");
    }

    private static IEnumerable<string> Course(Course course) =>
    [
        $"course {course.Number} {course.Kind} {course.Bottom} {course.Top} {Joined(course.Spans)}",
        .. course.Pieces.Select(p => $"piece {p.Id} {p.Product} {p.From} {p.To} {p.Bottom} {p.Top} {p.Cut} {p.IsFull} {Joined(p.Cores)} {Joined((p.Outline ?? []).Select(Point))}"),
    ];

    private static string Junction(JunctionLayout junction) =>
        $"{junction.Kind} {Joined(junction.Walls.Order(StringComparer.Ordinal))} {junction.How} {junction.ThroughOdd} {junction.ThroughEven} {Joined(junction.Ties)}";

    private static string Point(ElevationPoint point) => $"{point.S} {point.Z}";

    private static string Joined<T>(IEnumerable<T> items) => string.Join("; ", items);
}
