using IfcCourser.Layouts;
using IfcCourser.Units;

namespace IfcCourser.Output.Json;

/// <summary>The courses of a wall of layout.json.</summary>
internal static class CourseReader
{
    public static Course Course(JsonPlace course)
    {
        var runs = course["spans"].List(span => span.Interval());
        var edges = course["edges"].List(runs.Length, Edges);
        return new Course(
            course["n"].Whole(least: 1),
            course["kind"].Choice<CourseKind>(JsonNames.Of),
            course["bottom"].Length(),
            Above(course, "bottom", "top"),
            [.. runs.Zip(edges, (run, edge) => new Span(run, edge.Start, edge.End))],
            course["pieces"].List(Piece));
    }

    private static (EdgeKind Start, EdgeKind End) Edges(JsonPlace pair) =>
        pair.List(2, edge => edge.Choice<EdgeKind>(JsonNames.Of)) is [var start, var end] ? (start, end) : default;

    private static Piece Piece(JsonPlace piece) => new()
    {
        Id = piece["id"].Text(),
        Product = piece["product"].Text(),
        From = piece["from"].Length(),
        To = Above(piece, "from", "to"),
        Bottom = piece["bottom"].Length(),
        Top = Above(piece, "bottom", "top"),
        Outline = piece.Optional("outline")?.Outline(),
        Cut = Cut(piece["cut"]),
        IsFull = IsFull(piece["kind"]),
        IsTrough = piece.Optional("trough")?.Flag() ?? false,
        Cores = piece["core"].Texts(),
        CornerCores = piece.Optional("cornerCore")?.Texts() ?? [],
        Notch = piece.Optional("notch") is { } notch
            ? new Notch(notch["face"].Text(), notch["from"].Length(), notch["to"].Length(), notch["height"].Length())
            : null,
        Bed = piece.Optional("bed") is { } bed ? Bed(bed) : null,
    };

    /// <summary>The second of two lengths of which it must be the larger.</summary>
    private static Length Above(JsonPlace place, string less, string more)
    {
        var length = place[more].Length();
        if (length <= place[less].Length())
        {
            place[more].Note($"is not more than {less}");
        }

        return length;
    }

    private static PieceBed? Bed(JsonPlace bed) => bed.List(3, item => item.Length()) is [var least, var most, var mean] ? new PieceBed(least, most, mean) : null;

    private static bool IsFull(JsonPlace kind)
    {
        var text = kind.Text();
        if (text is not ("full" or "part"))
        {
            kind.Note($"is \"{text}\", which is neither full nor part");
        }

        return text == "full";
    }

    private static Cuts Cut(JsonPlace place)
    {
        var text = place.Text();
        var cuts = Enum.GetValues<Cuts>().Where(cut => text.Split('+').Contains(JsonNames.Of(cut), StringComparer.Ordinal)).Aggregate(Cuts.None, (all, cut) => all | cut);
        if (!string.Equals(JsonNames.Of(cuts), text, StringComparison.Ordinal))
        {
            place.Note($"is \"{text}\", which is neither none nor any of length, height, rake and notch in this order, joined by +");
        }

        return cuts;
    }
}
