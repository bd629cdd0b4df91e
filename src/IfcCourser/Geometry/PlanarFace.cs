using System.Collections.Immutable;

namespace IfcCourser.Geometry;

/// <summary>
/// A polygon in space whose plane's normal points out of the solid it bounds; counter-clockwise seen from outside.
/// A hole is part of the loop, joined by a seam that is run along twice.
/// </summary>
public sealed record PlanarFace(Plane3 Plane, ImmutableArray<Vector3> Loop)
{
    /// <summary>The face around a loop, or null where the loop spans no area.</summary>
    public static PlanarFace? Around(ImmutableArray<Vector3> loop)
    {
        if (loop.Length < 3)
        {
            return null;
        }

        var normal = AreaVectorOf(loop);
        var face = new PlanarFace(Plane3.Through(Centre(loop), normal), loop);
        return normal.Length > 0 && !face.IsSliver ? face : null;
    }

    /// <summary>Twice the area along the normal (Newell's formula), relative to the first point: far coordinates lose nothing.</summary>
    public Vector3 AreaVector => AreaVectorOf(Loop);

    /// <summary>Thinner than the tolerance: what cutting leaves of a seam.</summary>
    public bool IsSliver
    {
        get
        {
            var perimeter = 0.0;
            for (var i = 0; i < Loop.Length; i++)
            {
                perimeter += (Loop[(i + 1) % Loop.Length] - Loop[i]).Length;
            }

            return Math.Abs(Vector3.Dot(AreaVector, Plane.Normal)) <= 2 * Plane3.Tolerance * perimeter;
        }
    }

    public PlanarFace Reversed => new(Plane.Reversed, [.. Loop.Reverse()]);

    /// <summary>The face under an affine map; a mirroring map turns the loop so that the normal still points outwards.</summary>
    public PlanarFace? Transformed(Transform3 map)
    {
        var points = Loop.Select(map.Point);
        return Around([.. map.Determinant < 0 ? points.Reverse() : points]);
    }

    /// <summary>
    /// The part of the face behind the plane and the part before it; null where there is none. Corners within the tolerance
    /// lie on the plane: a part that has no corner off it lies in the plane and is no part of either side.
    /// </summary>
    public (PlanarFace? Behind, PlanarFace? Before) Split(Plane3 plane)
    {
        var behind = ImmutableArray.CreateBuilder<Vector3>(Loop.Length + 2);
        var before = ImmutableArray.CreateBuilder<Vector3>(Loop.Length + 2);
        var (reachesBehind, reachesBefore) = (false, false);
        var (previous, previousDistance) = (Loop[^1], plane.Distance(Loop[^1]));
        foreach (var point in Loop)
        {
            var distance = plane.Distance(point);
            reachesBehind |= distance < -Plane3.Tolerance;
            reachesBefore |= distance > Plane3.Tolerance;
            if (Math.Abs(distance) > Plane3.Tolerance && Math.Abs(previousDistance) > Plane3.Tolerance && (distance > 0) != (previousDistance > 0))
            {
                var crossing = Crossing(previous, previousDistance, point, distance);
                behind.Add(crossing);
                before.Add(crossing);
            }

            if (distance <= Plane3.Tolerance)
            {
                behind.Add(point);
            }

            if (distance >= -Plane3.Tolerance)
            {
                before.Add(point);
            }

            (previous, previousDistance) = (point, distance);
        }

        return (reachesBehind ? Part(behind) : null, reachesBefore ? Part(before) : null);
    }

    // Always from behind to before, so that the two faces at an edge find the same point to the last bit.
    private static Vector3 Crossing(Vector3 a, double da, Vector3 b, double db) =>
        da < 0 ? a + ((b - a) * (da / (da - db))) : b + ((a - b) * (db / (db - da)));

    private static Vector3 Centre(ImmutableArray<Vector3> loop)
    {
        var sum = default(Vector3);
        foreach (var point in loop)
        {
            sum += point - loop[0];
        }

        return loop[0] + (sum * (1.0 / loop.Length));
    }

    private static Vector3 AreaVectorOf(ImmutableArray<Vector3> loop)
    {
        var sum = default(Vector3);
        for (var i = 1; i + 1 < loop.Length; i++)
        {
            sum += Vector3.Cross(loop[i] - loop[0], loop[i + 1] - loop[0]);
        }

        return sum;
    }

    private PlanarFace? Part(ImmutableArray<Vector3>.Builder points)
    {
        if (points.Count < 3)
        {
            return null;
        }

        // A line has no area; a sliver has: left out of a cell's faces its volume would show it.
        const double Line = 1e-6;
        var face = new PlanarFace(Plane, points.ToImmutable());
        return face.AreaVector.Length > Line ? face : null;
    }
}
