using System.Runtime.CompilerServices;

namespace IfcCourser.Step21;

/// <summary>
/// Where every instance of a file lies, in file order, without its values: 24 bytes an instance. Where an id is
/// defined twice, the last definition counts.
/// </summary>
internal sealed class StepIndex
{
    private long[] _ids;
    private long[] _offsets;
    private int[] _lengths;
    private int[] _types;
    private int _count;
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
        _ids = GC.AllocateUninitializedArray<long>(guess);
        _offsets = GC.AllocateUninitializedArray<long>(guess);
        _lengths = GC.AllocateUninitializedArray<int>(guess);
        _types = GC.AllocateUninitializedArray<int>(guess);
    }

    public StepTypeTable Types { get; } = new();

    public ReadOnlySpan<long> Ids => _ids.AsSpan(0, _count);

    public long LargestId { get; private set; }

    /// <summary>Slots whose id is defined again further on.</summary>
    public List<int> Superseded { get; } = [];

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Add(long id, long offset, int length, int type)
    {
        if (_count == _ids.Length)
        {
            var larger = checked(_count * 2);
            Array.Resize(ref _ids, larger);
            Array.Resize(ref _offsets, larger);
            Array.Resize(ref _lengths, larger);
            Array.Resize(ref _types, larger);
        }

        _ids[_count] = id;
        _offsets[_count] = offset;
        _lengths[_count] = length;
        _types[_count] = type;
        _count++;
    }

    public long OffsetOf(int slot) => _offsets[slot];

    public int LengthOf(int slot) => _lengths[slot];

    public int TypeOf(int slot) => _types[slot];

    /// <summary>Makes ids findable; called once, after the last instance was added.</summary>
    public void Seal()
    {
        var ids = Ids;
        _least = long.MaxValue;
        foreach (var id in ids)
        {
            _least = Math.Min(_least, id);
            LargestId = Math.Max(LargestId, id);
        }

        if (ids.Length > 0 && (LargestId - _least) / 4 <= ids.Length)
        {
            FillDense(ids);
        }
        else
        {
            FillSorted(ids);
        }

        Superseded.Sort();
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
        var types = _types.AsSpan(0, _count);
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
    private void FillDense(ReadOnlySpan<long> ids)
    {
        _dense = new int[checked((int)(LargestId - _least + 1))];
        for (var slot = 0; slot < ids.Length; slot++)
        {
            ref var entry = ref _dense[(int)(ids[slot] - _least)];
            if (entry != 0)
            {
                Superseded.Add(entry - 1);
            }

            entry = slot + 1;
        }
    }

    private void FillSorted(ReadOnlySpan<long> ids)
    {
        var sortedIds = ids.ToArray();
        var slots = new int[ids.Length];
        for (var i = 0; i < slots.Length; i++)
        {
            slots[i] = i;
        }

        slots.AsSpan().Sort((a, b) => sortedIds[a] != sortedIds[b] ? sortedIds[a].CompareTo(sortedIds[b]) : a.CompareTo(b));
        var kept = 0;
        for (var i = 0; i < slots.Length; i++)
        {
            if (i + 1 < slots.Length && sortedIds[slots[i]] == sortedIds[slots[i + 1]])
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
            _sortedIds[i] = ids[_sortedSlots[i]];
        }
    }
}
