using System.Text.Json;
using IfcCourser.Layouts;

namespace IfcCourser.Output.Json;

/// <summary>The courses of a wall of layout.json, one line for each piece.</summary>
internal static class CourseJson
{
    public static void Courses(Utf8JsonWriter json, ImmutableArray<Course> courses)
    {
        json.WriteStartArray("courses");
        foreach (var course in courses)
        {
            json.WriteStartObject();
            json.WriteNumber("n", course.Number);
            json.WriteString("kind", JsonNames.Of(course.Kind));
            json.Member("bottom", course.Bottom);
            json.Member("top", course.Top);
            json.ListLine("spans", course.Spans, (line, span) => line.Pair(span.Run.From, span.Run.To));
            json.ListLine("edges", course.Spans, Edges);
            json.Lines("pieces", course.Pieces, Piece);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Edges(Utf8JsonWriter json, Span span)
    {
        json.WriteStartArray();
        json.WriteStringValue(JsonNames.Of(span.StartEdge));
        json.WriteStringValue(JsonNames.Of(span.EndEdge));
        json.WriteEndArray();
    }

    private static void Piece(Utf8JsonWriter json, Piece piece)
    {
        json.WriteString("id", piece.Id);
        json.WriteString("kind", piece.IsFull ? "full" : "part");
        json.WriteString("product", piece.Product);
        json.Member("from", piece.From);
        json.Member("to", piece.To);
        json.Member("bottom", piece.Bottom);
        json.Member("top", piece.Top);
        if (piece.Outline is { } outline)
        {
            json.Member("outline", outline);
        }

        json.WriteString("cut", JsonNames.Of(piece.Cut));
        json.Member("core", piece.Cores);
        if (!piece.CornerCores.IsEmpty)
        {
            json.Member("cornerCore", piece.CornerCores);
        }

        if (piece.IsTrough)
        {
            json.WriteBoolean("trough", true);
        }

        if (piece.Notch is { } notch)
        {
            json.Line("notch", line => Notch(line, notch));
        }

        if (piece.Bed is { } bed)
        {
            json.Member("bed", bed.Least, bed.Most, bed.Mean);
        }
    }

    private static void Notch(Utf8JsonWriter json, Notch notch)
    {
        json.WriteString("face", notch.Face);
        json.Member("from", notch.From);
        json.Member("to", notch.To);
        json.Member("height", notch.Height);
    }
}
