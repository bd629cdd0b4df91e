using System.Buffers;
using System.Text;
using System.Text.Json;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Units;

namespace IfcCourser.Output.Json;

/// <summary>How values stand in our JSON: lengths in mm with at most six decimals, small things on one line.</summary>
internal static class JsonValues
{
    /// <summary>mm: what no building reaches, and sums of lengths can hold.</summary>
    private const long LargestLength = 1_000_000_000_000;

    private static readonly JsonWriterOptions _compact = LayoutJson.Options with { Indented = false };

    /// <summary>Exact: a nanometre is the sixth decimal.</summary>
    public static void Value(this Utf8JsonWriter json, Length length) =>
        json.WriteNumberValue(length.Nanometres / (decimal)Length.NanometresPerMm);

    /// <summary>The length that is written so; null where it has more decimals or is too large for a building.</summary>
    public static Length? FromMm(decimal mm) =>
        Math.Abs(mm) <= LargestLength && decimal.IsInteger(mm * Length.NanometresPerMm) ? new Length((long)(mm * Length.NanometresPerMm)) : null;

    public static void Member(this Utf8JsonWriter json, string name, Length length)
    {
        json.WritePropertyName(name);
        json.Value(length);
    }

    public static void Member(this Utf8JsonWriter json, string name, double value) =>
        json.WriteNumber(name, Decimals.Rounded(value, Decimals.OfMm));

    /// <summary>A list of lengths on one line.</summary>
    public static void Member(this Utf8JsonWriter json, string name, params ReadOnlySpan<Length> lengths)
    {
        json.WriteStartArray(name);
        foreach (var length in lengths)
        {
            json.Value(length);
        }

        json.WriteEndArray();
    }

    public static void Member(this Utf8JsonWriter json, string name, Vector3 point) =>
        json.Numbers(name, Decimals.OfMm, point.X, point.Y, point.Z);

    public static void Member(this Utf8JsonWriter json, string name, Vector2 point) =>
        json.Numbers(name, Decimals.OfMm, point.X, point.Y);

    public static void Direction(this Utf8JsonWriter json, string name, Vector2 unit) =>
        json.Numbers(name, Decimals.OfDirections, unit.X, unit.Y);

    public static void Member(this Utf8JsonWriter json, string name, ElevationRect rect) =>
        json.Member(name, rect.Left, rect.Right, rect.Bottom, rect.Top);

    public static void Member(this Utf8JsonWriter json, string name, IEnumerable<string> texts)
    {
        json.WriteStartArray(name);
        foreach (var text in texts)
        {
            json.WriteStringValue(text);
        }

        json.WriteEndArray();
    }

    /// <summary>A polygon as pairs [s, z], on one line.</summary>
    public static void Member(this Utf8JsonWriter json, string name, IEnumerable<ElevationPoint> points) =>
        json.ListLine(name, points, (line, point) => line.Pair(point.S, point.Z));

    public static void Pair(this Utf8JsonWriter json, Length first, Length second)
    {
        json.WriteStartArray();
        json.Value(first);
        json.Value(second);
        json.WriteEndArray();
    }

    public static void Pair(this Utf8JsonWriter json, Vector2 point)
    {
        json.WriteStartArray();
        json.WriteNumberValue(Decimals.Rounded(point.X, Decimals.OfMm));
        json.WriteNumberValue(Decimals.Rounded(point.Y, Decimals.OfMm));
        json.WriteEndArray();
    }

    /// <summary>An object on one line, whatever the writer's own layout: what changes in it shows as one changed line.</summary>
    public static void Line(this Utf8JsonWriter json, Action<Utf8JsonWriter> members) => json.OneLine(line =>
    {
        line.WriteStartObject();
        members(line);
        line.WriteEndObject();
    });

    public static void Line(this Utf8JsonWriter json, string name, Action<Utf8JsonWriter> members)
    {
        json.WritePropertyName(name);
        json.Line(members);
    }

    /// <summary>A list on one line.</summary>
    public static void ListLine<T>(this Utf8JsonWriter json, string name, IEnumerable<T> items, Action<Utf8JsonWriter, T> write)
    {
        json.WritePropertyName(name);
        json.OneLine(line =>
        {
            line.WriteStartArray();
            foreach (var item in items)
            {
                write(line, item);
            }

            line.WriteEndArray();
        });
    }

    /// <summary>A list with one line for each item.</summary>
    public static void Lines<T>(this Utf8JsonWriter json, string name, IEnumerable<T> items, Action<Utf8JsonWriter, T> members)
    {
        json.WriteStartArray(name);
        foreach (var item in items)
        {
            json.OneLine(
                line =>
                {
                    line.WriteStartObject();
                    members(line, item);
                    line.WriteEndObject();
                },
                $"\n{new string(' ', json.CurrentDepth)}");
        }

        json.WriteEndArray();
    }

    /// <param name="before">Blanks; the writer sets none before what it takes as it is.</param>
    private static void OneLine(this Utf8JsonWriter json, Action<Utf8JsonWriter> write, string before = "")
    {
        var buffer = new ArrayBufferWriter<byte>();
        buffer.Write(Encoding.ASCII.GetBytes(before));
        using (var line = new Utf8JsonWriter(buffer, _compact))
        {
            write(line);
        }

        json.WriteRawValue(buffer.WrittenSpan, skipInputValidation: true);
    }

    private static void Numbers(this Utf8JsonWriter json, string name, int decimals, params ReadOnlySpan<double> values)
    {
        json.WriteStartArray(name);
        foreach (var value in values)
        {
            json.WriteNumberValue(Decimals.Rounded(value, decimals));
        }

        json.WriteEndArray();
    }
}
