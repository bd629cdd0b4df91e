using System.Security.Cryptography;
using System.Text;
using IfcCourser.Layouts;

namespace IfcCourser.Output.Page;

/// <summary>
/// One self-contained HTML file over a layout: no network, no framework, no font of its own. Tables and plans are HTML and SVG; elevations
/// are drawn by the script, a wall at a time.
/// </summary>
public static class ReportPage
{
    private static readonly ImmutableArray<string> _scripts = ["words.js", "lengths.js", "elevation.js", "viewer.js", "filters.js", "page.js"];

    /// <summary>Writes UTF-8; the same layout and options give the same bytes.</summary>
    /// <param name="options">What the run was given beside model, catalog, rules and openings.</param>
    public static void Write(Layout layout, PageKind kind, ImmutableArray<GivenOption> options, Stream stream)
    {
        using var writer = new StreamWriter(stream, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false), leaveOpen: true) { NewLine = "\n" };
        var html = new Html(writer);
        var facts = new PageFacts(layout, kind);
        var script = $"\n{string.Concat(_scripts.Select(Resource))}";
        Head(html, facts, script);
        Masthead(html, facts);
        html.Line($"<main>");
        foreach (var section in Sections(kind))
        {
            section(html, facts);
        }

        RunSection.Write(html, facts, options);
        html.Line($"</main>");
        html.Raw($"<script type=\"application/json\" id=\"data\">{ElevationData.Of(facts)}</script>\n");
        html.Raw($"<script type=\"module\">{script}</script>\n</body>\n</html>\n");
    }

    private static Action<Html, PageFacts>[] Sections(PageKind kind) => kind == PageKind.Report
        ? [OpeningsSection.Write, PlanSection.Write, FindingsSection.Write, QuantitiesSection.Write, SkippedSection.Write]
        : [OpeningsSection.Write, FindingsSection.Write, PlanSection.Write, SkippedSection.Write, QuantitiesSection.Write];

    /// <summary>The policy lets nothing be loaded and no other script run.</summary>
    private static void Head(Html html, PageFacts facts, string script)
    {
        var hash = Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(script)));
        html.Line($"<!DOCTYPE html>");
        html.Line($"<html lang=\"en\">");
        html.Line($"<head>");
        html.Line($"<meta charset=\"utf-8\">");
        html.Line($"<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'unsafe-inline'; script-src 'sha256-{hash}'; base-uri 'none'; form-action 'none'\">");
        html.Line($"<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">");
        html.Line($"<meta name=\"color-scheme\" content=\"light dark\">");
        html.Line($"<title>{PageText.Title(facts.Kind)}: {facts.Layout.Model.ProjectName ?? facts.Layout.Model.File}</title>");
        html.Raw($"<style>\n{Resource("page.css")}{Resource("drawing.css")}{Resource("print.css")}</style>\n</head>\n<body>\n");
    }

    private static void Masthead(Html html, PageFacts facts)
    {
        var (layout, totals) = (facts.Layout, LayoutTotals.Of(facts.Layout));
        var counts = new[] { Findings.Severity.Error, Findings.Severity.Warning, Findings.Severity.Note }
            .Select(severity => (severity, Count: facts.Findings.Count(finding => finding.Finding.Severity == severity)))
            .Where(pair => pair.Count > 0)
            .Select(pair => PageText.Count(pair.Count, PageText.Severity(pair.severity), PageText.Severity(pair.severity) + "s"));
        html.Line($"<a class=\"skip\" href=\"#openings\">To the openings</a><header class=\"masthead\">");
        html.Raw(Resource("bond.svg"));
        html.Line($"<p class=\"kind\">{PageText.Title(facts.Kind)}</p><h1>{Markup.Name(layout.Model.ProjectName ?? layout.Model.File)}</h1>");
        html.Line($"<p>{layout.Model.File}, {layout.Model.Date}</p>");
        html.Line($"<p class=\"sums\"><span>{totals.Coursed} of {PageText.Count(totals.Walls, "wall", "walls")} laid out</span> <span>{PageText.Count(totals.Pieces, "block", "blocks")}, {totals.PartUnits} of them cut</span> <span>{string.Join(", ", counts.DefaultIfEmpty("nothing found"))}</span></p></header>");
        html.Line($"<nav aria-label=\"Parts of this page\"><ul>");
        foreach (var (id, heading) in Parts(facts.Kind))
        {
            html.Line($"<li><a href=\"#{id}\">{heading}</a></li>");
        }

        html.Line($"</ul></nav>");
    }

    private static (string Id, string Heading)[] Parts(PageKind kind)
    {
        (string, string) walls = ("walls", PageText.WallsHeading), findings = ("findings", PageText.FindingsHeading),
            quantities = ("quantities", PageText.QuantitiesHeading), skipped = ("skipped", PageText.SkippedHeading);
        (string, string)[] middle = kind == PageKind.Report ? [walls, findings, quantities, skipped] : [findings, walls, skipped, quantities];
        return [("openings", PageText.OpeningsHeading), .. middle, ("cautions", PageText.CautionsHeading), ("run", PageText.RunHeading)];
    }

    /// <summary>Line ends as written here, however the repository was checked out.</summary>
    private static string Resource(string name)
    {
        using var stream = typeof(ReportPage).Assembly.GetManifestResourceStream($"Page/{name}")!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd().ReplaceLineEndings("\n");
    }
}
