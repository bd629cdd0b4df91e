using System.Globalization;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Units;

namespace IfcCourser.Output.Sheets;

/// <summary>What makes two pieces alike on the saw: product, size, cut and, where they are no rectangles, their outline.</summary>
public static class PieceShape
{
    /// <summary>Equal for pieces that are alike, wherever they lie.</summary>
    public static string KeyOf(Piece piece) => string.Create(
        CultureInfo.InvariantCulture,
        $"{piece.Product}|{piece.Length.Nanometres}x{piece.Height.Nanometres}|{(int)piece.Cut}|{OutlineKey(piece)}|{NotchKey(piece)}");

    /// <summary>Corners from the piece's lower left, real millimetres, counter-clockwise.</summary>
    public static ImmutableArray<Point> CornersOf(Piece piece) => piece.Outline is { } outline
        ? [.. outline.Select(p => Relative(piece, p))]
        : new Box(0, 0, piece.Length.Mm, piece.Height.Mm).Corners();

    /// <summary>The upper edge's length where it differs from the lower one's, as at a rake; else null.</summary>
    public static Length? OtherEdge(Piece piece)
    {
        if (piece.Outline is not { } outline)
        {
            return null;
        }

        var edges = new[] { EdgeAt(outline, outline.Min(p => p.Z)), EdgeAt(outline, outline.Max(p => p.Z)) };
        return edges.Min() < piece.Length ? edges.Min() : null;
    }

    private static Length EdgeAt(ImmutableArray<ElevationPoint> outline, Length z)
    {
        var ends = outline.Where(p => p.Z == z).Select(p => p.S).ToArray();
        return ends.Max() - ends.Min();
    }

    private static Point Relative(Piece piece, ElevationPoint p) => new((p.S - piece.From).Mm, (p.Z - piece.Bottom).Mm);

    private static string OutlineKey(Piece piece) => piece.Outline is { } outline
        ? string.Join(' ', outline.Select(p => string.Create(
            CultureInfo.InvariantCulture, $"{(p.S - piece.From).Nanometres},{(p.Z - piece.Bottom).Nanometres}")))
        : string.Empty;

    private static string NotchKey(Piece piece) => piece.Notch is { } notch
        ? string.Create(
            CultureInfo.InvariantCulture,
            $"{notch.Face},{(notch.From - piece.From).Nanometres},{(notch.To - piece.From).Nanometres},{notch.Height.Nanometres}")
        : string.Empty;
}
