using FixtureMaker.Design;
using IfcCourser.Geometry;

namespace IfcCourser.Tests.Models;

/// <summary>A turn about the origin and a move, in plan; mm.</summary>
internal readonly record struct PlanMap(double Degrees, double East, double North)
{
    private double Cosine => Math.Cos(Degrees * Math.PI / 180);

    private double Sine => Math.Sin(Degrees * Math.PI / 180);

    public Point Point(Point point) => new(East + (Cosine * point.X) - (Sine * point.Y), North + (Sine * point.X) + (Cosine * point.Y));

    public Heading Heading(Heading heading) => new((Cosine * heading.X) - (Sine * heading.Y), (Sine * heading.X) + (Cosine * heading.Y));

    public Vector2 Point(Vector2 point)
    {
        var mapped = Point(new Point(point.X, point.Y));
        return new Vector2(mapped.X, mapped.Y);
    }
}
