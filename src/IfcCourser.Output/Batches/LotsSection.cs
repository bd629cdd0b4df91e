using IfcCourser.Output.Page;
using static System.FormattableString;

namespace IfcCourser.Output.Batches;

/// <summary>Lot by lot, each linked to its files.</summary>
internal static class LotsSection
{
    private const string Table = "lots-table";

    public static void Write(Html html, BatchSummary batch)
    {
        Filters.Write(html, Table, "lots",
        [
            Filters.Choice("state", "State", [("done", "done"), ("failed", "failed")]),
            Filters.Choice("phase", "Phase", batch.Phases.Select(phase => (phase.Phase, BatchWords.Phase(phase.Phase))).Where(phase => phase.Phase.Length > 0)),
            Filters.Choice("plan", "Plan", batch.Lots.Select(lot => lot.Plan).Distinct(StringComparer.Ordinal).Select(plan => (plan, plan))),
        ]);
        PageTable.Write(
            html, "Lots", Table,
            [("Lot", false), ("Model", false), ("Stands", false), ("Phase", false), ("State", false), ("Walls", true), ("Laid out", true), ("Blocks", true), ("Cut", true), ("Errors", true), ("Warnings", true), ("Notes", true)],
            batch.Lots.Select(Row));
    }

    private static (Markup Attributes, IReadOnlyList<Markup> Cells) Row(LotSummary lot)
    {
        var counts = lot.Counts;
        int[] figures = [counts.Walls, counts.Coursed, counts.Pieces, counts.PartUnits, counts.Errors, counts.Warnings, counts.Notes];
        var state = lot.IsDone ? "done" : "failed";
        return (
            new Markup($" data-state=\"{state}\" data-phase=\"{HtmlText.Escaped(lot.Phase)}\" data-plan=\"{HtmlText.Escaped(lot.Plan)}\""),
            [
                Link(lot), new Markup(HtmlText.Escaped(lot.Plan)), new Markup(HtmlText.Escaped(BatchWords.Stands(lot.Siting))), new Markup(HtmlText.Escaped(lot.Phase)),
                new Markup(lot.IsDone ? state : $"<span class=\"error\">{state}</span>"), .. figures.Select(figure => new Markup(Invariant($"{figure}"))),
            ]);
    }

    /// <summary>To the lot's own page where it has one, else to its folder.</summary>
    private static Markup Link(LotSummary lot) => new(
        $"<a href=\"lots/{HtmlText.Escaped(Uri.EscapeDataString(lot.Name))}/{(lot.HasPage ? "report.html" : string.Empty)}\">{Markup.Name(lot.Name).Text}</a>");
}
