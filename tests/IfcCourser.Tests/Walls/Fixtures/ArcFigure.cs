using System.Collections.Immutable;
using System.Globalization;
using IfcCourser.Geometry;

namespace IfcCourser.Tests.Walls.Fixtures;

/// <summary>An outline of straight lines and arcs, as expected.txt writes it: a point after "arc" lies on an arc between its neighbours.</summary>
internal sealed class ArcFigure
{
    private readonly ImmutableArray<(Vector2 From, Vector2? On, Vector2 To)> _edges;

    public ArcFigure(string text)
    {
        var points = text.Split(", ").Select(part => (IsOn: part.StartsWith("arc ", StringComparison.Ordinal), At: Point(part.Replace("arc ", string.Empty, StringComparison.Ordinal)))).ToList();
        var corners = Enumerable.Range(0, points.Count).Where(i => !points[i].IsOn).ToList();
        _edges =
        [
            .. corners.Select(i => points[(i + 1) % points.Count].IsOn
                ? (points[i].At, (Vector2?)points[(i + 1) % points.Count].At, points[(i + 2) % points.Count].At)
                : (points[i].At, null, points[(i + 1) % points.Count].At)),
        ];
    }

    /// <summary>
    /// Whether a polygon follows this figure with chords for its arcs: the figure's corners and arc points are among its
    /// points (to 1 mm: an arc's highest point may lie between two of them), each of its points is on the figure, and the
    /// area differs by no more than a share.
    /// </summary>
    public bool IsFollowedBy(string polygon, double areaShare)
    {
        const double OnFigure = 0.01;
        const double AtCorner = 1;
        var points = polygon.Split(", ").Select(Point).ToList();
        var marks = _edges.SelectMany(edge => edge.On is { } on ? [edge.From, on] : new[] { edge.From });
        return points.TrueForAll(point => _edges.Any(edge => Distance(edge, point) <= OnFigure))
            && marks.All(mark => points.Exists(point => (point - mark).Length <= AtCorner))
            && Math.Abs(Polygon(points) - Area) <= areaShare * Area;
    }

    private double Area => Polygon([.. _edges.Select(edge => edge.From)]) + _edges.Sum(Segment);

    // Between an arc and its chord; the arc bulges to the right of a counter-clockwise outline's edges.
    private static double Segment((Vector2 From, Vector2? On, Vector2 To) edge)
    {
        if (edge.On is not { } on)
        {
            return 0;
        }

        var (_, radius) = Circle(edge.From, on, edge.To);
        var half = Math.Asin(Math.Min(1, (edge.To - edge.From).Length / 2 / radius));
        return radius * radius / 2 * ((2 * half) - Math.Sin(2 * half));
    }

    private static double Distance((Vector2 From, Vector2? On, Vector2 To) edge, Vector2 point)
    {
        if (edge.On is { } on)
        {
            var (centre, radius) = Circle(edge.From, on, edge.To);
            var isOnSide = Vector2.Cross(edge.To - edge.From, point - edge.From) * Vector2.Cross(edge.To - edge.From, on - edge.From) >= -1e-3;
            return isOnSide ? Math.Abs((point - centre).Length - radius) : double.PositiveInfinity;
        }

        var run = edge.To - edge.From;
        var share = Math.Clamp(Vector2.Dot(point - edge.From, run) / Vector2.Dot(run, run), 0, 1);
        return (edge.From + (run * share) - point).Length;
    }

    // The radius is the product of the sides by four times the area of the triangle; the centre is as far from each.
    private static (Vector2 Centre, double Radius) Circle(Vector2 a, Vector2 b, Vector2 c)
    {
        var (u, v) = (b - a, c - a);
        var twice = 2 * Vector2.Cross(u, v);
        var (uu, vv) = (Vector2.Dot(u, u), Vector2.Dot(v, v));
        var toCentre = new Vector2(((v.Y * uu) - (u.Y * vv)) / twice, ((u.X * vv) - (v.X * uu)) / twice);
        return (a + toCentre, toCentre.Length);
    }

    private static double Polygon(List<Vector2> points) =>
        points.Select((point, i) => Vector2.Cross(point, points[(i + 1) % points.Count])).Sum() / 2;

    private static Vector2 Point(string text)
    {
        var numbers = text.Split(' ').Select(number => double.Parse(number, CultureInfo.InvariantCulture)).ToArray();
        return new Vector2(numbers[0], numbers[1]);
    }
}
