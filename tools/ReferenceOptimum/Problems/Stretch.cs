namespace ReferenceOptimum.Problems;

/// <summary>A piece.</summary>
internal readonly record struct Stretch(long From, long To)
{
    public long Size => To - From;
}
