namespace IfcCourser.Geometry;

/// <summary>An oriented plane: the points whose product with the unit normal is the offset (mm).</summary>
public readonly record struct Plane3(Vector3 Normal, double Offset)
{
    /// <summary>Points nearer to a plane than this, in mm, lie on it: more than the noise of coordinates that were single-precision once.</summary>
    public const double Tolerance = 0.005;

    public Plane3 Reversed => new(-Normal, -Offset);

    public static Plane3 Through(Vector3 point, Vector3 normal)
    {
        var unit = normal.Unit();
        return new Plane3(unit, Vector3.Dot(unit, point));
    }

    /// <summary>Two unit vectors in the plane; with the normal they form a right-handed frame.</summary>
    public (Vector3 U, Vector3 V) Axes()
    {
        var across = Math.Abs(Normal.Z) < 0.9 ? new Vector3(0, 0, 1) : new Vector3(1, 0, 0);
        var u = Vector3.Cross(across, Normal).Unit();
        return (u, Vector3.Cross(Normal, u));
    }

    /// <summary>Positive on the side that the normal points to, mm.</summary>
    public double Distance(Vector3 point) => Vector3.Dot(Normal, point) - Offset;
}
