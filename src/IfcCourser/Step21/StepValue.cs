using System.Collections.Immutable;
using System.Runtime.InteropServices;

namespace IfcCourser.Step21;

/// <summary>
/// A parameter of an instance. The accessors are lenient: they return null, or an empty list, where the value is of
/// another kind, look through typed values, and take an integer for a real.
/// </summary>
public readonly struct StepValue
{
    private readonly object? _object;
    private readonly long _bits;

    private StepValue(StepValueKind kind, long bits, object? content)
    {
        Kind = kind;
        _bits = bits;
        _object = content;
    }

    public static StepValue Omitted => default;

    public static StepValue Derived => new(StepValueKind.Derived, 0, null);

    public StepValueKind Kind { get; }

    /// <summary>Neither given nor derived.</summary>
    public bool IsNothing => Kind is StepValueKind.Omitted or StepValueKind.Derived;

    /// <summary>Name of a typed value's type, upper-case; null for other kinds.</summary>
    public string? TypeName => (_object as TypedContent)?.Name;

    /// <summary>The value inside a typed value, however often it is typed; the value itself for other kinds.</summary>
    public StepValue Inner => _object is TypedContent typed ? typed.Value.Inner : this;

    /// <summary>What stands in a typed value's parentheses, which may be typed itself; the value itself for other kinds.</summary>
    internal StepValue Content => _object is TypedContent typed ? typed.Value : this;

    /// <summary>An integer, or a real that is a whole number.</summary>
    public long? AsInteger => Inner switch
    {
        { Kind: StepValueKind.Integer, _bits: var bits } => bits,
        { Kind: StepValueKind.Real, AsReal: { } real } when Math.Abs(real) < 1e18 && real == Math.Floor(real) => (long)real,
        _ => null,
    };

    /// <summary>A finite number; null also for values too large for a double.</summary>
    public double? AsReal => Inner switch
    {
        { Kind: StepValueKind.Integer, _bits: var bits } => bits,
        { Kind: StepValueKind.Real, _bits: var bits } when double.IsFinite(BitConverter.Int64BitsToDouble(bits)) =>
            BitConverter.Int64BitsToDouble(bits),
        _ => null,
    };

    public string? AsString => Inner is { Kind: StepValueKind.String, _object: string text } ? text : null;

    /// <summary>An enumeration's name without its points, upper-case.</summary>
    public string? AsEnumeration => Inner is { Kind: StepValueKind.Enumeration, _object: string name } ? name : null;

    /// <summary>Hexadecimal digits of a binary value, the first telling the number of unused bits.</summary>
    public string? AsBinary => Inner is { Kind: StepValueKind.Binary, _object: string digits } ? digits : null;

    /// <summary>True, false, or null for unknown and for other kinds.</summary>
    public bool? AsBoolean => AsEnumeration switch
    {
        "T" => true,
        "F" => false,
        _ => null,
    };

    /// <summary>The id that is referred to.</summary>
    public long? AsReference => Kind == StepValueKind.Reference ? _bits : null;

    public ImmutableArray<StepValue> AsList =>
        Inner is { _object: StepValue[] items } ? ImmutableCollectionsMarshal.AsImmutableArray(items) : [];

    public static StepValue Integer(long value) => new(StepValueKind.Integer, value, null);

    public static StepValue Real(double value) => new(StepValueKind.Real, BitConverter.DoubleToInt64Bits(value), null);

    public static StepValue String(string text) => new(StepValueKind.String, 0, text);

    public static StepValue Enumeration(string name) => new(StepValueKind.Enumeration, 0, name);

    public static StepValue Binary(string digits) => new(StepValueKind.Binary, 0, digits);

    public static StepValue Reference(long id) => new(StepValueKind.Reference, id, null);

    public static StepValue List(params ImmutableArray<StepValue> items) =>
        new(StepValueKind.List, 0, ImmutableCollectionsMarshal.AsArray(items));

    public static StepValue Typed(string name, StepValue value) => new(StepValueKind.Typed, 0, new TypedContent(name, value));

    private sealed record TypedContent(string Name, StepValue Value);
}
