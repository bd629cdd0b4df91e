namespace IfcCourser.Output.Batches;

/// <summary>Several lots together.</summary>
/// <param name="Reused">Lots that share the files of an earlier one.</param>
public sealed record LotSum(int Lots, int Failed, int Reused, LotCounts Counts)
{
    public static LotSum Of(IEnumerable<LotSummary> lots) => lots.Aggregate(
        new LotSum(0, 0, 0, LotCounts.None),
        (sum, lot) => new LotSum(
            sum.Lots + 1,
            sum.Failed + (lot.IsDone ? 0 : 1),
            sum.Reused + (lot.IsReused ? 1 : 0),
            sum.Counts + lot.Counts));
}
