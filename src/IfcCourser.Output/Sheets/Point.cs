namespace IfcCourser.Output.Sheets;

/// <summary>A point of a sheet (paper millimetres from the lower left corner) or of a view (real millimetres).</summary>
public readonly record struct Point(double X, double Y)
{
    public static Point operator +(Point a, Point b) => new(a.X + b.X, a.Y + b.Y);

    public static Point operator -(Point a, Point b) => new(a.X - b.X, a.Y - b.Y);

    public static Point operator *(Point a, double factor) => new(a.X * factor, a.Y * factor);
}
