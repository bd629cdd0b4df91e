using System.Globalization;
using IfcCourser.Geometry;
using IfcCourser.Layouts;

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
