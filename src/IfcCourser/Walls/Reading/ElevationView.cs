using IfcCourser.Geometry;

namespace IfcCourser.Walls.Reading;

/// <summary>How a wall is seen from the front: straight, or unrolled where it is curved.</summary>
/// <param name="Curve">Null for a straight wall, whose solids are in wall coordinates; else what they are unrolled along.</param>
public sealed record ElevationView(PlanCurve? Curve)
{
    /// <summary>The cut at an offset to the left, along the run and up.</summary>
    public Region Section(Solid solid, double left) => Curve?.Section(solid, left) ?? Projection.Section(solid, left);

    /// <summary>Everything seen of what lies between two offsets; on a curve what the cuts at both and midway show.</summary>
    public Region Between(Solid solid, double from, double to) => Curve is null
        ? Projection.Elevation(solid, from, to)
        : Curve.Section(solid, from).Union(Curve.Section(solid, (from + to) / 2)).Union(Curve.Section(solid, to));

    /// <summary>The right and the left face of a layer of a solid; what lies beyond the layer does not show.</summary>
    public (Region Right, Region Left) Faces(Solid solid, Slab layer) => (Face(solid, layer, layer.From, 1), Face(solid, layer, layer.To, -1));

    // Where the body's own face is not quite plane, or curved and so made of chords, it is cut a little inside.
    private Region Face(Solid solid, Slab layer, double at, int inwards)
    {
        const double MostOff = 0.02;
        var inside = Math.Min(Curve is null ? 0.1 : 1, layer.Size / 4);
        var cut = Section(solid, at + (inwards * inside));
        var face = Curve is null ? Projection.Face(solid, at, -inwards) : Region.Empty;
        return face.Area >= (1 - MostOff) * cut.Area ? face : cut;
    }
}
