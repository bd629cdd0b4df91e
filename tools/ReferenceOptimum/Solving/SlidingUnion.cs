namespace ReferenceOptimum.Solving;

/// <summary>The union of the bits at the last places of a row, for a window that slides to the right.</summary>
/// <param name="size">Places in the window.</param>
/// <param name="capacity">Most places between two restarts.</param>
internal sealed class SlidingUnion(int size, int capacity)
{
    private readonly ushort[] _bits = new ushort[capacity];
    private readonly ushort[] _toBlockStart = new ushort[capacity];
    private readonly ushort[] _toBlockEnd = new ushort[capacity];
    private int _first;
    private int _count;

    /// <summary>Forgets all places and goes on at one.</summary>
    public void Restart(int place) => (_first, _count) = (place, 0);

    /// <summary>Adds the bits of the next place.</summary>
    public void Push(ushort bits)
    {
        var i = _count++;
        _bits[i] = bits;
        _toBlockStart[i] = i % size == 0 ? bits : (ushort)(_toBlockStart[i - 1] | bits);
        if (i % size == size - 1)
        {
            ushort union = 0;
            for (var j = i; j > i - size; j--)
            {
                union |= _bits[j];
                _toBlockEnd[j] = union;
            }
        }
    }

    /// <summary>The union over the window that ends with a place; places not yet known or forgotten are empty.</summary>
    public ushort Until(int place)
    {
        var last = place - _first;
        if (last < 0)
        {
            return 0;
        }

        var first = last - size + 1;
        return first <= 0 ? Prefix(last) : first % size == 0 ? _toBlockStart[last] : (ushort)(_toBlockEnd[first] | _toBlockStart[last]);
    }

    /// <summary>All from the start: less than a window.</summary>
    private ushort Prefix(int last) => _toBlockStart[last];
}
