using IfcCourser.Layouts;
using static System.FormattableString;

namespace IfcCourser.Output.Batches;

/// <summary>What page and workbook of a batch say.</summary>
internal static class BatchWords
{
    public const string Kind = "Subdivision";

    public const string FailuresHeading = "Failed";
    public const string OrderHeading = "Order";
    public const string PhasesHeading = "Phases";
    public const string PlansHeading = "Plan types";
    public const string FindingsHeading = "Findings";
    public const string LotsHeading = "Lots";
    public const string CautionsHeading = "Cautions";

    public const string NoFailures = "Every lot is laid out.";

    public const string NoFindings = "Nothing was found that anyone should know or decide.";

    public const string NoOrder = "No lot is laid out.";

    public const string FailuresLead = "These lots are in no total and in no order. Mend what is named and run the batch again: it does only what is missing.";

    public const string OrderLead =
        "The orders of a phase's lots added up. Pallets and bags are rounded once for the phase; pieces are sawn lot by lot, and no lot uses offcuts of another.";

    public const string FindingsLead = "How often each finding was made, and on how many lots; each lot's own page says where.";

    public const string Prices = "Prices are the buyer's: a price counts for a pack where there are packs, else for a unit of the amount. Price units or their pallets, not both.";

    public const string Missing = "Lots that failed are in no line:";

    public static string Phase(string phase) => phase.Length == 0 ? "without a phase" : phase;

    public static string Delivery(string phase, string delivery) => string.Join(", ", ((string[])[phase, delivery]).Where(name => name.Length > 0));

    public static string Stands(LotSiting siting) => siting.Label ?? "as drawn";

    public static string Plan(string plan, bool isMirrored) => isMirrored ? $"{plan}, mirrored" : plan;

    /// <summary>The lots that an order lacks; null where it lacks none.</summary>
    public static string? MissingLots(BatchSummary batch)
    {
        const int Most = 20;
        var names = batch.Failures.Select(lot => lot.Name).ToList();
        return names.Count == 0 ? null
            : $"{Missing} {string.Join(", ", names.Take(Most))}{(names.Count > Most ? Invariant($" and {names.Count - Most} more") : string.Empty)}.";
    }
}
