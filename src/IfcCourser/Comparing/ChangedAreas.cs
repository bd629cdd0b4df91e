using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Units;

namespace IfcCourser.Comparing;

/// <summary>Where in a wall's elevation something is not what it was: around pieces, openings, lintels, bars, beams and joints that came or went, near ones together.</summary>
internal static class ChangedAreas
{
    /// <summary>Areas nearer to each other than this are one.</summary>
    private static readonly Length _near = Length.FromMm(300);

    /// <summary>In the elevation of <paramref name="now"/>; none overlaps another.</summary>
    public static ImmutableArray<ElevationRect> Of(WallLayout was, WallLayout now)
    {
        var (before, after) = (Parts(was).ToLookup(part => part.Key, StringComparer.Ordinal), Parts(now).ToLookup(part => part.Key, StringComparer.Ordinal));
        var gone = before.Where(part => !after.Contains(part.Key)).SelectMany(part => part);
        var come = after.Where(part => !before.Contains(part.Key)).SelectMany(part => part);
        var areas = new List<ElevationRect>();
        foreach (var rect in gone.Concat(come).Select(part => part.Rect))
        {
            Add(areas, rect);
        }

        return [.. areas.OrderBy(area => area.Left).ThenBy(area => area.Bottom)];
    }

    /// <summary>The whole wall.</summary>
    public static ImmutableArray<ElevationRect> All(WallLayout wall) =>
        [new(wall.Outline.Min(p => p.S), wall.Outline.Max(p => p.S), wall.Outline.Min(p => p.Z), wall.Outline.Max(p => p.Z))];

    private static void Add(List<ElevationRect> areas, ElevationRect rect)
    {
        while (areas.FindIndex(area => AreNear(area, rect)) is >= 0 and var i)
        {
            var area = areas[i];
            areas.RemoveAt(i);
            rect = new ElevationRect(Length.Min(area.Left, rect.Left), Length.Max(area.Right, rect.Right), Length.Min(area.Bottom, rect.Bottom), Length.Max(area.Top, rect.Top));
        }

        areas.Add(rect);
    }

    private static bool AreNear(ElevationRect a, ElevationRect b) =>
        a.Left < b.Right + _near && b.Left < a.Right + _near && a.Bottom < b.Top + _near && b.Bottom < a.Top + _near;

    private static IEnumerable<(string Key, ElevationRect Rect)> Parts(WallLayout wall) =>
    [
        .. wall.Courses.SelectMany(course => course.Pieces).Select(piece => (WallDifferences.Text(piece), new ElevationRect(piece.From, piece.To, piece.Bottom, piece.Top))),
        .. wall.Openings.Select(opening => ($"{opening.Opening.Kind} {opening.Placed}", opening.Placed)),
        .. wall.Lintels.Select(lintel => (WallDifferences.Text(lintel), new ElevationRect(lintel.From, lintel.To, lintel.Bottom, lintel.Top))),
        .. wall.Cores.Select(core => (WallDifferences.Text(core), new ElevationRect(core.At - (core.Diameter / 2), core.At + (core.Diameter / 2), core.Bottom, core.Top))),
        .. wall.BondBeams.Select(beam => (WallDifferences.Text(beam), new ElevationRect(beam.From, beam.To, beam.Bottom, beam.Top))),
        .. wall.MovementJoints.Select(joint => (WallDifferences.Text(joint), joint.Rect)),
    ];
}
