using System.Text;
using IfcCourser.Layouts;
using static System.FormattableString;

namespace IfcCourser.Output.Page;

/// <summary>
/// One self-contained HTML file over a layout: no network, no framework, no font of its own. Tables and plans are HTML and SVG; elevations
/// are drawn by the script, a wall at a time.
/// </summary>
public static class ReportPage
{
    /// <summary>Writes UTF-8; the same layout and options give the same bytes.</summary>
    /// <param name="options">What the run was given beside model, catalog, rules and openings.</param>
    public static void Write(Layout layout, PageKind kind, ImmutableArray<GivenOption> options, Stream stream)
    {
        using var writer = new StreamWriter(stream, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false), leaveOpen: true) { NewLine = "\n" };
        var html = new Html(writer);
        var frame = new PageFrame(html, "words.js", "lengths.js", "elevation.js", "viewer.js", "filters.js", "page.js");
        var facts = new PageFacts(layout, kind);
        frame.Head($"{PageText.Title(kind)}: {layout.Model.ProjectName ?? layout.Model.File}");
        Masthead(frame, facts);
        frame.Navigation(Parts(kind));
        html.Line($"<main>");
        foreach (var section in Sections(kind))
        {
            section(html, facts);
        }

        RunSection.Write(html, facts, options);
        html.Line($"</main>");
        html.Raw($"<script type=\"application/json\" id=\"data\">{ElevationData.Of(facts)}</script>\n");
        frame.End();
    }

    private static Action<Html, PageFacts>[] Sections(PageKind kind) => kind == PageKind.Report
        ? [OpeningsSection.Write, PlanSection.Write, FindingsSection.Write, QuantitiesSection.Write, SkippedSection.Write]
        : [OpeningsSection.Write, FindingsSection.Write, PlanSection.Write, SkippedSection.Write, QuantitiesSection.Write];

    private static void Masthead(PageFrame frame, PageFacts facts)
    {
        var (model, totals) = (facts.Layout.Model, LayoutTotals.Of(facts.Layout));
        var counts = new[] { Findings.Severity.Error, Findings.Severity.Warning, Findings.Severity.Note }
            .Select(severity => (severity, Count: facts.Findings.Count(finding => finding.Finding.Severity == severity)))
            .Where(pair => pair.Count > 0)
            .Select(pair => PageText.Count(pair.Count, PageText.Severity(pair.severity), PageText.Severity(pair.severity) + "s"));
        frame.Masthead(
            ("openings", PageText.OpeningsHeading), PageText.Title(facts.Kind), model.ProjectName ?? model.File, $"{model.File}, {model.Date}",
            [
                Invariant($"{totals.Coursed} of {PageText.Count(totals.Walls, "wall", "walls")} laid out"),
                Invariant($"{PageText.Count(totals.Pieces, "block", "blocks")}, {totals.PartUnits} of them cut"),
                string.Join(", ", counts.DefaultIfEmpty("nothing found")),
            ]);
    }

    private static (string Id, string Heading)[] Parts(PageKind kind)
    {
        (string, string) walls = ("walls", PageText.WallsHeading), findings = ("findings", PageText.FindingsHeading),
            quantities = ("quantities", PageText.QuantitiesHeading), skipped = ("skipped", PageText.SkippedHeading);
        (string, string)[] middle = kind == PageKind.Report ? [walls, findings, quantities, skipped] : [findings, walls, skipped, quantities];
        return [("openings", PageText.OpeningsHeading), .. middle, ("cautions", PageText.CautionsHeading), ("run", PageText.RunHeading)];
    }
}
