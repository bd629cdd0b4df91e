using System.Net;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using IfcCourser.Layouts;
using IfcCourser.Output.Page;

namespace IfcCourser.Output.Tests.Page;

/// <summary>A page as written, and what stands in it.</summary>
internal sealed partial class PageReading(string html)
{
    public string Html => html;

    public static PageReading Of(Layout layout, PageKind kind = PageKind.Report, params GivenOption[] options) =>
        new(System.Text.Encoding.UTF8.GetString(Bytes(layout, kind, options)));

    public static byte[] Bytes(Layout layout, PageKind kind, params GivenOption[] options)
    {
        using var stream = new MemoryStream();
        ReportPage.Write(layout, kind, [.. options], stream);
        return stream.ToArray();
    }

    /// <summary>The data of the script.</summary>
    public JsonNode Data => JsonNode.Parse(DataText)!;

    public string DataText => DataElement().Match(html).Groups["text"].Value;

    public string Script => ScriptElement().Match(html).Groups["text"].Value;

    /// <summary>Text of a table's row, blanks in place of tags.</summary>
    public string Row(string id) => Text(Regex.Match(html, $"<tr id=\"{Regex.Escape(id)}\".*?</tr>", RegexOptions.Singleline, TimeSpan.FromSeconds(5)).Value);

    /// <summary>Text of a part.</summary>
    public string Section(string id) => Text(Regex.Match(html, $"<section id=\"{id}\".*?</section>", RegexOptions.Singleline, TimeSpan.FromSeconds(5)).Value);

    public IReadOnlyList<string> Ids => [.. IdAttribute().Matches(html).Select(match => match.Groups["id"].Value)];

    public IReadOnlyList<string> Links => [.. LinkAttribute().Matches(html).Select(match => match.Groups["id"].Value)];

    private static string Text(string markup) => Blanks().Replace(WebUtility.HtmlDecode(Tag().Replace(markup, " ")), " ").Trim();

    [GeneratedRegex("<script type=\"application/json\" id=\"data\">(?<text>.*?)</script>", RegexOptions.Singleline | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 5000)]
    private static partial Regex DataElement();

    [GeneratedRegex("<script type=\"module\">(?<text>.*?)</script>", RegexOptions.Singleline | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 5000)]
    private static partial Regex ScriptElement();

    [GeneratedRegex(" id=\"(?<id>[^\"]*)\"", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 5000)]
    private static partial Regex IdAttribute();

    [GeneratedRegex(" href=\"#(?<id>[^\"]*)\"", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 5000)]
    private static partial Regex LinkAttribute();

    [GeneratedRegex("<[^>]*>", RegexOptions.None, matchTimeoutMilliseconds: 5000)]
    private static partial Regex Tag();

    [GeneratedRegex(@"\s+", RegexOptions.None, matchTimeoutMilliseconds: 5000)]
    private static partial Regex Blanks();
}
