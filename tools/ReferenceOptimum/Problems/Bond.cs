using System.Collections.Immutable;

namespace ReferenceOptimum.Problems;

/// <summary>Pieces in every stretch of every course, and twice the place of every bar, in the order of the problem's.</summary>
internal sealed record Bond(ImmutableArray<ImmutableArray<ImmutableArray<Stretch>>> Courses, ImmutableArray<long> Bars2);
