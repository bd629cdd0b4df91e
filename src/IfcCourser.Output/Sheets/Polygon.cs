namespace IfcCourser.Output.Sheets;

/// <summary>Questions about a simple polygon, any orientation.</summary>
public static class Polygon
{
    /// <summary>Where the upright line at <paramref name="x"/> enters and leaves the polygon: lowest and highest crossing.</summary>
    public static (double Low, double High) Column(ImmutableArray<Point> corners, double x)
    {
        var (low, high) = (double.MaxValue, double.MinValue);
        for (var i = 0; i < corners.Length; i++)
        {
            var (a, b) = (corners[i], corners[(i + 1) % corners.Length]);
            if (a.X != b.X && x >= Math.Min(a.X, b.X) && x <= Math.Max(a.X, b.X))
            {
                var y = a.Y + ((x - a.X) / (b.X - a.X) * (b.Y - a.Y));
                (low, high) = (Math.Min(low, y), Math.Max(high, y));
            }
        }

        return (low, high);
    }

    /// <summary>Whether a box lies inside a polygon that every upright line cuts in one stretch, as pieces and gables are.</summary>
    public static bool Contains(ImmutableArray<Point> corners, Box box)
    {
        var inner = corners.Select(corner => corner.X).Where(x => x > box.Left && x < box.Right);
        return inner.Append(box.Left).Append(box.Right).All(x =>
        {
            var (low, high) = Column(corners, x);
            return low <= box.Bottom && high >= box.Top;
        });
    }
}
