using System.Text.Json;

namespace IfcCourser.Cli.Batch;

/// <summary>Several lots together.</summary>
/// <param name="Reused">Lots that share the files of an earlier one.</param>
internal sealed record LotSum(int Lots, int Failed, int Reused, LotCounts Counts)
{
    public static LotSum Of(IEnumerable<LotRow> rows) => rows.Aggregate(
        new LotSum(0, 0, 0, LotCounts.None),
        (sum, row) => new LotSum(
            sum.Lots + 1,
            sum.Failed + (row.Result.IsDone ? 0 : 1),
            sum.Reused + (row.IsReused ? 1 : 0),
            sum.Counts + row.Result.Counts));

    /// <summary>Its members, within an object that is open.</summary>
    public void Write(Utf8JsonWriter json)
    {
        json.WriteNumber("lots", Lots);
        json.WriteNumber("failed", Failed);
        json.WriteNumber("reused", Reused);
        json.WriteNumber("walls", Counts.Walls);
        json.WriteNumber("coursed", Counts.Coursed);
        json.WriteNumber("skipped", Counts.Walls - Counts.Coursed);
        json.WriteNumber("pieces", Counts.Pieces);
        json.WriteNumber("fullUnits", Counts.FullUnits);
        json.WriteNumber("partUnits", Counts.PartUnits);
        json.WriteNumber("cuts", Counts.Cuts);
        json.WriteNumber("cores", Counts.Cores);
        json.WriteNumber("lintels", Counts.Lintels);
        json.WriteNumber("errors", Counts.Errors);
        json.WriteNumber("warnings", Counts.Warnings);
        json.WriteNumber("notes", Counts.Notes);
    }
}
