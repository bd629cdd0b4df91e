namespace ReferenceOptimum.Problems;

/// <summary>A bar: where it may stand (doubled, so that halves are whole), and the first and the last course it passes.</summary>
/// <param name="SpacedFrom">Number of the bar before it that it may not stand further from than the largest spacing; else null.</param>
internal readonly record struct BarProblem(long Least2, long Most2, int First, int Last, int? SpacedFrom);
