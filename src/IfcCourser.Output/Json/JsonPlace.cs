using System.Globalization;
using System.Text.Json;
using IfcCourser.Geometry;
using IfcCourser.Units;

namespace IfcCourser.Output.Json;

/// <summary>
/// A value of a JSON file and where it stands. Each read checks the value's kind; the first thing that is wrong is noted with its path, and
/// reading goes on with an empty value.
/// </summary>
internal sealed class JsonPlace
{
    /// <summary>Of coordinates, areas and masses.</summary>
    private const double LargestNumber = 1e15;

    private readonly JsonElement _value;
    private readonly JsonPlace? _parent;
    private readonly string _name;
    private readonly JsonFault _fault;

    private JsonPlace(JsonElement value, JsonPlace? parent, string name, JsonFault fault)
    {
        _value = value;
        _parent = parent;
        _name = name;
        _fault = fault;
    }

    public static JsonPlace Root(JsonElement value, JsonFault fault) => new(value, null, string.Empty, fault);

    /// <summary>A member that must be there.</summary>
    public JsonPlace this[string name]
    {
        get
        {
            if (Member(name) is { } member)
            {
                return member;
            }

            var missing = new JsonPlace(default, this, name, _fault);
            if (Check(_value.ValueKind is JsonValueKind.Object, "an object"))
            {
                _fault.Note(Messages.Missing(_fault.File, missing.Path()));
            }

            return missing;
        }
    }

    /// <summary>A member, or null where it is missing or null.</summary>
    public JsonPlace? Optional(string name) => Member(name) is { _value.ValueKind: not JsonValueKind.Null } member ? member : null;

    public IEnumerable<JsonPlace> Items()
    {
        if (!Check(_value.ValueKind is JsonValueKind.Array, "a list"))
        {
            yield break;
        }

        var index = 0;
        foreach (var item in _value.EnumerateArray())
        {
            yield return new JsonPlace(item, this, string.Create(CultureInfo.InvariantCulture, $"[{index}]"), _fault);
            index++;
        }
    }

    public ImmutableArray<T> List<T>(Func<JsonPlace, T> read) => [.. Items().Select(read)];

    /// <summary>A list of so many items.</summary>
    public ImmutableArray<T> List<T>(int count, Func<JsonPlace, T> read)
    {
        var items = List(read);
        return Check(items.Length == count, string.Create(CultureInfo.InvariantCulture, $"a list of {count}"))
            ? items
            : [.. Enumerable.Range(0, count).Select(_ => read(new JsonPlace(default, this, string.Empty, _fault)))];
    }

    public ImmutableArray<string> Texts() => List(item => item.Text());

    public ImmutableArray<Length> Lengths() => List(item => item.Length());

    public string Text() => TextOrNull() ?? Empty("a text");

    public string? TextOrNull()
    {
        try
        {
            return Check(_value.ValueKind is JsonValueKind.String or JsonValueKind.Null, "a text") ? _value.GetString() : null;
        }
        catch (InvalidOperationException)
        {
            // Half of a surrogate pair, escaped.
            Check(holds: false, "a text of whole characters");
            return string.Empty;
        }
    }

    public bool Flag() => Check(_value.ValueKind is JsonValueKind.True or JsonValueKind.False, "true or false") && _value.GetBoolean();

    public int Whole(int least = 0) =>
        Check(_value.ValueKind is JsonValueKind.Number && _value.TryGetInt32(out var whole) && whole >= least, least > 0 ? "a whole number from 1" : "a whole number")
            ? _value.GetInt32() : least;

    public long StepId() => Check(_value.ValueKind is JsonValueKind.Number && _value.TryGetInt64(out _), "a whole number") ? _value.GetInt64() : 0;

    /// <summary>Exact: a whole number of nanometres.</summary>
    public Length Length()
    {
        if (!Check(_value.ValueKind is JsonValueKind.Number, "a length in mm"))
        {
            return default;
        }

        var length = _value.TryGetDecimal(out var mm) ? JsonValues.FromMm(mm) : null;
        Check(length is not null, "a length of a building in mm with at most six decimals");
        return length ?? default;
    }

    public double Number() =>
        Check(_value.ValueKind is JsonValueKind.Number && _value.TryGetDouble(out var number) && Math.Abs(number) <= LargestNumber, "a number that a building may have")
            ? _value.GetDouble() : 0;

    public Vector2 Vector2() => List(2, item => item.Number()) is [var x, var y] ? new Vector2(x, y) : default;

    public Vector3 Vector3() => List(3, item => item.Number()) is [var x, var y, var z] ? new Vector3(x, y, z) : default;

    /// <summary>A vector in plan of length one.</summary>
    public Vector2 Direction()
    {
        const double Slack = 1e-6;
        var direction = Vector2();
        return Check(Math.Abs(direction.Length - 1) < Slack, "a direction of length 1") ? direction : new Vector2(1, 0);
    }

    public (Length First, Length Second) Pair() => List(2, item => item.Length()) is [var first, var second] ? (first, second) : default;

    public Interval Interval()
    {
        var (from, to) = Pair();
        return new Interval(from, to);
    }

    public ElevationRect Rect() => List(4, item => item.Length()) is [var left, var right, var bottom, var top] ? new ElevationRect(left, right, bottom, top) : default;

    public ImmutableArray<ElevationPoint> Outline() => List(item =>
    {
        var (s, z) = item.Pair();
        return new ElevationPoint(s, z);
    });

    /// <summary>One of the values of an enumeration by the word that the file has for it.</summary>
    public T Choice<T>(Func<T, string> name)
        where T : struct, Enum
    {
        var text = Text();
        var values = Enum.GetValues<T>();
        var place = Array.FindIndex(values, value => string.Equals(name(value), text, StringComparison.Ordinal));
        if (place < 0)
        {
            _fault.Note(Messages.NoChoice(_fault.File, Path(), text, values.Select(name)));
        }

        return values[Math.Max(place, 0)];
    }

    public void Note(string what) => _fault.Note(Messages.Unsound(_fault.File, Path(), what));

    /// <summary>Whether nothing was wrong with what has been read of the file.</summary>
    public bool IsSound => _fault.First is null;

    /// <summary>As the file's bytes have it.</summary>
    public JsonElement Element() => _value;

    private string Path()
    {
        var path = _parent?.Path() ?? string.Empty;
        return path.Length == 0 || _name.StartsWith('[') ? path + _name : $"{path}.{_name}";
    }

    private JsonPlace? Member(string name) => _value.ValueKind is JsonValueKind.Object && _value.TryGetProperty(name, out var member)
        ? new JsonPlace(member, this, name, _fault)
        : null;

    private string Empty(string kind)
    {
        Check(holds: false, kind);
        return string.Empty;
    }

    private bool Check(bool holds, string kind)
    {
        if (!holds)
        {
            _fault.Note(Messages.NotKind(_fault.File, Path(), kind));
        }

        return holds;
    }
}
