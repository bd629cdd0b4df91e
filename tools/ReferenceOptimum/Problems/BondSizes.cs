using System.Collections.Immutable;

namespace ReferenceOptimum.Problems;

/// <summary>Sizes of the catalog and limits of the rules.</summary>
internal sealed record BondSizes(
    long Unit, ImmutableArray<long> Parts, long LeastPiece, long JointMin, long JointMax, long Overlap, long Clearance, long BarSpacing, long Grid)
{
    /// <summary>Laps are measured to 0.005 mm: lengths given in inches and in millimetres meet in one wall.</summary>
    public const long Dust = 5_000;

    /// <summary>Two joints of neighbouring courses that stand nearer than this lap short.</summary>
    public long Lap => Overlap - Dust;

    public bool IsUncut(long length) => length == Unit || Parts.Contains(length);
}
