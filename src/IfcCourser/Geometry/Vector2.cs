namespace IfcCourser.Geometry;

/// <summary>A plan vector or point in millimetres, model axes unless said otherwise.</summary>
public readonly record struct Vector2(double X, double Y)
{
    public double Length => Math.Sqrt((X * X) + (Y * Y));

    /// <summary>Turned a quarter to the left.</summary>
    public Vector2 Left => new(-Y, X);

    public static Vector2 operator +(Vector2 a, Vector2 b) => new(a.X + b.X, a.Y + b.Y);

    public static Vector2 operator -(Vector2 a, Vector2 b) => new(a.X - b.X, a.Y - b.Y);

    public static Vector2 operator -(Vector2 a) => new(-a.X, -a.Y);

    public static Vector2 operator *(Vector2 a, double k) => new(a.X * k, a.Y * k);

    public static double Dot(Vector2 a, Vector2 b) => (a.X * b.X) + (a.Y * b.Y);

    /// <summary>Positive where <paramref name="b"/> points to the left of <paramref name="a"/>.</summary>
    public static double Cross(Vector2 a, Vector2 b) => (a.X * b.Y) - (a.Y * b.X);

    public Vector2 Unit()
    {
        var length = Length;
        return length > 0 ? new Vector2(X / length, Y / length) : default;
    }

    // The generated text would follow Left for ever.
    public override string ToString() => FormattableString.Invariant($"({X}, {Y})");
}
