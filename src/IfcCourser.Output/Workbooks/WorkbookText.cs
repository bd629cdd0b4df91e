using System.Text;
using System.Xml;

namespace IfcCourser.Output.Workbooks;

/// <summary>Texts as XML can hold them.</summary>
internal static class WorkbookText
{
    /// <summary>Without what XML 1.0 has no place for; half of a pair becomes U+FFFD.</summary>
    public static string Clean(string text) => string.Concat(text.EnumerateRunes().Where(IsXml));

    private static bool IsXml(Rune rune) => !rune.IsBmp || XmlConvert.IsXmlChar((char)rune.Value);
}
