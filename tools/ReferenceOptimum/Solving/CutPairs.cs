namespace ReferenceOptimum.Solving;

/// <summary>
/// Which counts of cuts two neighbouring courses can have together: bit (lower + 4 upper) for 0 to 3 cuts each, 3 standing for
/// more as well.
/// </summary>
internal readonly record struct CutPairs(ushort Bits)
{
    private const int Most = 3;
    private const ushort LowerAtMost = 0x8888;
    private const ushort UpperAtMost = 0xF000;

    /// <summary>Whether some bond has no more cuts than these in either course.</summary>
    public bool Allow(int lower, int upper)
    {
        for (var a = 0; a <= Math.Min(lower, Most); a++)
        {
            for (var b = 0; b <= Math.Min(upper, Most); b++)
            {
                if ((Bits >> (a + (4 * b)) & 1) != 0)
                {
                    return true;
                }
            }
        }

        return false;
    }

    /// <summary>The largest counts of either course that no bond stays within.</summary>
    public IEnumerable<(int Lower, int Upper)> Forbidden()
    {
        for (var lower = 0; lower < Most; lower++)
        {
            var upper = Most - 1;
            while (upper >= 0 && Allow(lower, upper))
            {
                upper--;
            }

            if (upper >= 0)
            {
                yield return (lower, upper);
            }
        }
    }

    /// <summary>The least weighted sum of both counts.</summary>
    public int Least(int ofLower, int ofUpper)
    {
        var bits = Bits;
        return Enumerable.Range(0, 16).Where(bit => (bits >> bit & 1) != 0).Select(bit => (bit % 4 * ofLower) + (bit / 4 * ofUpper)).DefaultIfEmpty(0).Min();
    }

    /// <summary>One cut more in the lower (0) or the upper (1) course.</summary>
    public static ushort More(ushort bits, int course) => course == 0
        ? (ushort)(((bits & ~LowerAtMost) << 1) | (bits & LowerAtMost))
        : (ushort)(((bits << 4) & ushort.MaxValue) | (bits & UpperAtMost));
}
