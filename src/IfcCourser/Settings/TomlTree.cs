using IfcCourser.Findings;
using Tomlyn.Parsing;
using Tomlyn.Syntax;

namespace IfcCourser.Settings;

/// <summary>Turns TOML text into a tree of tables whose values know their lines.</summary>
internal static class TomlTree
{
    /// <summary>No settings file needs more than a handful; the parser goes down a call for each.</summary>
    private const int DeepestNesting = 32;

    /// <summary>The root table, or the first fault of syntax.</summary>
    public static Outcome<TomlValue> Parse(string text, string file)
    {
        if (LineTooDeep(text) is { } line)
        {
            return TooDeep(file, line);
        }

        // The parser throws on a backslash that ends the file within a text.
        var document = SyntaxParser.Parse($"{text}\n", file, validate: true);
        var error = document.Diagnostics.FirstOrDefault(message => message.Kind is DiagnosticMessageKind.Error);
        if (error is not null)
        {
            return new Fault(
                file, error.Span.Start.Line + 1, null, $"this is no valid TOML: {error.Message.TrimEnd('.')}", "Correct the line.");
        }

        var root = new Dictionary<string, TomlValue>(StringComparer.Ordinal);
        foreach (var pair in document.KeyValues)
        {
            Put(root, pair);
        }

        foreach (var table in document.Tables)
        {
            var target = Open(root, table);
            foreach (var item in table.Items)
            {
                if (item is KeyValueSyntax pair)
                {
                    Put(target, pair);
                }
            }
        }

        var tree = new TomlValue(root, 1);
        return LineTooDeep(tree) is { } deep ? TooDeep(file, deep) : tree;
    }

    private static Fault TooDeep(string file, int line) =>
        new(file, line, null, "tables or lists are nested too deep", "Close the brackets that are open, or write the values flatter.");

    /// <summary>The line in which more brackets are open than may be; those in texts and comments are counted too, which harms no real file.</summary>
    private static int? LineTooDeep(string text)
    {
        var (line, depth) = (1, 0);
        foreach (var c in text)
        {
            line += c == '\n' ? 1 : 0;
            depth = Math.Max(0, depth + (c is '[' or '{' ? 1 : c is ']' or '}' ? -1 : 0));
            if (depth > DeepestNesting)
            {
                return line;
            }
        }

        return null;
    }

    /// <summary>The line of a value too deep: keys joined by points nest without brackets.</summary>
    private static int? LineTooDeep(TomlValue tree)
    {
        var open = new Stack<(TomlValue Value, int Depth)>([(tree, 0)]);
        while (open.TryPop(out var next))
        {
            if (next.Depth > DeepestNesting)
            {
                return next.Value.Line;
            }

            foreach (var inner in next.Value.Content switch { Dictionary<string, TomlValue> table => table.Values, List<TomlValue> list => list, _ => Enumerable.Empty<TomlValue>() })
            {
                open.Push((inner, next.Depth + 1));
            }
        }

        return null;
    }

    private static Dictionary<string, TomlValue> Open(Dictionary<string, TomlValue> root, TableSyntaxBase table)
    {
        var names = Names(table.Name!);
        var line = LineOf(table);
        if (table is not TableArraySyntax)
        {
            return Walk(root, names, line);
        }

        var parent = Walk(root, names[..^1], line);
        if (!parent.TryGetValue(names[^1], out var existing))
        {
            existing = new TomlValue(new List<TomlValue>(), line);
            parent.Add(names[^1], existing);
        }

        var added = new Dictionary<string, TomlValue>(StringComparer.Ordinal);
        ((List<TomlValue>)existing.Content).Add(new TomlValue(added, line));
        return added;
    }

    /// <summary>The table at the end of a path; tables on the way are made, of an array of tables the last one counts.</summary>
    private static Dictionary<string, TomlValue> Walk(Dictionary<string, TomlValue> table, IEnumerable<string> names, int line)
    {
        foreach (var name in names)
        {
            if (!table.TryGetValue(name, out var next))
            {
                next = new TomlValue(new Dictionary<string, TomlValue>(StringComparer.Ordinal), line);
                table.Add(name, next);
            }

            table = (Dictionary<string, TomlValue>)(next.Content is List<TomlValue> array ? array[^1].Content : next.Content);
        }

        return table;
    }

    private static void Put(Dictionary<string, TomlValue> table, KeyValueSyntax pair)
    {
        var names = Names(pair.Key!);
        var line = LineOf(pair);
        Walk(table, names[..^1], line)[names[^1]] = Value(pair.Value!);
    }

    private static TomlValue Value(ValueSyntax value) => new(
        value switch
        {
            StringValueSyntax text => text.Value ?? string.Empty,
            IntegerValueSyntax whole => whole.Value,
            FloatValueSyntax number => number.Value,
            BooleanValueSyntax flag => flag.Value,
            ArraySyntax array => array.Items.Select(item => Value(item.Value!)).ToList(),
            InlineTableSyntax inline => Inline(inline),
            _ => value.ToString(),
        },
        LineOf(value));

    private static Dictionary<string, TomlValue> Inline(InlineTableSyntax inline)
    {
        var table = new Dictionary<string, TomlValue>(StringComparer.Ordinal);
        foreach (var item in inline.Items)
        {
            Put(table, item.KeyValue!);
        }

        return table;
    }

    private static string[] Names(KeySyntax key) => [Name(key.Key!), .. key.DotKeys.Select(dotted => Name(dotted.Key!))];

    private static string Name(BareKeyOrStringValueSyntax key) =>
        key is StringValueSyntax text ? text.Value ?? string.Empty : ((BareKeySyntax)key).Key?.Text ?? string.Empty;

    private static int LineOf(SyntaxNode node) => node.Span.Start.Line + 1;
}
