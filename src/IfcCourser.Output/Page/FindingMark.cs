using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Layouts;

namespace IfcCourser.Output.Page;

/// <summary>Where a finding is marked in its wall's elevation.</summary>
internal static class FindingMark
{
    /// <summary>Its own place; what that leaves open, of its opening, bar or course; null where it is about the wall as a whole.</summary>
    public static ElevationPoint? Of(WallLayout wall, Finding finding)
    {
        if (finding.At is not { } at)
        {
            return null;
        }

        var opening = wall.Openings.FirstOrDefault(opening => string.Equals(opening.Opening.GlobalId, at.Opening, StringComparison.Ordinal))?.Placed;
        var core = wall.Cores.FirstOrDefault(core => string.Equals(core.Id, at.Core, StringComparison.Ordinal));
        var course = wall.Courses.FirstOrDefault(course => course.Number == at.Course);
        var s = at.S ?? (opening is { } o ? (o.Left + o.Right) / 2 : core?.At);
        var z = at.Z ?? (opening is { } p ? (p.Bottom + p.Top) / 2 : course is not null ? (course.Bottom + course.Top) / 2 : core is not null ? (core.Bottom + core.Top) / 2 : null);
        return (s, z) switch
        {
            (null, null) => null,
            ({ } known, null) => new ElevationPoint(known, wall.Outline.Max(point => point.Z) / 2),
            (null, { } known) => new ElevationPoint(wall.Frame.Length / 2, known),
            ({ } along, { } up) => new ElevationPoint(along, up),
        };
    }
}
