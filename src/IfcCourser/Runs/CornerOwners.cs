using System.Collections.Immutable;
using IfcCourser.Coursing;
using IfcCourser.Geometry;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Runs;

/// <summary>
/// Which wall of a corner lists its bar: the one that has more masonry over the corner's middle, since a lower wall, or one whose opening reaches into the corner, would
/// end the bar where the other has blocks for it; the first where both have as much.
/// </summary>
internal sealed class CornerOwners(ImmutableArray<WallLines> walls, ImmutableArray<ImmutableArray<ElevationRect>> openings)
{
    /// <summary>Frames of walls that meet come from model coordinates: less is none.</summary>
    private static readonly Length _notable = Length.FromMm(1);

    /// <summary>Index of the wall; one that is not laid out lists none.</summary>
    public int Of(Junction corner)
    {
        var (first, second) = (walls[corner.First].Wall.IsSelected, walls[corner.Second].Wall.IsSelected);
        return first == second ? MoreMasonry(corner) : first ? corner.First : corner.Second;
    }

    private int MoreMasonry(Junction corner) =>
        Masonry(corner.Second, corner.SecondPlace) - Masonry(corner.First, corner.FirstPlace) > _notable ? corner.Second : corner.First;

    private Length Masonry(int wall, JunctionPlace place)
    {
        var outline = walls[wall].Outline;
        var middle = place.From + ((place.To - place.From) / 2);
        var column = new ElevationRect(middle - _notable, middle + _notable, outline.Box.Bottom, outline.Box.Top);
        return outline.Within(column, openings[wall]).Aggregate(Length.Zero, (sum, part) => sum + part.Box.Height);
    }
}
