namespace ReferenceOptimum.Solving;

/// <summary>What a bond may have at most; null where there is no limit.</summary>
internal readonly record struct BondLimits(int? Breaches, int? Bearings, int? Cuts)
{
    public static readonly BondLimits None = new(null, null, null);

    public bool MayBreak => Breaches != 0;

    public bool MayBear => Bearings != 0;
}
