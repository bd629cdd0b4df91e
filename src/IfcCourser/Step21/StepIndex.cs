using System.Runtime.CompilerServices;

namespace IfcCourser.Step21;

/// <summary>
/// Where every instance of a file starts, in file order, without its values: 12 bytes an instance in files below 4 GB. Where an id is
/// defined twice, the last definition counts.
/// </summary>
internal sealed class StepIndex
{
    private readonly StepColumn _ids;
    private readonly StepColumn _offsets;
    private int[] _types;
    private readonly Dictionary<int, long[]> _byType = [];
    private readonly Lock _lock = new();
    private long _least;
    private int[]? _dense;
    private long[] _sortedIds = [];
    private int[] _sortedSlots = [];

    public StepIndex(long byteCount)
    {
        // Real models have 45 to 70 bytes an instance.
        var guess = (int)Math.Min((byteCount / 56) + 16, int.MaxValue / 8);
        _ids = new StepColumn(guess);
        _offsets = new StepColumn(guess);
        _types = GC.AllocateUninitializedArray<int>(guess);
    }

    public StepTypeTable Types { get; } = new();

    /// <summary>Instances, those defined twice counted twice.</summary>
    public int Count => _ids.Count;

    public long LargestId { get; private set; }

    /// <summary>Slots whose id is defined again further on.</summary>
    public List<int> Superseded { get; } = [];

    public void Add(long id, long offset, int type)
    {
        if (Count == _types.Length)
        {
            Array.Resize(ref _types, checked(Count * 2));
        }

        _types[Count] = type;
        _ids.Add(id);
        _offsets.Add(offset);
    }

    public long IdOf(int slot) => _ids[slot];

    public long OffsetOf(int slot) => _offsets[slot];

    public int TypeOf(int slot) => _types[slot];

    /// <summary>Makes ids findable; called once, after the last instance was added.</summary>
    public void Seal()
    {
        _least = long.MaxValue;
        for (var slot = 0; slot < Count; slot++)
        {
            _least = Math.Min(_least, _ids[slot]);
            LargestId = Math.Max(LargestId, _ids[slot]);
        }

        if (Count > 0 && (LargestId - _least) / 4 <= Count)
        {
            FillDense();
        }
        else
        {
            FillSorted();
        }
    }

    /// <summary>The slot of an id, or -1.</summary>
    public int Find(long id)
    {
        if (_dense is not null)
        {
            return id >= _least && id <= LargestId ? _dense[(int)(id - _least)] - 1 : -1;
        }

        var place = Array.BinarySearch(_sortedIds, id);
        return place < 0 ? -1 : _sortedSlots[place];
    }

    /// <summary>Ids of one type in file order.</summary>
    public long[] OfType(int type)
    {
        lock (_lock)
        {
            if (!_byType.TryGetValue(type, out var ids))
            {
                ids = CollectType(type);
                _byType.Add(type, ids);
            }

            return ids;
        }
    }

    private long[] CollectType(int type)
    {
        var found = new List<long>();
        var types = _types.AsSpan(0, Count);
        for (var from = 0; ;)
        {
            var next = types[from..].IndexOf(type);
            if (next < 0)
            {
                return [.. found];
            }

            var slot = from + next;
            if (Superseded.Count == 0 || Find(_ids[slot]) == slot)
            {
                found.Add(_ids[slot]);
            }

            from = slot + 1;
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void FillDense()
    {
        _dense = new int[checked((int)(LargestId - _least + 1))];
        for (var slot = 0; slot < Count; slot++)
        {
            ref var entry = ref _dense[(int)(_ids[slot] - _least)];
            if (entry != 0)
            {
                Superseded.Add(entry - 1);
            }

            entry = slot + 1;
        }
    }

    private void FillSorted()
    {
        var slots = new int[Count];
        for (var i = 0; i < slots.Length; i++)
        {
            slots[i] = i;
        }

        slots.AsSpan().Sort((a, b) => _ids[a] != _ids[b] ? _ids[a].CompareTo(_ids[b]) : a.CompareTo(b));
        var kept = 0;
        for (var i = 0; i < slots.Length; i++)
        {
            if (i + 1 < slots.Length && _ids[slots[i]] == _ids[slots[i + 1]])
            {
                Superseded.Add(slots[i]);
                continue;
            }

            slots[kept++] = slots[i];
        }

        _sortedSlots = slots[..kept];
        _sortedIds = new long[kept];
        for (var i = 0; i < kept; i++)
        {
            _sortedIds[i] = _ids[_sortedSlots[i]];
        }
    }
}
