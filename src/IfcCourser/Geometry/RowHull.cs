using System.Collections.Immutable;

namespace IfcCourser.Geometry;

/// <summary>A region closed from side to side.</summary>
public static class RowHull
{
    /// <summary>Rows lower than this, mm, hold nothing.</summary>
    private const double Least = 1e-3;

    /// <summary>At every height everything between the region's leftmost and its rightmost point there, and so far beyond, mm.</summary>
    public static Region Of(Region region, double beyond = 0)
    {
        ImmutableArray<(Vector2 From, Vector2 To)> edges = [.. region.Edges.Where(edge => Math.Abs(edge.To.Y - edge.From.Y) > Least)];
        ImmutableArray<double> heights = [.. edges.SelectMany(edge => new[] { edge.From.Y, edge.To.Y }).Distinct().Order()];
        return Region.Of(heights.Zip(heights.Skip(1)).Where(row => row.Second - row.First > Least).SelectMany(row => Row(edges, row.First, row.Second, beyond)));
    }

    // No edge ends inside a row, so that its sides are one edge each.
    private static IEnumerable<ImmutableArray<Vector2>> Row(ImmutableArray<(Vector2 From, Vector2 To)> edges, double bottom, double top, double beyond)
    {
        var middle = (bottom + top) / 2;
        var crossing = edges.Where(edge => Math.Min(edge.From.Y, edge.To.Y) < middle && Math.Max(edge.From.Y, edge.To.Y) > middle).ToList();
        if (crossing.Count < 2)
        {
            yield break;
        }

        var (left, right) = (crossing.MinBy(edge => At(edge, middle)), crossing.MaxBy(edge => At(edge, middle)));
        yield return
        [
            new(At(left, bottom) - beyond, bottom), new(At(right, bottom) + beyond, bottom), new(At(right, top) + beyond, top), new(At(left, top) - beyond, top),
        ];
    }

    private static double At((Vector2 From, Vector2 To) edge, double height) =>
        edge.From.X + ((edge.To.X - edge.From.X) * (height - edge.From.Y) / (edge.To.Y - edge.From.Y));
}
