using System.Globalization;
using IfcCourser.Layouts;

namespace IfcCourser.Output.Sheets.Walls;

/// <summary>A piece as a block reference that carries its data, for a CAD program's data extraction.</summary>
internal static class PieceBlock
{
    private static readonly ImmutableArray<BlockAttribute> _attributes =
    [
        Hidden("MARK", "Mark in the schedule", 4), Hidden("LENGTH", "Length", 3),
        Hidden("COURSE", "Course number", 2), Hidden("CUT", "How it is cut", 1),
    ];

    public static BlockItem Of(WallFacts facts, Course course, Piece piece)
    {
        var pen = IsWhole(piece) ? Pen.WholeBlock : Pen.CutBlock;
        var corners = PieceShape.CornersOf(piece);
        var definition = new BlockDefinition(
            NameOf(piece, corners), [new PolylineItem(pen, corners, PathEnd.Closed)], _attributes);
        return new BlockItem(
            pen,
            definition,
            new Point(piece.From.Mm, piece.Bottom.Mm),
            [
                facts.Schedule.MarkOf(piece), facts.Text.Piece(piece.Length),
                course.Number.ToString(CultureInfo.InvariantCulture), SheetText.Cut(piece),
            ]);
    }

    public static bool IsWhole(Piece piece) => piece.IsFull && piece.Cut == Cuts.None;

    /// <summary>By kind and size, and by corners where the piece is no rectangle, in whole micrometres.</summary>
    private static string NameOf(Piece piece, ImmutableArray<Point> corners)
    {
        var size = string.Create(CultureInfo.InvariantCulture, $"{Micrometres(piece.Length.Mm)}X{Micrometres(piece.Height.Mm)}");
        var kind = IsWhole(piece) ? "UNIT" : piece.Cut == Cuts.None ? "PART" : "CUT";
        var outline = piece.Outline is null
            ? string.Empty
            : string.Concat(corners.Select(p => string.Create(CultureInfo.InvariantCulture, $"_{Micrometres(p.X)}_{Micrometres(p.Y)}")));
        return $"{kind}-{size}{outline}";
    }

    private static long Micrometres(double mm) => (long)Math.Round(mm * 1000, MidpointRounding.AwayFromZero);

    private static BlockAttribute Hidden(string tag, string prompt, int row) =>
        new(tag, prompt, Pen.Text, new Point(10, row * 40), 2.5, TextAnchor.Left, AttributeDisplay.Hidden);
}
