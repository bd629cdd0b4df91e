using System.Globalization;
using System.Text;
using IfcCourser.Output.Sheets;

namespace IfcCourser.Output.Dxf;

/// <summary>Group codes with their values, as text.</summary>
internal sealed class DxfTags
{
    /// <summary>One for each group code of the format, as it stands in a file: formatted once, for a set of sheets has millions.</summary>
    private static readonly ImmutableArray<string> _codes = [.. Enumerable.Range(0, 1072).Select(code => string.Create(CultureInfo.InvariantCulture, $"{code,3}\n"))];

    private readonly StringBuilder _text = new();

    public DxfTags Add(int code, string value)
    {
        _text.Append(_codes[code]).Append(value).Append('\n');
        return this;
    }

    public DxfTags Add(int code, long value) => Add(code, value.ToString(CultureInfo.InvariantCulture));

    /// <summary>To nine decimals: finer than a nanometre in millimetres and in inches.</summary>
    public DxfTags Add(int code, double value)
    {
        _text.Append(_codes[code]).Append(CultureInfo.InvariantCulture, $"{Math.Round(value, 9) + 0.0:0.0########}").Append('\n');
        return this;
    }

    /// <summary>A point in the plane: x under <paramref name="code"/>, y and z under the codes 10 and 20 higher.</summary>
    public DxfTags Add(int code, Point point) => Add(code, point.X).Add(code + 10, point.Y).Add(code + 20, 0.0);

    /// <summary>A point without its z.</summary>
    public DxfTags AddFlat(int code, Point point) => Add(code, point.X).Add(code + 10, point.Y);

    public DxfTags Add(DxfTags other)
    {
        _text.Append(other._text);
        return this;
    }

    public void WriteTo(TextWriter writer) => writer.Write(_text);
}
