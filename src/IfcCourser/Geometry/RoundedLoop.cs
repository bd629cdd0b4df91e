using System.Collections.Immutable;

namespace IfcCourser.Geometry;

/// <summary>Polygons with rounded corners.</summary>
public static class RoundedLoop
{
    /// <summary>A counter-clockwise polygon whose corners are arcs that touch both sides.</summary>
    /// <param name="corners">Each with the radius of its arc, mm; 0 keeps it sharp.</param>
    public static ImmutableArray<Vector2> Of(params ReadOnlySpan<(double X, double Y, double Radius)> corners)
    {
        var loop = ImmutableArray.CreateBuilder<Vector2>();
        for (var i = 0; i < corners.Length; i++)
        {
            var (before, at, after) = (Point(corners[(i + corners.Length - 1) % corners.Length]), Point(corners[i]), Point(corners[(i + 1) % corners.Length]));
            var (back, on) = ((before - at).Unit(), (after - at).Unit());
            var half = Math.Acos(Math.Clamp(Vector2.Dot(back, on), -1, 1)) / 2;
            var radius = corners[i].Radius;
            if (radius <= Plane3.Tolerance || half >= (Math.PI / 2) - 1e-9)
            {
                loop.Add(at);
                continue;
            }

            var reach = radius / Math.Tan(half);
            var middle = at + ((back + on).Unit() * ((radius / Math.Sin(half)) - radius));
            loop.AddRange(CircleArc.Through(Raised(at + (back * reach)), Raised(middle), Raised(at + (on * reach))).Select(point => point.Plan));
        }

        return loop.ToImmutable();
    }

    private static Vector2 Point((double X, double Y, double Radius) corner) => new(corner.X, corner.Y);

    private static Vector3 Raised(Vector2 point) => new(point.X, point.Y, 0);
}
