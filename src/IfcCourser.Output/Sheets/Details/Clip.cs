namespace IfcCourser.Output.Sheets.Details;

/// <summary>What of a drawing lies in an upright window.</summary>
internal static class Clip
{
    /// <summary>The part of a straight line inside the window (Liang and Barsky, 1984); null where there is none.</summary>
    public static LineItem? Line(LineItem line, Box window)
    {
        var (way, from, to) = (line.To - line.From, 0.0, 1.0);
        (double Step, double Room)[] edges =
        [
            (-way.X, line.From.X - window.Left), (way.X, window.Right - line.From.X), (-way.Y, line.From.Y - window.Bottom), (way.Y, window.Top - line.From.Y),
        ];
        foreach (var (step, room) in edges)
        {
            if (step == 0 && room < 0)
            {
                return null;
            }

            from = step < 0 ? Math.Max(from, room / step) : from;
            to = step > 0 ? Math.Min(to, room / step) : to;
        }

        return from < to ? line with { From = line.From + (way * from), To = line.From + (way * to) } : null;
    }

    /// <summary>Edges of a closed path inside the window: none along the window's own edge.</summary>
    public static IEnumerable<LineItem> Edges(Pen pen, ImmutableArray<Point> corners, Box window) => corners
        .Select((corner, i) => Line(new LineItem(pen, corner, corners[(i + 1) % corners.Length]), window))
        .OfType<LineItem>();

    /// <summary>A face inside the window (Sutherland and Hodgman, 1974); empty where there is none.</summary>
    public static ImmutableArray<Point> Face(ImmutableArray<Point> corners, Box window)
    {
        var left = Half(corners, p => p.X - window.Left);
        var right = Half(left, p => window.Right - p.X);
        return Half(Half(right, p => p.Y - window.Bottom), p => window.Top - p.Y);
    }

    /// <summary>The part of a face where the distance, linear in the plane, is not negative.</summary>
    private static ImmutableArray<Point> Half(ImmutableArray<Point> corners, Func<Point, double> distance)
    {
        var kept = ImmutableArray.CreateBuilder<Point>();
        for (var i = 0; i < corners.Length; i++)
        {
            var (a, b) = (corners[i], corners[(i + 1) % corners.Length]);
            var (da, db) = (distance(a), distance(b));
            if (da >= 0)
            {
                kept.Add(a);
            }

            if ((da >= 0) != (db >= 0))
            {
                kept.Add(a + ((b - a) * (da / (da - db))));
            }
        }

        return kept.ToImmutable();
    }
}
