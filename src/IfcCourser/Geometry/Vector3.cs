namespace IfcCourser.Geometry;

/// <summary>A vector or point in space in millimetres.</summary>
public readonly record struct Vector3(double X, double Y, double Z)
{
    public double Length => Math.Sqrt(Dot(this, this));

    public Vector2 Plan => new(X, Y);

    public static Vector3 operator +(Vector3 a, Vector3 b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    public static Vector3 operator -(Vector3 a, Vector3 b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    public static Vector3 operator -(Vector3 a) => new(-a.X, -a.Y, -a.Z);

    public static Vector3 operator *(Vector3 a, double k) => new(a.X * k, a.Y * k, a.Z * k);

    public static double Dot(Vector3 a, Vector3 b) => (a.X * b.X) + (a.Y * b.Y) + (a.Z * b.Z);

    public static Vector3 Cross(Vector3 a, Vector3 b) =>
        new((a.Y * b.Z) - (a.Z * b.Y), (a.Z * b.X) - (a.X * b.Z), (a.X * b.Y) - (a.Y * b.X));

    public Vector3 Unit()
    {
        var length = Length;
        return length > 0 ? this * (1 / length) : default;
    }

    public override string ToString() => FormattableString.Invariant($"({X}, {Y}, {Z})");
}
