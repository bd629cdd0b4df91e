using System.Globalization;
using System.Runtime.CompilerServices;

namespace IfcCourser.Output.Page;

/// <summary>Writes the parts of an interpolated text as they come: literals as markup, values escaped.</summary>
[InterpolatedStringHandler]
internal readonly ref struct HtmlLine
{
    private readonly TextWriter _writer;

    public HtmlLine(int literalLength, int formattedCount, Html html)
    {
        _ = (literalLength, formattedCount);
        _writer = html.Writer;
    }

    public void AppendLiteral(string markup) => _writer.Write(markup);

    public void AppendFormatted(string? text) => HtmlText.Write(_writer, text);

    public void AppendFormatted(int number) => _writer.Write(number.ToString(CultureInfo.InvariantCulture));

    /// <summary>Markup that was written elsewhere.</summary>
    public void AppendFormatted(Markup markup) => _writer.Write(markup.Text);

    public void End() => _writer.Write('\n');
}
