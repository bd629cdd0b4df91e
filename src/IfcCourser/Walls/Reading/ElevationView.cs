using IfcCourser.Geometry;

namespace IfcCourser.Walls.Reading;

/// <summary>How a wall is seen from the front: straight, or unrolled where it is curved.</summary>
/// <param name="Curve">Null for a straight wall, whose solids are in wall coordinates; else what they are unrolled along.</param>
public sealed record ElevationView(PlanCurve? Curve)
{
    /// <summary>How far inside a face, mm, the face is cut: on it, the next layer would show; and a curved one is made of chords.</summary>
    public double Inside => Curve is null ? 0.1 : 1;

    /// <summary>The cut at an offset to the left, along the run and up.</summary>
    public Region Section(Solid solid, double left) => Curve?.Section(solid, left) ?? Projection.Section(solid, left);

    /// <summary>Everything seen of what lies between two offsets; on a curve what the cuts at both and midway show.</summary>
    public Region Between(Solid solid, double from, double to) => Curve is null
        ? Projection.Elevation(solid, from, to)
        : Curve.Section(solid, from).Union(Curve.Section(solid, (from + to) / 2)).Union(Curve.Section(solid, to));
}
