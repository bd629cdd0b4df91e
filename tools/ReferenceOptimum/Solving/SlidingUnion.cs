namespace ReferenceOptimum.Solving;

/// <summary>The union of what is known at the last places of a row, for a window that slides to the right.</summary>
/// <param name="size">Places in the window.</param>
/// <param name="capacity">Most places between two restarts.</param>
internal sealed class SlidingUnion(int size, int capacity)
{
    private readonly PairCounts[] _all = new PairCounts[capacity];
    private readonly PairCounts[] _toBlockStart = new PairCounts[capacity];
    private readonly PairCounts[] _toBlockEnd = new PairCounts[capacity];
    private int _first;
    private int _count;

    /// <summary>Forgets all places and goes on at one.</summary>
    public void Restart(int place) => (_first, _count) = (place, 0);

    /// <summary>Adds what is known at the next place.</summary>
    public void Push(PairCounts counts)
    {
        var i = _count++;
        _all[i] = counts;
        _toBlockStart[i] = i % size == 0 ? counts : _toBlockStart[i - 1] | counts;
        if (i % size == size - 1)
        {
            var union = PairCounts.Nothing;
            for (var j = i; j > i - size; j--)
            {
                union |= _all[j];
                _toBlockEnd[j] = union;
            }
        }
    }

    /// <summary>The union over the window that ends with a place; places not yet known or forgotten are empty.</summary>
    public PairCounts Until(int place)
    {
        var last = place - _first;
        if (last < 0)
        {
            return PairCounts.Nothing;
        }

        var first = last - size + 1;
        return first <= 0 || first % size == 0 ? _toBlockStart[last] : _toBlockEnd[first] | _toBlockStart[last];
    }
}
