namespace IfcCourser.Reinforcement;

/// <summary>How much the searches for a wall's bars may still do, all attempts together, counted in what they do: the same on every machine.</summary>
internal sealed class BarEffort
{
    /// <summary>In places of bars that are held against others: many times what the hardest wall of the fixtures takes.</summary>
    public const long Most = 1_000_000_000;

    private long _spent;

    /// <summary>Whether a search was cut short, so that better bars may exist.</summary>
    public bool IsCutShort { get; private set; }

    /// <summary>Whether all that can be best may be searched; notes where it may not.</summary>
    public bool MaySearch()
    {
        var isSpent = _spent >= Most;
        IsCutShort |= isSpent;
        return !isSpent;
    }

    /// <summary>Counts places of bars that were held against others.</summary>
    public void Spend(long comparisons) => _spent += comparisons;
}
