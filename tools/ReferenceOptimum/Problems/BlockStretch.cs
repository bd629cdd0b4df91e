using System.Collections.Immutable;

namespace ReferenceOptimum.Problems;

/// <summary>A run to fill, with what stands still around it.</summary>
/// <param name="Near2">Twice the centres of joints of neighbouring courses that stand whatever is laid.</param>
/// <param name="Bearings">Where a joint would stand under a lintel's bearing.</param>
/// <param name="Index">Its place among the stretches of its course in the wall.</param>
internal sealed record BlockStretch(int Course, int Index, Run Run, ImmutableArray<long> Near2, ImmutableArray<BearingProblem> Bearings)
{
    public long From => Run.From;

    public long To => Run.To;

    public long Size => To - From;

    /// <summary>Whether the same is asked of both.</summary>
    public bool IsLike(BlockStretch other) =>
        Run == other.Run && Near2.SequenceEqual(other.Near2)
        && Bearings.Select(b => (b.From2, b.To2)).SequenceEqual(other.Bearings.Select(b => (b.From2, b.To2)));
}
