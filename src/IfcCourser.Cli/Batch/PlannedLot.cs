using IfcCourser.Cli.Commands;

namespace IfcCourser.Cli.Batch;

/// <summary>A lot that can be laid out, as far as the manifest tells.</summary>
/// <param name="Number">Its place in the manifest, from 0.</param>
/// <param name="Key">See <see cref="LotKey"/>.</param>
/// <param name="IsRepeat">Whether an earlier lot of the manifest has the same key.</param>
internal sealed record PlannedLot(int Number, Lot Lot, string Key, RunSettings Settings, bool IsRepeat);
