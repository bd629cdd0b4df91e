using IfcCourser.Geometry;
using IfcCourser.Units;

namespace IfcCourser.Walls;

/// <summary>
/// Where a wall's elevation stands in the model: s runs along <paramref name="Direction"/> from the start of the run,
/// t from the left face (seen along the direction) to the right face, z up from the wall's base.
/// </summary>
/// <param name="Origin">Start of the run on the left face at the wall's base, model axes, mm.</param>
/// <param name="Direction">Unit vector in plan; of a curved wall, at the start of the run.</param>
/// <param name="Length">Of the run, after the junctions were settled.</param>
/// <param name="Thickness">Of the masonry layer.</param>
public sealed record WallFrame(Vector3 Origin, Vector2 Direction, Length Length, Length Thickness)
{
    /// <summary>What a curved wall is unrolled along; null for a straight one.</summary>
    public WallCurve? Curve { get; init; }

    /// <summary>Unit vector to the left; the masonry lies on its negative side.</summary>
    public Vector2 Normal => Direction.Left;

    /// <summary>A point of the wall in model axes, mm.</summary>
    public Vector3 PointAt(Length s, Length t, Length z)
    {
        var plan = Curve is { } curve ? Around(curve, s.Mm, t.Mm) : Origin.Plan + (Direction * s.Mm) - (Normal * t.Mm);
        return new Vector3(plan.X, plan.Y, Origin.Z + z.Mm);
    }

    private Vector2 Around(WallCurve curve, double s, double t)
    {
        var start = Origin.Plan - curve.Centre;
        var side = Math.Sign(Vector2.Dot(start, -Normal));
        var angle = side * s / curve.Radius.Mm;
        var outwards = (start * Math.Cos(angle)) + (start.Left * Math.Sin(angle));
        return curve.Centre + (outwards * ((start.Length + (side * t)) / start.Length));
    }
}
