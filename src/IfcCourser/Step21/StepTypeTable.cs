using System.Buffers.Binary;
using System.Runtime.CompilerServices;
using System.Text;

namespace IfcCourser.Step21;

/// <summary>Entity names of a file, each with a small number; names differing in case only are one.</summary>
internal sealed class StepTypeTable
{
    /// <summary>The number of instances that have several parts and so no single name.</summary>
    public const int Complex = 0;

    private readonly List<byte[]> _spellings = [];
    private readonly List<int> _types = [];
    private readonly List<string> _names = [string.Empty];
    private readonly Dictionary<string, int> _byName = new(StringComparer.Ordinal);
    private int[] _slots = new int[1024];

    public int Count => _names.Count;

    public string NameOf(int type) => _names[type];

    /// <summary>The number of an upper-case name, or -1 where the file does not hold it.</summary>
    public int Find(string name) => _byName.GetValueOrDefault(name, -1);

    /// <summary>The number of a name; -1 where the bytes are no entity name.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public int Intern(ReadOnlySpan<byte> spelling)
    {
        var mask = _slots.Length - 1;
        for (var slot = Hash(spelling) & mask; ; slot = (slot + 1) & mask)
        {
            var entry = _slots[slot] - 1;
            if (entry < 0)
            {
                return Add(spelling, slot);
            }

            if (spelling.SequenceEqual(_spellings[entry]))
            {
                return _types[entry];
            }
        }
    }

    private static int Hash(ReadOnlySpan<byte> name)
    {
        unchecked
        {
            ulong hash = (uint)name.Length;
            if (name.Length >= 8)
            {
                hash ^= BinaryPrimitives.ReadUInt64LittleEndian(name);
                hash *= 0x9E3779B97F4A7C15;
                hash ^= BinaryPrimitives.ReadUInt64LittleEndian(name[^8..]);
            }
            else
            {
                foreach (var b in name)
                {
                    hash = (hash << 8) ^ b;
                }
            }

            return (int)((hash * 0x9E3779B97F4A7C15) >> 33);
        }
    }

    private static bool IsName(ReadOnlySpan<byte> spelling)
    {
        var rest = !spelling.IsEmpty && spelling[0] == '!' ? spelling[1..] : spelling;
        return !rest.IsEmpty && StepText.IsLetter(rest[0]) && !rest.ContainsAnyExcept(StepText.NameBytes);
    }

    private int Add(ReadOnlySpan<byte> spelling, int slot)
    {
        if (!IsName(spelling))
        {
            return -1;
        }

        var name = Encoding.ASCII.GetString(spelling).ToUpperInvariant();
        if (!_byName.TryGetValue(name, out var type))
        {
            type = _names.Count;
            _byName.Add(name, type);
            _names.Add(name);
        }

        _spellings.Add(spelling.ToArray());
        _types.Add(type);
        _slots[slot] = _spellings.Count;
        if (_spellings.Count * 2 > _slots.Length)
        {
            Grow();
        }

        return type;
    }

    private void Grow()
    {
        _slots = new int[_slots.Length * 2];
        var mask = _slots.Length - 1;
        for (var entry = 0; entry < _spellings.Count; entry++)
        {
            var slot = Hash(_spellings[entry]) & mask;
            while (_slots[slot] != 0)
            {
                slot = (slot + 1) & mask;
            }

            _slots[slot] = entry + 1;
        }
    }
}
