using IfcCourser.Layouts;

namespace IfcCourser.SettingOut;

/// <summary>The axes that a storey's plans are drawn in.</summary>
public static class StoreyAxes
{
    /// <summary>Those of its set-out; where it has no bars, along most of its walls from their outermost faces.</summary>
    /// <param name="layout">With walls on that storey.</param>
    /// <param name="storey">Name of the storey, or null for walls that no storey holds.</param>
    public static SetOutAxes Of(Layout layout, string? storey)
    {
        if (layout.SetOut.Storeys.FirstOrDefault(known => string.Equals(known.Storey, storey, StringComparison.Ordinal)) is { } setOut)
        {
            return setOut.Axes;
        }

        var walls = layout.Walls.Where(wall => string.Equals(wall.Identity.Storey, storey, StringComparison.Ordinal)).ToList();
        return AxesChoice.Of(
            walls, [], [.. walls.Select(wall => new SetOutOutline(ControlLineKind.WallFace, null, wall.Frame.Origin.Z, wall.Wall.Footprint()))]);
    }
}
