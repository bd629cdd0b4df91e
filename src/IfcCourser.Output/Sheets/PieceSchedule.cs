using IfcCourser.Layouts;

namespace IfcCourser.Output.Sheets;

/// <summary>Every piece of a wall that is no whole block; pieces that are sawn alike share a row and a mark.</summary>
public sealed class PieceSchedule
{
    private readonly Dictionary<string, string> _markOf;

    private PieceSchedule(ImmutableArray<PieceRow> rows, Dictionary<string, string> markOf)
    {
        Rows = rows;
        _markOf = markOf;
    }

    /// <summary>In the order in which a mason meets them: from the first course up, from the start of the run.</summary>
    public ImmutableArray<PieceRow> Rows { get; }

    public static PieceSchedule Of(WallLayout wall)
    {
        var rows = ImmutableArray.CreateBuilder<PieceRow>();
        var markOf = new Dictionary<string, string>(StringComparer.Ordinal);
        var groups = wall.Courses.SelectMany(course => course.Pieces)
            .Where(piece => !piece.IsFull || piece.Cut != Cuts.None)
            .GroupBy(PieceShape.KeyOf, StringComparer.Ordinal);
        foreach (var group in groups)
        {
            var mark = Mark(rows.Count);
            rows.Add(new PieceRow(mark, group.First(), group.Count()));
            foreach (var piece in group)
            {
                markOf[piece.Id] = mark;
            }
        }

        return new PieceSchedule(rows.ToImmutable(), markOf);
    }

    /// <summary>The same marks, with rows and counts for some of the pieces only.</summary>
    public PieceSchedule For(IEnumerable<Piece> some)
    {
        var counts = some.Select(MarkOf).CountBy(mark => mark, StringComparer.Ordinal).ToDictionary(StringComparer.Ordinal);
        return new PieceSchedule([.. Rows.Where(row => counts.ContainsKey(row.Mark)).Select(row => row with { Count = counts[row.Mark] })], _markOf);
    }

    /// <summary>The piece's mark; empty for a whole block.</summary>
    public string MarkOf(Piece piece) => _markOf.GetValueOrDefault(piece.Id, string.Empty);

    /// <summary>A to Z without I and O, which read as numbers, then AA, AB ...</summary>
    private static string Mark(int index)
    {
        const string Letters = "ABCDEFGHJKLMNPQRSTUVWXYZ";
        var mark = string.Empty;
        for (var rest = index + 1; rest > 0; rest = (rest - 1) / Letters.Length)
        {
            mark = Letters[(rest - 1) % Letters.Length] + mark;
        }

        return mark;
    }
}
