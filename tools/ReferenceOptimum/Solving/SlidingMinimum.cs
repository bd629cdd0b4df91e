namespace ReferenceOptimum.Solving;

/// <summary>The place of the least value among the last ones, for a window that slides to the right; the first of equal ones.</summary>
/// <param name="size">Places in the window.</param>
internal sealed class SlidingMinimum(int size)
{
    private readonly (int Place, double Value)[] _kept = new (int, double)[size + 1];
    private int _first;
    private int _count;

    /// <summary>Null where no value in the window is finite.</summary>
    public int? Place => _count > 0 ? _kept[_first].Place : null;

    public void Clear() => _count = 0;

    /// <summary>Moves the window to a place, the one after the last.</summary>
    public void Push(int place, double value)
    {
        if (_count > 0 && _kept[_first].Place <= place - size)
        {
            (_first, _count) = ((_first + 1) % _kept.Length, _count - 1);
        }

        if (value < double.PositiveInfinity)
        {
            while (_count > 0 && _kept[(_first + _count - 1) % _kept.Length].Value > value)
            {
                _count--;
            }

            _kept[(_first + _count++) % _kept.Length] = (place, value);
        }
    }
}
