using System.Collections.Immutable;
using System.Text.Json.Serialization;
using IfcCourser.Layouts;
using IfcCourser.Output.Batches;
using IfcCourser.Output.Ordering;
using IfcCourser.Units;

namespace IfcCourser.Cli.Batch;

/// <summary>What became of a lot: the file result.json in its folder, written last.</summary>
/// <param name="Key">Of all that decides the lot's files, see <see cref="LotKey"/>.</param>
/// <param name="Reason">Why it failed; null where it is done.</param>
/// <param name="Date">As stamped on its sheets; null where it failed.</param>
/// <param name="Units">Of its catalog.</param>
/// <param name="Order">What it takes.</param>
internal sealed record LotResult(
    string Key, string? Reason, string? Date, UnitSystem Units, LotCounts Counts, ImmutableArray<FindingCount> Findings, ImmutableArray<PlainOrderLine> Order)
{
    public const string File = "result.json";

    [JsonIgnore]
    public bool IsDone => Reason is null;

    /// <param name="layout">With its order.</param>
    public static LotResult Of(string key, Layout layout) =>
        new(key, null, layout.Model.Date, layout.Rules.Catalog.Units, LotCounts.Of(layout), FindingCount.Of(layout), PlainOrderLine.Of(layout));

    public static LotResult Failed(string key, string reason) => new(key, reason, null, UnitSystem.Metric, LotCounts.None, [], []);
}
