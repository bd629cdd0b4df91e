using System.Collections;
using System.Globalization;
using System.Text;

namespace FixtureMaker.Step;

/// <summary>Writes the instances of an ISO 10303-21 file one after another, numbered from 1.</summary>
internal sealed class StepFileWriter
{
    private readonly StringBuilder _data = new();
    private int _last;

    public Reference Add(string entity, params object?[] attributes)
    {
        _last++;
        _data.Append(CultureInfo.InvariantCulture, $"#{_last}={entity}(");
        AppendList(attributes);
        _data.Append(");\n");
        return new Reference(_last);
    }

    /// <summary>The whole file; the header's strings are given as they stand in the file.</summary>
    public string Finish(string header) =>
        $"ISO-10303-21;\nHEADER;\n{header}ENDSEC;\nDATA;\n{_data}ENDSEC;\nEND-ISO-10303-21;\n";

    /// <summary>A string in quotes; what lies outside ASCII is written as \X2\....\X0\ (ISO 10303-21, 6.4.3.3).</summary>
    public static string Quote(string text)
    {
        var quoted = new StringBuilder("'");
        foreach (var letter in text)
        {
            quoted.Append(letter switch
            {
                '\'' => "''",
                '\\' => @"\\",
                >= ' ' and <= '~' => letter.ToString(),
                _ => string.Create(CultureInfo.InvariantCulture, $@"\X2\{(int)letter:X4}\X0\"),
            });
        }

        return quoted.Append('\'').ToString();
    }

    /// <summary>A real with its point, to twelve decimals: far below any length that matters, and free of the noise of sums.</summary>
    public static string Real(double value)
    {
        var text = Math.Round(value, 12).ToString("0.############", CultureInfo.InvariantCulture);
        text = text is "-0" ? "0" : text;
        return text.Contains('.', StringComparison.Ordinal) ? text : text + ".";
    }

    private void AppendList(IEnumerable values)
    {
        var separator = "";
        foreach (var value in values)
        {
            _data.Append(separator);
            Append(value);
            separator = ",";
        }
    }

    private void Append(object? value)
    {
        switch (value)
        {
            case null: _data.Append('$'); break;
            case Derived: _data.Append('*'); break;
            case Reference reference: _data.Append(CultureInfo.InvariantCulture, $"#{reference.Id}"); break;
            case Keyword keyword: _data.Append('.').Append(keyword.Name).Append('.'); break;
            case int number: _data.Append(number.ToString(CultureInfo.InvariantCulture)); break;
            case double number: _data.Append(Real(number)); break;
            case string text: _data.Append(Quote(text)); break;
            case Typed typed:
                _data.Append(typed.Type).Append('(');
                Append(typed.Value);
                _data.Append(')');
                break;
            case IEnumerable values:
                _data.Append('(');
                AppendList(values);
                _data.Append(')');
                break;
            default: throw new ArgumentException($"no STEP form for {value.GetType().Name}", nameof(value));
        }
    }
}
