using System.Collections.Immutable;
using System.Globalization;
using IfcCourser.Findings;
using IfcCourser.Units;

namespace IfcCourser.Settings;

/// <summary>
/// A table of a settings file (catalog, rule set). Each read checks the kind of its value; what is wrong is noted with
/// file, line and key, and reading goes on with an empty value, so that a misspelt key is named before the key it hides.
/// </summary>
internal sealed class SettingsTable
{
    /// <summary>Of masses and densities, in the unit that the file has: sums of them must not run over.</summary>
    private const decimal LeastAmount = 0.000001m;
    private const decimal MostAmount = 1_000_000;

    private readonly string _file;
    private readonly string _path;
    private readonly int _line;
    private readonly Dictionary<string, TomlValue> _values;
    private readonly List<Fault> _faults;
    private readonly SortedSet<string> _known = new(StringComparer.Ordinal);
    private readonly List<SettingsTable> _children = [];

    private SettingsTable(string file, string path, TomlValue table, List<Fault> faults)
    {
        _file = file;
        _path = path;
        _line = table.Line;
        _values = (Dictionary<string, TomlValue>)table.Content;
        _faults = faults;
    }

    public static SettingsTable Root(TomlValue table, string file) => new(file, string.Empty, table, []);

    /// <summary>Unknown keys first, then what the reads noted, in their order; null where all is well.</summary>
    public Fault? FirstFault() => UnknownKeys().Concat(_faults).FirstOrDefault();

    public bool Has(string key)
    {
        _known.Add(key);
        return _values.ContainsKey(key);
    }

    public string Text(string key)
    {
        var text = Read<string>(key, "text in quotes") ?? string.Empty;
        Check(!Has(key) || !string.IsNullOrWhiteSpace(text), key, "must not be empty");
        return text;
    }

    public string? OptionalText(string key) => Has(key) ? Text(key) : null;

    public ImmutableArray<string> Texts(string key) =>
        [.. Items(key).Select(item => Cast<string>(item, key, "text in quotes") ?? string.Empty)];

    public Length Length(string key) => Read<string>(key, "a length in quotes, such as \"24 in\"") is { } text ? Parse(text, key, LineOf(key)) : default;

    /// <summary>A length that must be more than nothing.</summary>
    public Length PositiveLength(string key)
    {
        var length = Length(key);
        CheckPositive(key, length);
        return length;
    }

    /// <summary>A length that must not be negative.</summary>
    public Length LengthFromZero(string key)
    {
        var length = Length(key);
        Check(length >= Units.Length.Zero, key, "must not be negative");
        return length;
    }

    public Length? OptionalLength(string key) => Has(key) ? Length(key) : null;

    public ImmutableArray<Length> Lengths(string key) => [.. Items(key).Select(item => LengthOf(item, key))];

    public int Whole(string key, int least, int largest) => (int)LargeWhole(key, least, largest);

    public long LargeWhole(string key, long least, long largest)
    {
        var value = Read<object>(key, "a whole number");
        if (value is long whole && whole >= least && whole <= largest)
        {
            return whole;
        }

        Check(value is null, key, FormattableString.Invariant($"must be a whole number from {least} to {largest}"));
        return least;
    }

    public bool Flag(string key)
    {
        var value = Read<object>(key, "true or false");
        Check(value is null or bool, key, "must be true or false");
        return value is true;
    }

    public T Choice<T>(string key, params ReadOnlySpan<(string Name, T Value)> choices)
    {
        var text = Text(key);
        foreach (var (name, value) in choices)
        {
            if (string.Equals(name, text, StringComparison.Ordinal))
            {
                return value;
            }
        }

        List<string> names = [];
        foreach (var (name, _) in choices)
        {
            names.Add(name);
        }

        Check(text.Length == 0, key, $"is \"{text}\", which is none of {string.Join(", ", names)}");
        return choices[0].Value;
    }

    /// <summary>An amount more than nothing with its unit, such as "25 kg".</summary>
    /// <param name="key">The key.</param>
    /// <param name="units">The units it may be written in, and what one of them is in the unit returned.</param>
    public double Measure(string key, params ReadOnlySpan<(string Unit, double Factor)> units)
    {
        List<string> names = [];
        var text = Read<string>(key, $"an amount in quotes, such as \"25 {units[0].Unit}\"")?.Trim() ?? string.Empty;
        foreach (var (unit, factor) in units)
        {
            names.Add(unit);
            if (text.EndsWith(" " + unit, StringComparison.Ordinal)
                && decimal.TryParse(text[..^(unit.Length + 1)], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var amount)
                && amount is >= LeastAmount and <= MostAmount)
            {
                return (double)amount * factor;
            }
        }

        Check(text.Length == 0 && !Has(key), key, FormattableString.Invariant($"is \"{text}\"; write a number from {LeastAmount} to {MostAmount} and one of {string.Join(", ", names)}"));
        return 1;
    }

