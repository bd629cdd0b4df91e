using System.Globalization;
using IfcCourser.Step21;

namespace IfcCourser.Output.Tests.IfcWriteBack.Express;

/// <summary>Holds a value to an attribute's type, as the tables beside write it.</summary>
internal sealed class ExpressType(string text, Func<long, string, bool> isA)
{
    /// <summary>Bases of the defined types that our properties bear.</summary>
    private static readonly Dictionary<string, string> _defined = new(StringComparer.Ordinal)
    {
        ["IFCLABEL"] = "string",
        ["IFCTEXT"] = "string",
        ["IFCIDENTIFIER"] = "string",
        ["IFCBOOLEAN"] = "boolean",
        ["IFCLENGTHMEASURE"] = "real",
        ["IFCCOUNTMEASURE"] = "number",
    };

    /// <summary>What is wrong with a value; null where nothing is.</summary>
    public string? Problem(StepValue value) => Problem(text, value) is { } found ? $"{StepEncoder.Encode(value)} is no {text}: {found}" : null;

    private string? Problem(string type, StepValue value)
    {
        if (type.StartsWith('?'))
        {
            return value.Kind == StepValueKind.Omitted ? null : Problem(type[1..], value);
        }

        return type switch
        {
            "*" => value.Kind == StepValueKind.Derived ? null : "not derived",
            _ when value.IsNothing => "missing",
            _ when type.StartsWith("set[", StringComparison.Ordinal) || type.StartsWith("list[", StringComparison.Ordinal) => Aggregate(type, value),
            _ when type.StartsWith("enum(", StringComparison.Ordinal) =>
                value.Kind == StepValueKind.Enumeration && Inside(type).Contains(value.AsEnumeration, StringComparer.Ordinal) ? null : "not of the enumeration",
            _ when type.StartsWith("any(", StringComparison.Ordinal) => Select(type, value),
            _ when type.StartsWith('#') => value.AsReference is { } id && isA(id, type[1..]) ? null : "not such an instance",
            _ => Simple(type, value),
        };
    }

    private static string[] Inside(string type) => type[(type.IndexOf('(', StringComparison.Ordinal) + 1)..^1].Split('|');

    private string? Aggregate(string type, StepValue value)
    {
        var close = type.IndexOf(']', StringComparison.Ordinal);
        var bounds = type[(type.IndexOf('[', StringComparison.Ordinal) + 1)..close].Split(':');
        var items = value.AsList;
        if (value.Kind != StepValueKind.List || items.Length < int.Parse(bounds[0], CultureInfo.InvariantCulture)
            || (bounds[1] is not "?" && items.Length > int.Parse(bounds[1], CultureInfo.InvariantCulture)))
        {
            return "not so many";
        }

        if (type.StartsWith("set", StringComparison.Ordinal) && items.Select(StepEncoder.Encode).Distinct(StringComparer.Ordinal).Count() < items.Length)
        {
            return "an item stands twice";
        }

        return items.Select(item => Problem(type[(close + 1)..], item)).FirstOrDefault(problem => problem is not null);
    }

    private string? Select(string type, StepValue value)
    {
        var choices = Inside(type);
        return value.AsReference is { } id
            ? choices.Any(choice => choice.StartsWith('#') && isA(id, choice[1..])) ? null : "not of the select type"
            : value.TypeName is { } name && choices.Contains(name, StringComparer.Ordinal) && _defined.TryGetValue(name, out var simple)
                ? Simple(simple, value.Inner)
                : "not of the select type";
    }

    private static string? Simple(string type, StepValue value) => type switch
    {
        "string22" => value is { Kind: StepValueKind.String, AsString.Length: 22 } && "0123".Contains(value.AsString[0], StringComparison.Ordinal) ? null : "no GlobalId",
        "string" => value.Kind == StepValueKind.String ? null : "no string",
        "integer" => value.Kind == StepValueKind.Integer ? null : "no integer",
        "integer>0" => value is { Kind: StepValueKind.Integer, AsInteger: > 0 } ? null : "not positive",
        "number" => value.Kind is StepValueKind.Integer or StepValueKind.Real ? null : "no number",
        "real" => value.Kind == StepValueKind.Real ? null : "no real",
        "real>0" => value is { Kind: StepValueKind.Real, AsReal: > 0 } ? null : "not positive",
        "real>=0" => value is { Kind: StepValueKind.Real, AsReal: >= 0 } ? null : "negative",
        "boolean" => value.AsBoolean is not null ? null : "no boolean",
        _ => "of a type that the table's reader does not know",
    };
}
