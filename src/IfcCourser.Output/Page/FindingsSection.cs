using IfcCourser.Findings;
using IfcCourser.Output.Sheets;

namespace IfcCourser.Output.Page;

/// <summary>What was found: by code with what to do, then one by one.</summary>
internal static class FindingsSection
{
    public static void Write(Html html, PageFacts facts)
    {
        html.Line($"<section id=\"findings\" aria-labelledby=\"findings-h\"><h2 id=\"findings-h\">{PageText.FindingsHeading}</h2>");
        if (facts.Findings.IsEmpty)
        {
            html.Line($"<p>{PageText.NoFindings}</p></section>");
            return;
        }

        var codes = facts.Findings.GroupBy(finding => finding.Finding.Code)
            .OrderByDescending(group => group.Max(finding => finding.Finding.Severity)).ThenBy(group => group.Key.Id, StringComparer.Ordinal).ToList();
        Codes(html, codes);
        html.Line($"<h3 id=\"findings-each\">One by one</h3>");
        Filters.Write(html, "findings-table", "findings",
        [
            Filters.Choice("severity", "Severity", facts.Findings.Select(finding => finding.Finding.Severity).Distinct().OrderDescending()
                .Select(severity => (PageText.Severity(severity), PageText.Severity(severity)))),
            Filters.Choice("code", "Code", codes.Select(group => (group.Key.Id, group.Key.Id)).Order()),
            .. Filters.Places(facts),
        ]);
        Each(html, facts);
        html.Line($"</section>");
    }

    private static void Codes(Html html, List<IGrouping<FindingCode, PageFinding>> codes)
    {
        html.Line($"<div class=\"wide\"><table id=\"codes-table\" class=\"cards\"><caption class=\"hidden\">Findings by code</caption><thead><tr><th scope=\"col\">Code</th><th scope=\"col\">Severity</th><th scope=\"col\" class=\"number\">How many</th><th scope=\"col\">What it means</th><th scope=\"col\">What to do</th></tr></thead><tbody>");
        foreach (var group in codes)
        {
            var code = group.Key;
            html.Line($"<tr id=\"code-{code.Id}\"><th scope=\"row\"><a class=\"code\" href=\"#findings-each\" data-code=\"{code.Id}\">{code.Id}</a></th><td class=\"severity {PageText.Severity(group.Max(finding => finding.Finding.Severity))}\">{PageText.Severity(group.Max(finding => finding.Finding.Severity))}</td><td class=\"number\">{group.Count()}</td><td>{code.Meaning}</td><td>{code.Remedy}</td></tr>");
        }

        html.Line($"</tbody></table></div>");
    }

    private static void Each(Html html, PageFacts facts)
    {
        var walls = facts.Walls.ToDictionary(wall => wall.Number);
        html.Line($"<div class=\"wide\"><table id=\"findings-table\" class=\"cards\"><caption class=\"hidden\">Findings one by one</caption><thead><tr><th scope=\"col\">Severity</th><th scope=\"col\">Code</th><th scope=\"col\">Wall</th><th scope=\"col\">Where</th><th scope=\"col\">What</th></tr></thead><tbody>");
        foreach (var finding in facts.Findings)
        {
            var (wall, found) = (finding.Listed.Wall, finding.Finding);
            var storey = wall is null ? Markup.None : new Markup(FormattableString.Invariant($" data-storey=\"{facts.StoreyNumber(wall.Storey ?? SheetText.UnnamedStorey)}\" data-wall=\"{finding.WallNumber}\""));
            html.Line($"<tr id=\"f{finding.Number}\"{storey}><td class=\"severity {PageText.Severity(found.Severity)}\">{PageText.Severity(found.Severity)}</td><td><a class=\"code\" href=\"#code-{found.Code.Id}\">{found.Code.Id}</a></td>");
            html.Line($"<td>{WallOf(finding, walls)}</td>");
            html.Line($"<td>{Where(facts, finding, walls)}</td><td>{found.Message}</td></tr>");
        }

        html.Line($"</tbody></table></div>");
    }

    private static Markup WallOf(PageFinding finding, Dictionary<int, PageWall> walls)
    {
        var wall = finding.Listed.Wall;
        return finding.WallNumber is not { } number ? new Markup(PageText.OfTheModel)
            : walls.TryGetValue(number, out var drawn) ? new Markup($"{Cells.Wall(drawn).Text} <small>{HtmlText.Escaped(drawn.Storey)}</small>")
            : new Markup(FormattableString.Invariant($"<a href=\"#s{number}\">{SheetText.WallNumber(number)}</a> {Markup.Name(wall!.Label).Text}"));
    }

    /// <summary>Linked to the place in the elevation.</summary>
    private static Markup Where(PageFacts facts, PageFinding finding, Dictionary<int, PageWall> walls)
    {
        var place = PageText.Place(finding.Finding.At, facts.Text);
        return finding.WallNumber is { } number && walls.ContainsKey(number)
            ? new Markup(FormattableString.Invariant($"<a href=\"#w{number}\" data-at=\"f{finding.Number}\">{HtmlText.Escaped(place.Length == 0 ? "the wall" : place)}</a>"))
            : new Markup(HtmlText.Escaped(place));
    }
}
