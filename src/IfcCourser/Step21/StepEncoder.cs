using System.Globalization;
using System.Text;

namespace IfcCourser.Step21;

/// <summary>Values as text.</summary>
public static class StepEncoder
{
    public static string Encode(StepValue value)
    {
        var text = new StringBuilder();
        Append(text, value);
        return text.ToString();
    }

    /// <summary>An instance's line: number, name and parameters, without a line end.</summary>
    public static string Instance(long id, string type, params ReadOnlySpan<StepValue> arguments)
    {
        var text = new StringBuilder();
        Append(text, id, type, arguments);
        return text.ToString();
    }

    /// <summary>The same, behind what a text holds.</summary>
    public static void Append(StringBuilder text, long id, string type, params ReadOnlySpan<StepValue> arguments)
    {
        text.Append(CultureInfo.InvariantCulture, $"#{id}={type}(");
        AppendAll(text, arguments);
        text.Append(");");
    }

    private static void Append(StringBuilder text, StepValue value)
    {
        switch (value.Kind)
        {
            case StepValueKind.Omitted:
                text.Append('$');
                break;
            case StepValueKind.Derived:
                text.Append('*');
                break;
            case StepValueKind.Integer:
                text.Append(CultureInfo.InvariantCulture, $"{value.AsInteger}");
                break;
            case StepValueKind.Real:
                text.Append(value.AsReal is { } real ? StepReal.Encode(real) : "$");
                break;
            case StepValueKind.String:
                text.Append(StepString.Encode(value.AsString!));
                break;
            case StepValueKind.Enumeration:
                text.Append(CultureInfo.InvariantCulture, $".{value.AsEnumeration}.");
                break;
            case StepValueKind.Binary:
                text.Append(CultureInfo.InvariantCulture, $"\"{value.AsBinary}\"");
                break;
            case StepValueKind.Reference:
                text.Append(CultureInfo.InvariantCulture, $"#{value.AsReference}");
                break;
            case StepValueKind.List:
                text.Append('(');
                AppendAll(text, value.AsList.AsSpan());
                text.Append(')');
                break;
            default:
                text.Append(value.TypeName).Append('(');
                Append(text, value.Content);
                text.Append(')');
                break;
        }
    }

    private static void AppendAll(StringBuilder text, ReadOnlySpan<StepValue> values)
    {
        for (var i = 0; i < values.Length; i++)
        {
            if (i > 0)
            {
                text.Append(',');
            }

            Append(text, values[i]);
        }
    }
}
