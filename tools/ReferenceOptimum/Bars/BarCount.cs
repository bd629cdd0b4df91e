namespace ReferenceOptimum.Bars;

/// <summary>How good bars are, the first difference counts: demands unmet, gaps over the limit by height, courses passed on a joint, bars.</summary>
internal readonly record struct BarCount(int Unmet, int Gaps, int OnJoint, int Bars) : IComparable<BarCount>
{
    public static BarCount Of(BarTask task, IReadOnlyCollection<BarOption> bars) => new(
        Enumerable.Range(0, task.Needs.Length).Count(need => !bars.Any(bar => bar.Serves.Contains(need))),
        task.Rows.Sum(row => GapsIn(row, bars, task.Spacing2)),
        bars.Sum(bar => bar.OnJoint),
        bars.Count);

    public int CompareTo(BarCount other) => (Unmet, Gaps, OnJoint, Bars).CompareTo((other.Unmet, other.Gaps, other.OnJoint, other.Bars));

    public override string ToString() => $"{Unmet} unmet, {Gaps} gaps, {OnJoint} on joints, {Bars} bars";

    /// <summary>Neighbours of a row that stand farther apart than the limit.</summary>
    public static int GapsIn(BarRow row, IEnumerable<BarOption> bars, long spacing2)
    {
        var places = bars.Where(row.Holds).Select(bar => bar.At2).Order().ToList();
        return places.Zip(places.Skip(1)).Count(pair => pair.Second - pair.First > spacing2);
    }
}
