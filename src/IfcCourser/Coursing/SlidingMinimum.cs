namespace IfcCourser.Coursing;

/// <summary>The least value of a window that slides along an array, in constant time a step; the earliest of equals.</summary>
internal sealed class SlidingMinimum
{
    private int[] _places = [];
    private long[] _values = [];
    private int _head;
    private int _tail;

    public bool IsEmpty => _head == _tail;

    public int Place => _places[_head];

    public long Value => _values[_head];

    /// <summary>Empties the window for up to <paramref name="pushes"/> values.</summary>
    public void Reset(int pushes)
    {
        (_head, _tail) = (0, 0);
        if (_places.Length < pushes)
        {
            _places = new int[pushes];
            _values = new long[pushes];
        }
    }

    public void Push(int place, long value)
    {
        while (_tail > _head && _values[_tail - 1] > value)
        {
            _tail--;
        }

        _places[_tail] = place;
        _values[_tail++] = value;
    }

    public void DropBefore(int place)
    {
        while (_head < _tail && _places[_head] < place)
        {
            _head++;
        }
    }
}
