using FixtureMaker.Design;
using FixtureMaker.Ifc;

namespace FixtureMaker.Cases.Oddities;

/// <summary>A written model whose lines are changed one by one, as faulty programs and people do.</summary>
internal sealed class StepEdit(House house)
{
    private readonly List<string> _lines = [.. HouseFile.Write(house).Split('\n')];

    public string Text => string.Join('\n', _lines);

    /// <summary>The only or the first instance of an entity.</summary>
    public string LineOf(string entity) => _lines[Find(entity, 0)];

    /// <summary>Replaces one attribute, counted from 0, of an instance of an entity, counted from 0 in the file's order.</summary>
    public StepEdit Set(string entity, int place, string value, int instance = 0) => Change(entity, instance, attributes => attributes[place] = value);

    /// <summary>Leaves out an instance's last attributes.</summary>
    public StepEdit Shorten(string entity, int count, int instance = 0) =>
        Change(entity, instance, attributes => attributes.RemoveRange(attributes.Count - count, count));

    /// <summary>Adds attributes behind an instance's last.</summary>
    public StepEdit Lengthen(string entity, string value, int instance = 0) => Change(entity, instance, attributes => attributes.Add(value));

    public StepEdit Remove(string entity)
    {
        _lines.RemoveAt(Find(entity, 0));
        return this;
    }

    /// <summary>Adds a line in front of the end of the data section.</summary>
    public StepEdit Append(string line)
    {
        _lines.Insert(_lines.LastIndexOf("ENDSEC;"), line);
        return this;
    }

    private StepEdit Change(string entity, int instance, Action<List<string>> change)
    {
        var at = Find(entity, instance);
        var open = _lines[at].IndexOf('(', StringComparison.Ordinal) + 1;
        var attributes = Split(_lines[at][open..^2]);
        change(attributes);
        _lines[at] = $"{_lines[at][..open]}{string.Join(',', attributes)});";
        return this;
    }

    private int Find(string entity, int instance) => _lines
        .Select((line, i) => (Line: line, Index: i))
        .Where(line => line.Line.Contains($"={entity}(", StringComparison.Ordinal))
        .ElementAt(instance)
        .Index;

    // At commas that stand in no list and no string.
    private static List<string> Split(string attributes)
    {
        var (parts, from, depth, isQuoted) = (new List<string>(), 0, 0, false);
        for (var i = 0; i < attributes.Length; i++)
        {
            isQuoted ^= attributes[i] == '\'';
            depth += isQuoted ? 0 : attributes[i] switch { '(' => 1, ')' => -1, _ => 0 };
            if (attributes[i] == ',' && depth == 0 && !isQuoted)
            {
                parts.Add(attributes[from..i]);
                from = i + 1;
            }
        }

        parts.Add(attributes[from..]);
        return parts;
    }
}
