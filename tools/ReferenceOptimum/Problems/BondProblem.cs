using System.Collections.Immutable;

namespace ReferenceOptimum.Problems;

/// <summary>
/// What has to be bonded, in whole nanometres along the wall's run: stretches to fill, joints that stand already, bars and
/// bearings. Which pieces lie where is not part of it.
/// </summary>
internal sealed record BondProblem(BondSizes Sizes, ImmutableArray<CourseProblem> Courses, ImmutableArray<BarProblem> Bars, ImmutableArray<BearingProblem> Bearings);
