using System.Globalization;
using System.Text;
using IfcCourser.Findings;
using IfcCourser.Output.Ordering;
using IfcCourser.Output.Page;
using static System.FormattableString;

namespace IfcCourser.Output.Batches;

/// <summary>batch.html: one self-contained file over a batch, what failed first, then what is ordered, then lot by lot.</summary>
public static class BatchPage
{
    private static readonly ImmutableArray<(string Id, string Heading)> _parts =
    [
        ("failures", BatchWords.FailuresHeading), ("order", BatchWords.OrderHeading), ("phases", BatchWords.PhasesHeading), ("plans", BatchWords.PlansHeading),
        ("findings", BatchWords.FindingsHeading), ("lots", BatchWords.LotsHeading), ("cautions", BatchWords.CautionsHeading),
    ];

    /// <summary>Writes UTF-8; the same batch gives the same bytes.</summary>
    public static void Write(BatchSummary batch, Stream stream)
    {
        using var writer = new StreamWriter(stream, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false), leaveOpen: true) { NewLine = "\n" };
        var html = new Html(writer);
        var (frame, sum) = (new PageFrame(html, "words.js", "filters.js", "tables.js"), batch.All);
        frame.Head($"{BatchWords.Kind}: {batch.Title}");
        frame.Masthead(
            _parts[0], BatchWords.Kind, batch.Title, batch.Date,
            [
                Invariant($"{PageText.Count(sum.Lots, "lot", "lots")}, {sum.Failed} failed"),
                Invariant($"{sum.Counts.Coursed} of {PageText.Count(sum.Counts.Walls, "wall", "walls")} laid out"),
                Invariant($"{PageText.Count(sum.Counts.Pieces, "block", "blocks")}, {sum.Counts.PartUnits} of them cut"),
                $"{PageText.Count(sum.Counts.Errors, "error", "errors")}, {PageText.Count(sum.Counts.Warnings, "warning", "warnings")}, {PageText.Count(sum.Counts.Notes, "note", "notes")}",
            ]);
        frame.Navigation(_parts);
        html.Line($"<main>");
        Action<Html, BatchSummary>[] sections = [Failures, Order, Phases, Plans, Findings, LotsSection.Write, Cautions];
        for (var i = 0; i < sections.Length; i++)
        {
            html.Line($"<section id=\"{_parts[i].Id}\" aria-labelledby=\"{_parts[i].Id}-h\"><h2 id=\"{_parts[i].Id}-h\">{_parts[i].Heading}</h2>");
            sections[i](html, batch);
            html.Line($"</section>");
        }

