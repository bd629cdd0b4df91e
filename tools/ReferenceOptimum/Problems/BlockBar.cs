using System.Collections.Immutable;

namespace ReferenceOptimum.Problems;

/// <summary>A bar with the courses in which it may stand near a joint.</summary>
/// <param name="Number">Its place among the wall's bars.</param>
/// <param name="SpacedFrom">Number of the bar before it from which the largest spacing counts, else null.</param>
/// <param name="Courses">The courses that it passes, with twice the centres of the joints near it that stand whatever is laid.</param>
internal sealed record BlockBar(int Number, long Least2, long Most2, int? SpacedFrom, ImmutableArray<(int Course, ImmutableArray<long> Fixed2)> Courses);
