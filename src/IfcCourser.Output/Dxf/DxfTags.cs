using System.Globalization;
using System.Text;
using IfcCourser.Output.Sheets;

namespace IfcCourser.Output.Dxf;

/// <summary>Group codes with their values, as text.</summary>
internal sealed class DxfTags
{
    private readonly StringBuilder _text = new();

    public DxfTags Add(int code, string value)
    {
        _text.Append(CultureInfo.InvariantCulture, $"{code,3}\n").Append(value).Append('\n');
        return this;
    }

    public DxfTags Add(int code, long value) => Add(code, value.ToString(CultureInfo.InvariantCulture));

    /// <summary>To nine decimals: finer than a nanometre in millimetres and in inches.</summary>
    public DxfTags Add(int code, double value) =>
        Add(code, (Math.Round(value, 9) + 0.0).ToString("0.0########", CultureInfo.InvariantCulture));

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
