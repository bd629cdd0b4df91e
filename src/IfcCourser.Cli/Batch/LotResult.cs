using System.Collections.Immutable;
using System.Text.Json.Serialization;
using IfcCourser.Output.Ordering;

namespace IfcCourser.Cli.Batch;

/// <summary>What became of a lot: the file result.json in its folder, written last.</summary>
/// <param name="Key">Of all that decides the lot's files, see <see cref="LotKey"/>.</param>
/// <param name="Reason">Why it failed; null where it is done.</param>
/// <param name="Order">What it takes.</param>
internal sealed record LotResult(string Key, string? Reason, LotCounts Counts, ImmutableArray<PlainOrderLine> Order)
{
    public const string File = "result.json";

    [JsonIgnore]
    public bool IsDone => Reason is null;
}