        html.Line($"</main>");
        frame.End();
    }

    private static void Failures(Html html, BatchSummary batch)
    {
        var failures = batch.Failures.ToList();
        html.Line($"<p class=\"lead\">{(failures.Count == 0 ? BatchWords.NoFailures : BatchWords.FailuresLead)}</p>");
        if (failures.Count > 0)
        {
            PageTable.Write(
                html, "Lots that failed", null, [("Lot", false), ("Model", false), ("Phase", false), ("Why", false)],
                failures.Select(lot => (Markup.None, (IReadOnlyList<Markup>)[Markup.Name(lot.Name), Text(lot.Plan), Text(lot.Phase), Text(lot.Reason)])));
        }
    }

    private static void Order(Html html, BatchSummary batch)
    {
        html.Line($"<p class=\"lead\">{BatchWords.OrderLead}</p>");
        if (BatchWords.MissingLots(batch) is { } missing)
        {
            html.Line($"<p>{missing}</p>");
        }

        foreach (var (phase, lines) in batch.Orders.Where(order => !order.Lines.IsEmpty))
        {
            PageTable.Write(
                html, $"Phase: {BatchWords.Phase(phase)}", null,
                [("Item", false), ("Description", false), ("Catalog", false), ("Width", true), ("Net", true), ("Waste", true), ("Gross", true), ("Unit", false), ("Packs", true)],
                lines.Select(line => (Markup.None, Line(line))));
        }

        if (batch.Lots.All(lot => !lot.IsDone))
        {
            html.Line($"<p>{BatchWords.NoOrder}</p>");
        }
    }

    private static IReadOnlyList<Markup> Line(PlainOrderLine line) =>
    [
        Text(OrderItemWords.Of(line.Item)), Text(line.What), new($"<span class=\"code\">{HtmlText.Escaped(line.Catalog)}</span>"), Width(line), Amount(line, line.Net), Amount(line, line.Net is null ? null : line.Waste), Amount(line, line.Gross),
        Text(line.Unit), Number(line.Packs),
    ];

    private static Markup Width(PlainOrderLine line) => line.Width is null ? Markup.None : new(Invariant($"{Number(line.Width).Text} {line.WidthUnit}"));

    private static void Phases(Html html, BatchSummary batch) => Sums(html, "By delivery phase", "Phase", batch.Phases.Select(phase => (BatchWords.Phase(phase.Phase), phase.Sum)), batch.All);

    private static void Plans(Html html, BatchSummary batch) => Sums(html, "By type of plan", "Plan", batch.Plans.Select(plan => (BatchWords.Plan(plan.Plan, plan.IsMirrored), plan.Sum)), batch.All);

    private static void Sums(Html html, string caption, string first, IEnumerable<(string Name, LotSum Sum)> sums, LotSum all) => PageTable.Write(
        html, caption, null,
        [(first, false), ("Lots", true), ("Failed", true), ("Walls", true), ("Laid out", true), ("Blocks", true), ("Whole", true), ("Cut", true), ("Saw cuts", true), ("Lintels", true), ("Bars", true), ("Errors", true), ("Warnings", true), ("Notes", true)],
        sums.Append((PageText.Job, all)).Select(sum => (Markup.None, Sum(sum.Item1, sum.Item2))));

    private static IReadOnlyList<Markup> Sum(string name, LotSum sum)
    {
        var counts = sum.Counts;
        return
        [
            Markup.Name(name),
            .. ((int[])[sum.Lots, sum.Failed, counts.Walls, counts.Coursed, counts.Pieces, counts.FullUnits, counts.PartUnits, counts.Cuts, counts.Lintels, counts.Cores, counts.Errors, counts.Warnings, counts.Notes])
                .Select(count => Number(count)),
        ];
    }

    private static void Findings(Html html, BatchSummary batch)
    {
        var found = batch.Findings.ToList();
        html.Line($"<p class=\"lead\">{(found.Count == 0 ? BatchWords.NoFindings : BatchWords.FindingsLead)}</p>");
        if (found.Count > 0)
        {
            var codes = FindingCodes.All.ToDictionary(code => code.Id, StringComparer.Ordinal);
            PageTable.Write(
                html, "Findings by code", null, [("Code", false), ("Severity", false), ("How many", true), ("Lots", true), ("What it means", false), ("What to do", false)],
                found.Select(one => (Markup.None, (IReadOnlyList<Markup>)
                [
                    new Markup($"<span class=\"code\">{HtmlText.Escaped(one.Found.Code)}</span>"), new Markup($"<span class=\"severity {PageText.Severity(one.Found.Severity)}\">{PageText.Severity(one.Found.Severity)}</span>"),
                    Number(one.Found.Count), Number(one.Lots), Text(codes.GetValueOrDefault(one.Found.Code)?.Meaning), Text(codes.GetValueOrDefault(one.Found.Code)?.Remedy),
                ])));
        }
    }

    private static void Cautions(Html html, BatchSummary batch)
    {
        html.Line($"<ul>");
        foreach (var caution in PageText.Cautions)
        {
            html.Line($"<li>{caution}</li>");
        }

        html.Line($"</ul>");
    }

    private static Markup Text(string? text) => new(HtmlText.Escaped(text));

    /// <summary>To a tenth of its unit; of a cubic yard to a hundredth.</summary>
    private static Markup Amount(PlainOrderLine line, double? value) => Number(value is { } amount ? Math.Round(amount, line.Unit == "yd3" ? 2 : 1) : null);

    private static Markup Number(double? value) => new(value is { } number ? (Math.Round(number, 3) + 0.0).ToString("0.###", CultureInfo.InvariantCulture) : string.Empty);
}
