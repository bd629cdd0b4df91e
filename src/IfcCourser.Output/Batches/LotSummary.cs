using IfcCourser.Layouts;
using IfcCourser.Output.Ordering;

namespace IfcCourser.Output.Batches;

/// <summary>A lot of a batch and what became of it.</summary>
/// <param name="Name">Unique in the batch; its files lie in lots/NAME.</param>
/// <param name="Plan">The model as the manifest names it.</param>
/// <param name="Phase">Delivery phase; empty where there is none.</param>
/// <param name="Reason">Why it failed; null where it is done.</param>
/// <param name="IsReused">Whether it has the files of an earlier lot of the manifest.</param>
/// <param name="HasPage">Whether report.html is among its files.</param>
/// <param name="Time">What it took in this run; null where it was done before.</param>
/// <param name="Order">What it takes.</param>
public sealed record LotSummary(
    string Name,
    string Plan,
    LotSiting Siting,
    string Phase,
    string? Reason,
    bool IsReused,
    bool HasPage,
    TimeSpan? Time,
    LotCounts Counts,
    ImmutableArray<FindingCount> Findings,
    ImmutableArray<PlainOrderLine> Order)
{
    public bool IsDone => Reason is null;

    /// <summary>
    /// What comes of it in which phase. Deliveries that its job gives are phases like those of the manifest, so that lots are ordered together by
    /// their name; where the manifest names a phase of the lot as well, they are parts of that.
    /// </summary>
    public IEnumerable<(string Phase, ImmutableArray<PlainOrderLine> Lines)> Deliveries => Order.IsEmpty
        ? [(Phase, [])]
        : Order.GroupBy(line => line.Delivery, StringComparer.Ordinal)
            .Select(delivery => (BatchWords.Delivery(Phase, delivery.Key), delivery.ToImmutableArray()));
}
