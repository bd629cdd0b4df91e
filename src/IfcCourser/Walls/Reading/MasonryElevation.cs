using IfcCourser.Geometry;

namespace IfcCourser.Walls.Reading;

/// <summary>What of a body stands between the two faces of its masonry layer, seen from the front.</summary>
/// <param name="Shape">Along the run and up, mm; ends that are cut on a slant (mitres) reach as far as their longer face.</param>
/// <param name="Bevelled">Area, mm2, left out because the top or bottom is bevelled across the thickness.</param>
public sealed record MasonryElevation(Region Shape, double Bevelled)
{
    /// <summary>The elevation is cut this far inside the layer's faces, mm: on them, the next layer would show.</summary>
    private const double Inside = 0.1;

    /// <summary>Slivers narrower than this, mm, are no masonry.</summary>
    private const double Narrow = 1;

    /// <summary>The elevation of the part of a body in a layer.</summary>
    /// <param name="body">In wall coordinates, openings put back.</param>
    /// <param name="layer">From the right to the left face of the masonry.</param>
    public static MasonryElevation Of(Solid body, Slab layer)
    {
        var inside = Math.Min(Inside, layer.Size / 4);
        var right = Projection.Section(body, layer.From + inside);
        var left = Projection.Section(body, layer.To - inside);
        var both = right.Intersect(left);
        if (both.IsEmpty)
        {
            return new MasonryElevation(both, 0);
        }

        // Where one face has more than the other: beyond the ends it is a mitre and stays, above or below it is a bevel and goes.
        var one = right.Union(left);
        var ends = one.Intersect(Beyond(both.Bounds, one.Bounds));
        var shape = both.Union(ends).WithoutNarrow(Narrow);
        return new MasonryElevation(shape, one.Area - shape.Area);
    }

    private static Region Beyond(Rect kept, Rect all)
    {
        var before = new Rect(all.Left - 1, all.Bottom - 1, kept.Left, all.Top + 1);
        var after = new Rect(kept.Right, all.Bottom - 1, all.Right + 1, all.Top + 1);
        return Region.Of(before).Union(Region.Of(after));
    }
}
