using System.Collections.Immutable;
using IfcCourser.Geometry;

namespace IfcCourser.Takeoff;

/// <summary>Convex loops in plan; a line of two points counts as one.</summary>
internal static class ConvexLoops
{
    /// <summary>Between two loops, mm; zero where they touch or overlap.</summary>
    public static double Distance(ImmutableArray<Vector2> a, ImmutableArray<Vector2> b) => Meet(a, b) ? 0 : Math.Min(Nearest(a, b), Nearest(b, a));

    /// <summary>Whether they touch or overlap: no edge of either parts them (separating axes).</summary>
    public static bool Meet(ImmutableArray<Vector2> a, ImmutableArray<Vector2> b) => !Parts(a, a, b) && !Parts(b, a, b);

    private static bool Parts(ImmutableArray<Vector2> edges, ImmutableArray<Vector2> a, ImmutableArray<Vector2> b)
    {
        for (var i = 0; i < edges.Length; i++)
        {
            var normal = (edges[(i + 1) % edges.Length] - edges[i]).Left;
            var (leastA, mostA) = Range(a, normal);
            var (leastB, mostB) = Range(b, normal);
            if (mostA < leastB || mostB < leastA)
            {
                return true;
            }
        }

        return false;
    }

    private static (double Least, double Most) Range(ImmutableArray<Vector2> loop, Vector2 axis)
    {
        var (least, most) = (double.MaxValue, double.MinValue);
        foreach (var corner in loop)
        {
            var at = Vector2.Dot(corner, axis);
            (least, most) = (Math.Min(least, at), Math.Max(most, at));
        }

        return (least, most);
    }

    private static double Nearest(ImmutableArray<Vector2> corners, ImmutableArray<Vector2> loop)
    {
        var nearest = double.MaxValue;
        foreach (var corner in corners)
        {
            for (var i = 0; i < loop.Length; i++)
            {
                var (from, along) = (loop[i], loop[(i + 1) % loop.Length] - loop[i]);
                var share = Math.Clamp(Vector2.Dot(corner - from, along) / Vector2.Dot(along, along), 0, 1);
                nearest = Math.Min(nearest, (corner - (from + (along * share))).Length);
            }
        }

        return nearest;
    }
}
