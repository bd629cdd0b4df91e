using IfcCourser.Layouts;
using IfcCourser.Units;

namespace IfcCourser.Output.Sheets;

/// <summary>What a saw table must be set to for a raked piece.</summary>
/// <param name="Below">Length of the lower edge.</param>
/// <param name="Above">Length of the upper edge; zero where it is a point.</param>
/// <param name="Left">Height of the left edge; zero where it is a point.</param>
/// <param name="Right">Height of the right edge.</param>
/// <param name="Degrees">Of the longest slope against the bed.</param>
/// <param name="Rises">Positive where the piece is higher at the right, negative at the left, zero where in its middle.</param>
public sealed record RakeShape(Length Below, Length Above, Length Left, Length Right, double Degrees, int Rises)
{
    /// <summary>Null where no edge of the piece slopes.</summary>
    public static RakeShape? Of(Piece piece)
    {
        var corners = PieceShape.CornersOf(piece);
        var slopes = corners.Zip(corners.Skip(1).Append(corners[0]), (a, b) => b - a)
            .Where(edge => edge.X != 0 && edge.Y != 0)
            .OrderByDescending(edge => Math.Abs(edge.X))
            .ToArray();
        if (slopes.Length == 0)
        {
            return null;
        }

        var box = Box.Around(corners);
        var directions = slopes.Select(edge => Math.Sign(edge.Y * edge.X)).Distinct().ToArray();
        return new RakeShape(
            Extent(corners.Where(p => p.Y == box.Bottom).Select(p => p.X)),
            Extent(corners.Where(p => p.Y == box.Top).Select(p => p.X)),
            Extent(corners.Where(p => p.X == box.Left).Select(p => p.Y)),
            Extent(corners.Where(p => p.X == box.Right).Select(p => p.Y)),
            Math.Atan2(Math.Abs(slopes[0].Y), Math.Abs(slopes[0].X)) * 180 / Math.PI,
            directions.Length == 1 ? directions[0] : 0);
    }

    private static Length Extent(IEnumerable<double> places)
    {
        var all = places.ToArray();
        return Length.FromMm(all.Max() - all.Min());
    }
}
