using System.Text;

namespace IfcCourser.Output;

/// <summary>Text as XML may hold it.</summary>
internal static class XmlText
{
    /// <summary>Without the characters that XML 1.0 forbids (production 2) and without halves of surrogate pairs.</summary>
    public static string Of(string text)
    {
        var kept = new StringBuilder(text.Length);
        for (var i = 0; i < text.Length; i++)
        {
            if (char.IsHighSurrogate(text[i]) && i + 1 < text.Length && char.IsLowSurrogate(text[i + 1]))
            {
                kept.Append(text[i]).Append(text[++i]);
            }
            else if (System.Xml.XmlConvert.IsXmlChar(text[i]))
            {
                kept.Append(text[i]);
            }
        }

        return kept.ToString();
    }
}
