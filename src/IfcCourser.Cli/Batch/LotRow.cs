namespace IfcCourser.Cli.Batch;

/// <summary>A lot with what became of it: a row of batch.csv.</summary>
/// <param name="Time">What it took in this run; null where it was done before.</param>
internal sealed record LotRow(PlannedLot Lot, LotResult Result, TimeSpan? Time)
{
    /// <summary>Whether it has the files of an earlier lot of the manifest, whichever of them was written first.</summary>
    public bool IsReused => Lot.IsRepeat && Result.IsDone;
}
