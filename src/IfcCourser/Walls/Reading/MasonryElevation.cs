using IfcCourser.Geometry;

namespace IfcCourser.Walls.Reading;

/// <summary>What of a body stands between the two faces of its masonry layer, seen from the front; along the run and up, mm.</summary>
/// <param name="Shape">Where masonry is laid: both faces stand there, or a pocket or slanted end is filled up.</param>
/// <param name="Pockets">What of the shape lacks a part of the layer's thickness, with masonry beside it: where other walls enter, and niches.</param>
/// <param name="Bevelled">Area, mm2, left out because the top or bottom is bevelled or stepped across the thickness.</param>
public sealed record MasonryElevation(Region Shape, Region Pockets, double Bevelled)
{
    /// <summary>Slivers narrower than this, mm, are no masonry.</summary>
    private const double Narrow = 1;

    /// <summary>An end slants or steps back no farther than this many thicknesses: a mitre between walls at 37 degrees (common practice, no source).</summary>
    private const double LongestEnd = 3;

    /// <summary>The elevation of the part of a body in a layer.</summary>
    /// <param name="body">Openings put back.</param>
    /// <param name="layer">From the right to the left face of the masonry.</param>
    /// <param name="view">The wall, straight or unrolled.</param>
    public static MasonryElevation Of(Solid body, Slab layer, ElevationView view)
    {
        var (right, left) = view.Faces(body, layer);
        var both = right.Intersect(left);
        if (both.IsEmpty)
        {
            return new MasonryElevation(both, both, 0);
        }

        // Where a part of the thickness is missing: beyond an end it is a mitre and stays, between masonry it is the pocket of
        // another wall or a niche and is filled up, above or below it is a bevel and goes.
        var any = view.Between(body, layer.From, layer.To).Union(both);
        var between = RowHull.Of(both);
        var pockets = between.Intersect(any).Subtract(both).WithoutNarrow(Narrow);
        var shape = both.Union(pockets).Union(Ends(between, RowHull.Of(both, LongestEnd * layer.Size), any)).WithoutNarrow(Narrow);
        return new MasonryElevation(shape, pockets, any.Area - shape.Area);
    }

    // What ends soon beside the masonry; what goes on is a thinner wall.
    private static Region Ends(Region masonry, Region reached, Region any)
    {
        var beyond = any.Subtract(reached).Parts;
        return reached.Intersect(any).Subtract(masonry).Parts
            .Where(part => !beyond.Any(other => GoesOn(part, other)))
            .Aggregate(Region.Empty, (ends, part) => ends.Union(part));
    }

    private static bool GoesOn(Region part, Region other)
    {
        var (box, far) = (part.Bounds, other.Bounds);
        var common = Math.Min(box.Top, far.Top) - Math.Max(box.Bottom, far.Bottom);
        return (far.Left >= box.Right - Narrow || far.Right <= box.Left + Narrow) && common > box.Height / 2 && part.IsNear(other, Narrow);
    }
}
