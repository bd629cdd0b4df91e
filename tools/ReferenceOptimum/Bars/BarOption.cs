using System.Collections.Immutable;

namespace ReferenceOptimum.Bars;

/// <summary>A bar that may stand in a wall.</summary>
/// <param name="At2">Twice its place along the run, nanometres.</param>
/// <param name="From">Foot of the stretch of height that it takes.</param>
/// <param name="To">Top of it.</param>
/// <param name="Serves">Indices of the demands that it meets.</param>
/// <param name="OnJoint">Courses that it passes nearer to a joint than the clearance.</param>
internal sealed record BarOption(long At2, long From, long To, ImmutableArray<int> Serves, int OnJoint);
