using System.Runtime.CompilerServices;

namespace IfcCourser.Output.Page;

/// <summary>Writes HTML and SVG: what stands in the braces of an interpolated text is escaped, the text around it is markup.</summary>
internal sealed class Html(TextWriter writer)
{
    public TextWriter Writer => writer;

    /// <summary>A line of markup.</summary>
    public void Line([InterpolatedStringHandlerArgument("")] ref HtmlLine line)
    {
        // The handler has written the text already.
        line.End();
    }

    /// <summary>Markup of our own, or of something that is written by other means.</summary>
    public void Raw(string markup) => writer.Write(markup);
}
