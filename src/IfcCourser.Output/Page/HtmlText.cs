using System.Text;

namespace IfcCourser.Output.Page;

/// <summary>Texts of a model as they may stand in HTML and SVG, in attributes and between tags.</summary>
internal static class HtmlText
{
    public static string Escaped(string? text)
    {
        using var writer = new StringWriter(System.Globalization.CultureInfo.InvariantCulture);
        Write(writer, text);
        return writer.ToString();
    }

    /// <summary>Characters that HTML gives a meaning are escaped; halves of pairs and control characters, which it forbids, are replaced.</summary>
    public static void Write(TextWriter writer, string? text)
    {
        foreach (var rune in (text ?? string.Empty).EnumerateRunes())
        {
            writer.Write(rune.Value switch
            {
                '&' => "&amp;",
                '<' => "&lt;",
                '>' => "&gt;",
                '"' => "&quot;",
                '\'' => "&#39;",
                _ => IsForbidden(rune) ? "\ufffd" : rune.ToString(),
            });
        }
    }

    private static bool IsForbidden(Rune rune) =>
        rune.Value is not ('\t' or '\n' or '\r') && (Rune.IsControl(rune) || (rune.Value & 0xfffe) == 0xfffe || rune.Value is >= 0xfdd0 and <= 0xfdef);
}
