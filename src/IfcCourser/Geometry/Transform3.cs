namespace IfcCourser.Geometry;

/// <summary>An affine map of space: where the origin goes, and where the three unit vectors go.</summary>
/// <param name="Origin">Image of the origin, mm.</param>
/// <param name="X">Image of the first unit vector; not a unit vector where the map scales.</param>
/// <param name="Y">Image of the second unit vector.</param>
/// <param name="Z">Image of the third unit vector.</param>
public sealed record Transform3(Vector3 Origin, Vector3 X, Vector3 Y, Vector3 Z)
{
    public static readonly Transform3 Identity = new(default, new Vector3(1, 0, 0), new Vector3(0, 1, 0), new Vector3(0, 0, 1));

    /// <summary>The turn about a line by an angle, radians, right-handed (Rodrigues' formula).</summary>
    /// <param name="foot">A point of the line.</param>
    /// <param name="axis">Unit vector along the line.</param>
    public static Transform3 Turn(Vector3 foot, Vector3 axis, double angle)
    {
        Vector3 Turned(Vector3 v) => (v * Math.Cos(angle)) + (Vector3.Cross(axis, v) * Math.Sin(angle)) + (axis * (Vector3.Dot(axis, v) * (1 - Math.Cos(angle))));
        var turn = new Transform3(default, Turned(Identity.X), Turned(Identity.Y), Turned(Identity.Z));
        return turn with { Origin = foot - turn.Direction(foot) };
    }

    /// <summary>Positive where the map keeps orientation, negative where it mirrors; its size is the factor on volumes.</summary>
    public double Determinant => Vector3.Dot(Vector3.Cross(X, Y), Z);

    public Vector3 Point(Vector3 p) => Origin + Direction(p);

    public Vector3 Direction(Vector3 d) => (X * d.X) + (Y * d.Y) + (Z * d.Z);

    /// <summary>The map that first does <paramref name="inner"/>, then this one: a local placement in its parent.</summary>
    public Transform3 After(Transform3 inner) =>
        new(Point(inner.Origin), Direction(inner.X), Direction(inner.Y), Direction(inner.Z));

    /// <summary>The map back, for a map that neither scales nor shears.</summary>
    public Transform3 RigidInverse()
    {
        var turnedBack = new Transform3(default, new Vector3(X.X, Y.X, Z.X), new Vector3(X.Y, Y.Y, Z.Y), new Vector3(X.Z, Y.Z, Z.Z));
        return turnedBack with { Origin = turnedBack.Direction(-Origin) };
    }
}
