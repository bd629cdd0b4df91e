using ReferenceOptimum.Problems;

namespace ReferenceOptimum.Solving;

/// <summary>What the reference found for a block.</summary>
/// <param name="Found">The best bond's count, joints that stand anyhow left out.</param>
/// <param name="Least">No bond has fewer: equal to <paramref name="Found"/> where the optimum is proven.</param>
/// <param name="Bond">The best bond.</param>
internal sealed record BlockOptimum(BondCount Found, BondCount Least, BlockBond Bond);