    /// <summary>A joint or bed with keys min, nominal and max.</summary>
    public LengthRange Range(string key)
    {
        var table = Table(key);
        var range = new LengthRange(table.Length("min"), table.Length("nominal"), table.Length("max"));
        Check(range.Min >= Units.Length.Zero && range.Min <= range.Nominal && range.Nominal <= range.Max, key, "must have 0 <= min <= nominal <= max");
        return range;
    }

    public SettingsTable Table(string key) =>
        Child(key, Read<Dictionary<string, TomlValue>>(key, "a table") is null ? Empty(key) : _values[key]);

    public SettingsTable? OptionalTable(string key) => Has(key) ? Table(key) : null;

    /// <summary>An array of tables; absent means none. Plain texts in it are passed as tables with that one key.</summary>
    public ImmutableArray<SettingsTable> Tables(string key, string? plainKey = null) =>
        [.. (Has(key) ? Items(key) : []).Select(item => Child(key, AsTable(item, key, plainKey)))];

    /// <summary>Notes a fault at the key where the condition does not hold.</summary>
    public void Check(bool holds, string key, string what)
    {
        if (!holds)
        {
            _faults.Add(new Fault(_file, LineOf(key), null, $"{_path}{key} {what}", "Correct the value."));
        }
    }

    public void CheckPositive(string key, Length value) => Check(value > Units.Length.Zero || !Has(key), key, "must be more than nothing");

    private IEnumerable<Fault> UnknownKeys()
    {
        var own = _values.Where(pair => !_known.Contains(pair.Key)).OrderBy(pair => pair.Value.Line).Select(pair =>
        {
            var nearest = NearestName.Of(pair.Key, _known) ?? Elsewhere(pair.Key);
            var remedy = nearest is null ? $"Known here: {string.Join(", ", _known)}." : $"Did you mean \"{nearest}\"?";
            return new Fault(_file, pair.Value.Line, null, $"there is no key \"{_path}{pair.Key}\"", remedy);
        });
        return own.Concat(_children.SelectMany(child => child.UnknownKeys()));
    }

    /// <summary>Where in the file a key of this name belongs that stands at the top: tables are easily forgotten.</summary>
    private string? Elsewhere(string key)
    {
        var places = _path.Length > 0 ? [] : Below().SelectMany(table => table._known.Select(known => (Key: known, Path: table._path + known))).ToList();
        var nearest = NearestName.Of(key, places.Select(place => place.Key));
        return nearest is null ? null : places.Find(place => string.Equals(place.Key, nearest, StringComparison.Ordinal)).Path;
    }

    private IEnumerable<SettingsTable> Below() => _children.SelectMany(child => child.Below().Prepend(child));

    private T? Read<T>(string key, string kind)
        where T : class
    {
        if (Has(key))
        {
            return Cast<T>(_values[key], key, kind);
        }

        _faults.Add(new Fault(_file, _line, null, $"the key \"{_path}{key}\" is missing", $"Add {_path}{key}, {kind}."));
        return null;
    }

    private List<TomlValue> Items(string key) => Read<List<TomlValue>>(key, "a list in square brackets") ?? [];

    private T? Cast<T>(TomlValue value, string key, string kind)
        where T : class
    {
        if (value.Content is T content)
        {
            return content;
        }

        _faults.Add(new Fault(_file, value.Line, null, $"{_path}{key} is not {kind}", $"Write {kind}."));
        return null;
    }

    private Length LengthOf(TomlValue item, string key) =>
        Cast<string>(item, key, "a list of lengths in quotes") is { } text ? Parse(text, key, item.Line) : default;

    private Length Parse(string text, string key, int line)
    {
        if (!LengthText.TryParse(text, out var length, out var problem))
        {
            _faults.Add(new Fault(_file, line, null, $"{_path}{key}: {problem}", "Correct the value."));
        }

        return length;
    }

    private TomlValue AsTable(TomlValue item, string key, string? plainKey)
    {
        if (plainKey is not null && item.Content is string)
        {
            return new TomlValue(new Dictionary<string, TomlValue>(StringComparer.Ordinal) { [plainKey] = item }, item.Line);
        }

        return Cast<Dictionary<string, TomlValue>>(item, key, "a list of tables") is null ? Empty(key) : item;
    }

    private SettingsTable Child(string key, TomlValue table)
    {
        var child = new SettingsTable(_file, $"{_path}{key}.", table, _faults);
        _children.Add(child);
        return child;
    }

    private TomlValue Empty(string key) => new(new Dictionary<string, TomlValue>(StringComparer.Ordinal), LineOf(key));

    private int LineOf(string key) => _values.TryGetValue(key, out var value) ? value.Line : _line;
}
