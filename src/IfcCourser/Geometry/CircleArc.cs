using System.Collections.Immutable;

namespace IfcCourser.Geometry;

/// <summary>Arcs of circles and ellipses as chords.</summary>
public static class CircleArc
{
    /// <summary>No chord spans more than this angle, radians (5 degrees).</summary>
    private const double WidestStep = Math.PI / 36;

    /// <summary>An arc is made of no more chords: those of a whole circle of 100 m. Only circles of no building's size need more.</summary>
    private const int MostSteps = 1440;

    /// <summary>No chord stands farther than this, mm, off its arc.</summary>
    private const double Sagitta = 0.25;

    /// <summary>Chords that an arc of a radius, mm, and an angle, radians, is made of; a whole circle's meet its axes.</summary>
    public static int Steps(double radius, double angle)
    {
        const int Quarters = 4;
        const double Dust = 1e-9;
        var step = radius > Sagitta ? Math.Min(WidestStep, 2 * Math.Acos(1 - (Sagitta / radius))) : WidestStep;
        var steps = (int)Math.Clamp(Math.Ceiling((Math.Abs(angle) / step) - Dust), 1, MostSteps);
        return Math.Abs(angle) >= (2 * Math.PI) - Dust ? (steps + Quarters - 1) / Quarters * Quarters : steps;
    }

    /// <summary>Points on an ellipse from one angle to another, both included, in equal steps.</summary>
    /// <param name="place">The ellipse's axes.</param>
    /// <param name="a">Half axis along x, mm.</param>
    /// <param name="b">Half axis along y, mm.</param>
    /// <param name="from">Radians from the x axis.</param>
    /// <param name="to">Radians; may be less than <paramref name="from"/>.</param>
    public static ImmutableArray<Vector3> Chords(Transform3 place, double a, double b, double from, double to)
    {
        var steps = Steps(Math.Max(a, b), to - from);
        return
        [
            .. Enumerable.Range(0, steps + 1).Select(i =>
            {
                var angle = from + ((to - from) * i / steps);
                return place.Point(new Vector3(a * Math.Cos(angle), b * Math.Sin(angle), 0));
            }),
        ];
    }

    /// <summary>The arc through three points: its centre is where the perpendicular bisectors meet.</summary>
    public static ImmutableArray<Vector3> Through(Vector3 start, Vector3 middle, Vector3 end)
    {
        var (u, v) = (middle - start, end - start);
        var normal = Vector3.Cross(u, v);
        var area = Vector3.Dot(normal, normal);
        if (normal.Length < 1e-9)
        {
            return [start, middle, end];
        }

        var toCentre = ((Vector3.Cross(normal, u) * Vector3.Dot(v, v)) + (Vector3.Cross(v, normal) * Vector3.Dot(u, u))) * (1 / (2 * area));
        var x = -toCentre.Unit();
        var place = new Transform3(start + toCentre, x, Vector3.Cross(normal.Unit(), x), normal.Unit());
        var last = end - place.Origin;
        var sweep = Math.Atan2(Vector3.Dot(last, place.Y), Vector3.Dot(last, place.X));
        var points = Chords(place, toCentre.Length, toCentre.Length, 0, sweep < 0 ? sweep + (2 * Math.PI) : sweep);
        return [start, .. points[1..^1], end];
    }
}
