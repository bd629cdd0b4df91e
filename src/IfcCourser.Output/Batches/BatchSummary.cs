using IfcCourser.Output.Ordering;
using IfcCourser.Units;

namespace IfcCourser.Output.Batches;

/// <summary>A batch that has run: its lots, and what they come to together.</summary>
/// <param name="Title">Of what is written over it.</param>
/// <param name="Date">The latest of its lots, ISO 8601; empty where none is done.</param>
/// <param name="Units">Decide on the paper.</param>
/// <param name="Lots">In the order of the manifest.</param>
public sealed record BatchSummary(string Title, string Date, UnitSystem Units, ImmutableArray<LotSummary> Lots)
{
    public LotSum All => LotSum.Of(Lots);

    /// <summary>Each delivery phase, in the order of the manifest.</summary>
    public IEnumerable<(string Phase, LotSum Sum)> Phases =>
        Lots.GroupBy(lot => lot.Phase, StringComparer.Ordinal).Select(phase => (phase.Key, LotSum.Of(phase)));

    /// <summary>Each type of plan, as drawn and mirrored apart, in the order of the manifest.</summary>
    public IEnumerable<(string Plan, bool IsMirrored, LotSum Sum)> Plans =>
        Lots.GroupBy(lot => (lot.Plan, lot.Siting.IsMirrored)).Select(plan => (plan.Key.Plan, plan.Key.IsMirrored, LotSum.Of(plan)));

    /// <summary>What each delivery phase takes: its lots' orders added, packs rounded once; deliveries within lots apart.</summary>
    public IEnumerable<(string Phase, ImmutableArray<PlainOrderLine> Lines)> Orders =>
        Lots.SelectMany(lot => lot.Deliveries).GroupBy(delivery => delivery.Phase, StringComparer.Ordinal)
            .Select(phase => (phase.Key, CombinedOrder.Of(phase.Select(delivery => delivery.Lines))));

    public IEnumerable<LotSummary> Failures => Lots.Where(lot => !lot.IsDone);

    /// <summary>How often each finding was made and on how many lots, the gravest first.</summary>
    public IEnumerable<(FindingCount Found, int Lots)> Findings => Lots.SelectMany(lot => lot.Findings)
        .GroupBy(found => (found.Code, found.Severity))
        .Select(same => (Found: new FindingCount(same.Key.Code, same.Key.Severity, same.Sum(found => found.Count)), Lots: same.Count()))
        .OrderByDescending(found => found.Found.Severity).ThenBy(found => found.Found.Code, StringComparer.Ordinal);
}
