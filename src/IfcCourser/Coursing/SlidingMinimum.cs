namespace IfcCourser.Coursing;

/// <summary>The least value of a window that slides along an array, in constant time a step; the earliest of equals.</summary>
internal sealed class SlidingMinimum(int capacity)
{
    private readonly int[] _places = new int[capacity];
    private readonly long[] _values = new long[capacity];
    private int _head;
    private int _tail;

    public bool IsEmpty => _head == _tail;

    public int Place => _places[_head];

    public long Value => _values[_head];

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
