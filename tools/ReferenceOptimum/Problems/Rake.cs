namespace ReferenceOptimum.Problems;

/// <summary>A slope of the wall's top at an end of a run.</summary>
/// <param name="Extent">How far from the end it reaches within the course: a piece there is cut whatever its length. Zero where nothing slopes.</param>
/// <param name="Least">Length of the piece at the end that leaves the shorter edge the least piece; zero where that is not asked for.</param>
internal readonly record struct Rake(long Extent, long Least);
