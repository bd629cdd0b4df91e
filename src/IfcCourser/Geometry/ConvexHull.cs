using System.Collections.Immutable;

namespace IfcCourser.Geometry;

/// <summary>The smallest convex polygon around points of a plane (Andrew's monotone chain).</summary>
public static class ConvexHull
{
    /// <summary>Indices of the corners, counter-clockwise; points on an edge are left out.</summary>
    public static ImmutableArray<int> Of(ImmutableArray<Vector2> points)
    {
        var order = Enumerable.Range(0, points.Length)
            .OrderBy(i => points[i].X)
            .ThenBy(i => points[i].Y)
            .ThenBy(i => i)
            .ToArray();
        var hull = new List<int>(points.Length + 1);
        Extend(hull, 0, points, order);
        var lower = Math.Max(hull.Count - 1, 0);
        Extend(hull, lower, points, order.Reverse());
        if (hull.Count > 1)
        {
            hull.RemoveAt(hull.Count - 1);
        }

        return [.. hull];
    }

    private static void Extend(List<int> hull, int start, ImmutableArray<Vector2> points, IEnumerable<int> order)
    {
        foreach (var next in order)
        {
            if (hull.Count > start && points[hull[^1]] == points[next])
            {
                continue;
            }

            while (hull.Count >= start + 2 && !TurnsLeft(points[hull[^2]], points[hull[^1]], points[next]))
            {
                hull.RemoveAt(hull.Count - 1);
            }

            hull.Add(next);
        }
    }

    private static bool TurnsLeft(Vector2 a, Vector2 b, Vector2 c) => Vector2.Cross(b - a, c - b) > 0;
}
