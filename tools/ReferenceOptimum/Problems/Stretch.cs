namespace ReferenceOptimum.Problems;

/// <summary>A run to be filled with pieces and joints.</summary>
internal readonly record struct Stretch(long From, long To)
{
    public long Size => To - From;
}
