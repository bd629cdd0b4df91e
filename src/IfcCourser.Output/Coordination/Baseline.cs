using System.Text.Json;
using System.Text.Unicode;
using IfcCourser.Findings;
using IfcCourser.Layouts;
using IfcCourser.Output.Json;
using IfcCourser.Output.Tables;

namespace IfcCourser.Output.Coordination;

/// <summary>Findings that were accepted: a JSON file with a line for each key, and how many findings have it.</summary>
/// <param name="Accepted">How many findings of each key are accepted.</param>
public sealed record Baseline(ImmutableSortedDictionary<FindingKey, int> Accepted)
{
    /// <summary>Findings of one key.</summary>
    private const int MostOfOne = 1_000_000;

    private const string SchemaName = "ifccourser.baseline/1";

    /// <summary>Every finding of a layout, sorted, so that two baselines compare line by line.</summary>
    public static Baseline Of(Layout layout) => new(WallFinding.Of(layout)
        .GroupBy(listed => FindingKey.Of(layout.Model, listed))
        .ToImmutableSortedDictionary(same => same.Key, same => same.Count()));

    public void Write(Stream stream)
    {
        using (var json = new Utf8JsonWriter(stream, LayoutJson.Options))
        {
            json.WriteStartObject();
            json.WriteString("schema", SchemaName);
            json.Lines("accepted", Accepted, (line, entry) =>
            {
                line.WriteString("project", entry.Key.Project);
                line.WriteString("wall", entry.Key.Wall);
                line.WriteString("opening", entry.Key.Opening);
                line.WriteString("code", entry.Key.Code);
                line.WriteNumber("count", entry.Value);
            });
            json.WriteEndObject();
        }

        stream.WriteByte((byte)'\n');
    }

    /// <summary>Reads a file that <see cref="Write"/> wrote; people may have taken lines out of it.</summary>
    public static Outcome<Baseline> Read(string path)
    {
        try
        {
            var bytes = File.ReadAllBytes(path);
            if (!Utf8.IsValid(bytes))
            {
                return Messages.BaselineNotJson(path, null);
            }

            using var document = JsonDocument.Parse(bytes, new JsonDocumentOptions { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true });
            return Read(path, document.RootElement);
        }
        catch (JsonException e)
        {
            return Messages.BaselineNotJson(path, e.LineNumber);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return Messages.Unreadable(path, e);
        }
    }

    private static Outcome<Baseline> Read(string path, JsonElement root)
    {
        if (root.ValueKind != JsonValueKind.Object || Text(root, "schema") is not SchemaName
            || !root.TryGetProperty("accepted", out var accepted) || accepted.ValueKind != JsonValueKind.Array)
        {
            return Messages.NoBaseline(path);
        }

        var counts = new Dictionary<FindingKey, int>();
        foreach (var (entry, index) in accepted.EnumerateArray().Select((entry, index) => (entry, index)))
        {
            if (entry.ValueKind != JsonValueKind.Object || Text(entry, "code") is not { Length: > 0 } code)
            {
                return Messages.BadBaselineEntry(path, index + 1);
            }

            var count = 1;
            if (entry.TryGetProperty("count", out var number) && (number.ValueKind != JsonValueKind.Number || !number.TryGetInt32(out count) || count is < 0 or > MostOfOne))
            {
                return Messages.BadBaselineEntry(path, index + 1);
            }

            var key = new FindingKey(Text(entry, "project") ?? string.Empty, Text(entry, "wall") ?? string.Empty, Text(entry, "opening") ?? string.Empty, code);
            counts[key] = Math.Min(MostOfOne, counts.GetValueOrDefault(key) + count);
        }

        return new Baseline(counts.ToImmutableSortedDictionary());
    }

    private static string? Text(JsonElement element, string name) =>
        element.TryGetProperty(name, out var value) && value.ValueKind == JsonValueKind.String ? value.GetString() : null;
}
