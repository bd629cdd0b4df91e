namespace IfcCourser.Geometry;

/// <summary>An upright rectangle of a plane, mm, before rounding.</summary>
public readonly record struct Rect(double Left, double Bottom, double Right, double Top)
{
    public double Width => Right - Left;

    public double Height => Top - Bottom;

    public bool IsEmpty => Right <= Left || Top <= Bottom;
}
