namespace ReferenceOptimum.Problems;

/// <summary>A stretch of a course, under a lintel's bearing, in which no joint may stand (ends twice).</summary>
internal readonly record struct BearingProblem(int Course, long From2, long To2);
