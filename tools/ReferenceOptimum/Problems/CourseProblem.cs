using System.Collections.Immutable;

namespace ReferenceOptimum.Problems;

/// <summary>A course before its pieces are known.</summary>
/// <param name="Runs">Runs to be filled from end to end.</param>
/// <param name="Edges">Twice the centres of joints against walls' faces and lintels' ends.</param>
/// <param name="Fixed">Twice the centres of joints between pieces that the jambs of openings in mid-course ask for.</param>
internal sealed record CourseProblem(ImmutableArray<Run> Runs, ImmutableArray<long> Edges, ImmutableArray<long> Fixed);
