using System.Collections.Immutable;

namespace IfcCourser.Cli.Batch;

/// <summary>Lots of one plan with the same options, laid out at once.</summary>
/// <param name="PlanKey">What they have in common.</param>
/// <param name="Lots">In the order of the manifest.</param>
/// <param name="Size">Bytes of the model for each way the plan stands: a measure of the work.</param>
internal sealed record LotWork(string PlanKey, ImmutableArray<PlannedLot> Lots, long Size);
