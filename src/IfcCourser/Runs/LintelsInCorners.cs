using System.Collections.Immutable;
using IfcCourser.Catalogs;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Runs;

/// <summary>Lintels that bear on a corner where the bar of both walls stands: known once both are laid out, the wall that lists the bar is laid out anew.</summary>
internal static class LintelsInCorners
{
    /// <summary>A wall's corners with the lintels of the other walls there.</summary>
    public static ImmutableArray<CornerBar> Of(WallModel model, WallLayout?[] layouts, int wall, ImmutableArray<CornerBar> corners) =>
        [.. corners.Select(corner => corner.IsOwner ? corner with { Lintels = Of(model, layouts, wall, corner) } : corner)];

    /// <summary>Whether a bar of one of the corners passes such a lintel.</summary>
    public static bool AreHit(WallLayout wall, ImmutableArray<CornerBar> corners) => corners.SelectMany(corner => corner.Lintels)
        .Any(lintel => wall.Cores.Any(core => core.At > lintel.Left && core.At < lintel.Right && core.Bottom < lintel.Top && core.Top > lintel.Bottom));

    private static ImmutableArray<ElevationRect> Of(WallModel model, WallLayout?[] layouts, int wall, CornerBar corner)
    {
        var junction = model.Junctions[corner.Junction];
        var (other, place) = junction.First == wall ? (junction.Second, junction.SecondPlace) : (junction.First, junction.FirstPlace);
        var middle = place.From + ((place.To - place.From) / 2);
        var up = Length.FromModelMm(model.Walls[other].Frame.Origin.Z - model.Walls[wall].Frame.Origin.Z);
        return layouts[other] is not { } layout ? [] :
        [
            .. layout.Lintels.Where(lintel => lintel.Kind != LintelKind.Trough && lintel.From < middle && lintel.To > middle)
                .Select(lintel => new ElevationRect(corner.Place.From, corner.Place.To, lintel.Bottom + up, lintel.Top + up)),
        ];
    }
}
