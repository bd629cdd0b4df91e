using System.Collections.Immutable;
using IfcCourser.Step21;

namespace IfcCourser.Ifc;

/// <summary>An instance whose values are asked for by attribute name, so that no caller counts places.</summary>
public readonly struct IfcEntity
{
    /// <summary>Of IfcLabel and IfcIdentifier (ISO 16739-1: STRING(255)).</summary>
    private const int LongestLabel = 255;

    private readonly StepInstance _instance;
    private readonly string[] _attributes;

    internal IfcEntity(StepInstance instance, string[] attributes)
    {
        _instance = instance;
        _attributes = attributes;
    }

    public long Id => _instance.Id;

    /// <summary>Upper-case entity name, such as IFCWALL.</summary>
    public string Type => _instance.Type;

    /// <summary>A text that people read, no longer than the standard lets a label be; null where the attribute is none.</summary>
    public string? Label(string attribute) => Label(this[attribute]);

    /// <summary>A text that people read, no longer than the standard lets a label be; null where the value is none.</summary>
    public static string? Label(StepValue value) => value.AsString is { } text ? Shortened(text) : null;

    /// <summary>A text no longer than the standard lets a label be: what is longer would fill sheets, cells and terminals.</summary>
    public static string Shortened(string text) => text.Length <= LongestLabel ? text : $"{text.AsSpan(0, char.IsHighSurrogate(text[LongestLabel - 2]) ? LongestLabel - 2 : LongestLabel - 1)}…";

    /// <summary>Values by place, for entities outside the table of attributes.</summary>
    public ImmutableArray<StepValue> Arguments => _instance.Arguments;

    /// <summary>The value at a place from 0; <c>$</c> where there are fewer.</summary>
    public StepValue this[int place] => _instance[place];

    /// <summary>The value of an attribute; <c>$</c> where the entity, in this schema, does not have it.</summary>
    public StepValue this[string attribute]
    {
        get
        {
            var place = Array.IndexOf(_attributes, attribute);
            return place < 0 ? StepValue.Omitted : _instance[place];
        }
    }
}
