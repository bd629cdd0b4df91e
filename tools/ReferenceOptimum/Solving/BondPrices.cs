namespace ReferenceOptimum.Solving;

/// <summary>What cuts, breaches and joints of a block's courses cost in the pairs that they are in.</summary>
/// <param name="Joints">By course and doubled centre in cells: what a joint costs in the pair below and gains in the pair above.</param>
/// <param name="Shares">By course, of what a cut costs that which the pair below bears.</param>
/// <param name="Breach">What a breach costs.</param>
internal sealed record BondPrices(double[][] Joints, double[] Shares, double Breach)
{
    /// <summary>Whether a course is in two pairs; only there do prices tell how it is laid in the one from how in the other.</summary>
    public bool IsShared(int course) => course > 0 && course < Joints.Length - 1;

    /// <summary>Of a breach of the course's own, what each pair that it is in bears.</summary>
    public double Part(int course) => IsShared(course) ? 0.5 : 1;
}
