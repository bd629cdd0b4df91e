namespace ReferenceOptimum.Solving;

/// <summary>What cuts, breaches and joints of a block's courses cost in the pairs that they are in.</summary>
/// <param name="Joints">By course and doubled centre in cells: what a joint costs in the pair below and gains in the pair above.</param>
/// <param name="Shares">By course, of what a cut costs that which the pair below bears.</param>
/// <param name="Breach">What a breach costs.</param>
internal sealed record BondPrices(double[][] Joints, double[] Shares, double Breach);
