namespace IfcCourser.Step21;

/// <summary>A growing list of whole numbers from 0 on: four bytes each for as long as all of them fit, else eight.</summary>
internal sealed class StepColumn
{
    private uint[] _narrow;
    private long[]? _wide;

    /// <param name="capacity">How many are expected.</param>
    public StepColumn(int capacity) => _narrow = GC.AllocateUninitializedArray<uint>(Math.Max(capacity, 1));

    public int Count { get; private set; }

    public long this[int place] => _wide is null ? _narrow[place] : _wide[place];

    public void Add(long value)
    {
        if (_wide is null && value <= uint.MaxValue)
        {
            if (Count == _narrow.Length)
            {
                Array.Resize(ref _narrow, checked(2 * Count));
            }

            _narrow[Count++] = unchecked((uint)value);
            return;
        }

        AddWide(value);
    }

    private void AddWide(long value)
    {
        if (_wide is null)
        {
            _wide = GC.AllocateUninitializedArray<long>(Math.Max(_narrow.Length, Count + 1));
            for (var i = 0; i < Count; i++)
            {
                _wide[i] = _narrow[i];
            }

            _narrow = [];
        }
        else if (Count == _wide.Length)
        {
            Array.Resize(ref _wide, checked(2 * Count));
        }

        _wide[Count++] = value;
    }
}
