using System.Runtime.Intrinsics;

namespace ReferenceOptimum.Solving;

/// <summary>
/// The fewest breaches with which one or two neighbouring courses can have so many cuts each: a number for each pair of 0 to 7 cuts, 7 standing for
/// more as well. Cuts of the lower course count along a row of eight numbers, those of the upper one from row to row.
/// </summary>
internal readonly record struct PairCounts(Vector512<byte> Breaches)
{
    /// <summary>So many cuts and more are counted alike.</summary>
    public const int Most = 7;

    /// <summary>No bond is known.</summary>
    public const byte None = byte.MaxValue;

    private static readonly Vector512<byte> _notLast = Vector512.Create(~((ulong)None << (8 * Most))).AsByte();
    private static readonly Vector512<byte> _firstRow = Vector512.Create(ulong.MaxValue, 0, 0, 0, 0, 0, 0, 0).AsByte();
    private static readonly Vector512<byte> _notLastRow = Vector512.Create(ulong.MaxValue, ulong.MaxValue, ulong.MaxValue, ulong.MaxValue, ulong.MaxValue, ulong.MaxValue, ulong.MaxValue, 0).AsByte();
    private static readonly Vector512<ulong> _rowBefore = Vector512.Create(8UL, 0, 1, 2, 3, 4, 5, 6);

    /// <summary>No bond at all.</summary>
    public static PairCounts Nothing => new(Vector512<byte>.AllBitsSet);

    /// <summary>No cut and no breach.</summary>
    public static PairCounts Plain => new(Vector512<byte>.AllBitsSet.WithElement(0, (byte)0));

    /// <summary>The same with a breach at least.</summary>
    public PairCounts Breaking => new(Vector512.Max(Breaches, Vector512<byte>.One));

    public bool IsNothing => Breaches == Vector512<byte>.AllBitsSet;

    public static PairCounts operator |(PairCounts a, PairCounts b) => new(Vector512.Min(a.Breaches, b.Breaches));

    /// <summary>One cut more in the lower (0) or the upper (1) course.</summary>
    public PairCounts Cut(int course) => course == 0
        ? new(Vector512.Min((Breaches.AsUInt64() << 8).AsByte() | Vector512.Create((ulong)None).AsByte(), Breaches | _notLast))
        : new(Vector512.Min(Vector512.Shuffle(Breaches.AsUInt64(), _rowBefore).AsByte() | _firstRow, Breaches | _notLastRow));

    /// <summary>So many breaches more; what has more than are looked at is no bond.</summary>
    public PairCounts Broken(int breaches, byte most)
    {
        var more = Vector512.Min(Breaches, Vector512.Create((byte)(None - breaches))) + Vector512.Create((byte)breaches);
        return new(more | Vector512.GreaterThan(more, Vector512.Create(most)));
    }

    /// <summary>The fewest breaches with no more cuts than these.</summary>
    public int Fewest(int lower, int upper)
    {
        var fewest = (int)None;
        for (var a = 0; a <= Math.Min(lower, Most); a++)
        {
            for (var b = 0; b <= Math.Min(upper, Most); b++)
            {
                fewest = Math.Min(fewest, Breaches[a + (8 * b)]);
            }
        }

        return fewest;
    }

    /// <summary>Numbers of breaches over which some counts are possible that are not with as many or fewer.</summary>
    public IEnumerable<int> Steps
    {
        get
        {
            var all = Breaches;
            return Enumerable.Range(0, 64).Select(i => all[i] - 1).Append(None - 1).Where(step => step >= 0).Distinct().Order();
        }
    }

    /// <summary>The largest counts of either course that no bond with so many breaches stays within; null: any count.</summary>
    public IEnumerable<(int? Lower, int? Upper)> Forbidden(int breaches)
    {
        var before = -1;
        for (var lower = Most; lower >= 0; lower--)
        {
            var upper = Most;
            while (upper >= 0 && Fewest(lower, upper) <= breaches)
            {
                upper--;
            }

            if (upper > before)
            {
                yield return (lower == Most ? null : lower, upper == Most ? null : upper);
                before = upper;
            }
        }
    }

    /// <summary>The least weighted sum of both counts with so many breaches.</summary>
    public int Least(int ofLower, int ofUpper, int breaches)
    {
        var all = Breaches;
        return Enumerable.Range(0, 64).Where(i => all[i] <= breaches).Select(i => (i % 8 * ofLower) + (i / 8 * ofUpper)).DefaultIfEmpty(0).Min();
    }

    /// <summary>As text.</summary>
    public string Key() => Convert.ToHexString(System.Runtime.InteropServices.MemoryMarshal.AsBytes([Breaches]));
}
