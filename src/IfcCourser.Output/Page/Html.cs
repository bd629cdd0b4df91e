using System.Runtime.CompilerServices;

namespace IfcCourser.Output.Page;

/// <summary>Writes HTML and SVG: what stands in the braces of an interpolated text is escaped, the text around it is markup.</summary>
internal sealed class Html(TextWriter writer)
{
    public TextWriter Writer => writer;

#pragma warning disable CA1822 // Mark members as static: the handler is made for this instance
    /// <summary>A line of markup; the handler has written its text already.</summary>
    public void Line([InterpolatedStringHandlerArgument("")] ref HtmlLine line) => line.End();
#pragma warning restore CA1822

    /// <summary>Markup of our own, or of something that is written by other means.</summary>
    public void Raw(string markup) => writer.Write(markup);
}
