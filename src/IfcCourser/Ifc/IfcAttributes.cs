using System.Collections.Frozen;

namespace IfcCourser.Ifc;

/// <summary>Names of attributes, in file order, by entity and schema.</summary>
public static class IfcAttributes
{
    private static readonly FrozenDictionary<string, string[]>[] _bySchema =
        [.. Enum.GetValues<IfcSchema>().Select(Read)];

    /// <summary>Attribute names of an entity (upper-case name); empty where the table or the schema does not hold it.</summary>
    public static string[] Of(IfcSchema schema, string type) => _bySchema[(int)schema].GetValueOrDefault(type, []);

    /// <summary>Upper-case names of all entities of the table that a schema has.</summary>
    public static IEnumerable<string> Entities(IfcSchema schema) => _bySchema[(int)schema].Keys;

    private static FrozenDictionary<string, string[]> Read(IfcSchema schema)
    {
        var rows = new Dictionary<string, string[]>(StringComparer.OrdinalIgnoreCase);
        var text = IfcAttributeTable.Text.ReplaceLineEndings("\n").Replace("\n    ", " ", StringComparison.Ordinal);
        foreach (var line in text.Split('\n'))
        {
            var colon = line.IndexOf(':', StringComparison.Ordinal);
            if (NameIn(schema, line[..colon]) is { } entity)
            {
                rows[entity] = [.. line[(colon + 1)..].Split(' ', StringSplitOptions.RemoveEmptyEntries).SelectMany(Expand)];
            }
        }

        return rows.ToFrozenDictionary(row => row.Key.ToUpperInvariant(), row => row.Value, StringComparer.Ordinal);

        IEnumerable<string> Expand(string word) =>
            rows.TryGetValue(word, out var inherited) ? inherited : NameIn(schema, word) is { } name ? [name] : [];
    }

    /// <summary>The name without its mark; null where the schema is older than the mark.</summary>
    private static string? NameIn(IfcSchema schema, string word)
    {
        var parts = word.Split('@');
        return parts.Length == 1 || schema >= Enum.Parse<IfcSchema>("Ifc" + parts[1]) ? parts[0] : null;
    }
}
