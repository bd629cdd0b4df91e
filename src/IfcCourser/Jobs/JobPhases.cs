using System.Collections.Immutable;

namespace IfcCourser.Jobs;

/// <summary>How the material of a job comes.</summary>
/// <param name="ByStorey">Each storey is a delivery; else those listed.</param>
/// <param name="Listed">In the order in which they come; a wall comes with the first that names it. None where all comes at once.</param>
public sealed record JobPhases(bool ByStorey, ImmutableArray<JobPhase> Listed)
{
    public static readonly JobPhases One = new(ByStorey: false, []);
}
