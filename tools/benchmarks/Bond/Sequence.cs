namespace BondBenchmark;

/// <summary>Numbers that look random and are the same everywhere: a linear congruential generator (D. Knuth, MMIX; from memory).</summary>
internal sealed class Sequence(long seed)
{
    private ulong _state = unchecked(((ulong)seed * 2862933555777941757UL) + 3037000493UL);

    /// <summary>From 0 to less than <paramref name="count"/>.</summary>
    public int Next(int count)
    {
        _state = unchecked((_state * 6364136223846793005UL) + 1442695040888963407UL);
        return (int)((_state >> 33) % (ulong)count);
    }

    public int Next(int from, int to) => from + Next(to - from);
}
