namespace IfcCourser.Output.Packing;

/// <summary>
/// Packs bytes as RFC 1950 and RFC 1951 say, with the fixed codes. Of our own, because what the runtime's packer writes
/// depends on its version and the machine, and the same run is to give the same bytes.
/// </summary>
internal static class Deflate
{
    private const int LeastMatch = 3;
    private const int LongestMatch = 258;
    private const int Window = 32768;
    private const int HashBits = 15;
    private const int EndOfBlock = 256;

    /// <summary>Earlier places looked at for each match: what more would save is under a hundredth.</summary>
    private const int Tries = 32;

    /// <summary>Places of a match that later ones may start from: a long one is mostly a stretch of one byte, where the first will do.</summary>
    private const int MostRemembered = 64;

    // RFC 1951, 3.2.5: the first length, or distance, of each code and its extra bits.
    private static readonly ImmutableArray<int> _lengths =
        [3, 4, 5, 6, 7, 8, 9, 10, 11, 13, 15, 17, 19, 23, 27, 31, 35, 43, 51, 59, 67, 83, 99, 115, 131, 163, 195, 227, 258];

    private static readonly ImmutableArray<int> _lengthBits =
        [0, 0, 0, 0, 0, 0, 0, 0, 1, 1, 1, 1, 2, 2, 2, 2, 3, 3, 3, 3, 4, 4, 4, 4, 5, 5, 5, 5, 0];

    private static readonly ImmutableArray<int> _distances =
        [1, 2, 3, 4, 5, 7, 9, 13, 17, 25, 33, 49, 65, 97, 129, 193, 257, 385, 513, 769, 1025, 1537, 2049, 3073, 4097, 6145, 8193, 12289, 16385, 24577];

    private static readonly ImmutableArray<(int Bits, int Count)> _symbols = [.. Enumerable.Range(0, 286).Select(Symbol)];
    private static readonly ImmutableArray<int> _distanceBits = [.. Enumerable.Range(0, _distances.Length).Select(code => Turned(code, 5))];
    private static readonly ImmutableArray<byte> _lengthCodes = [.. Enumerable.Range(0, LongestMatch + 1).Select(length => (byte)Math.Max(0, Last(_lengths, length)))];

    // Of each thread, used again: a file of thousands of small entries would else ask for a gigabyte of them.
    [ThreadStatic]
    private static int[]? _last;

    [ThreadStatic]
    private static int[]? _before;

    /// <summary>As RFC 1950: 32 KiB window, no dictionary, the packed data and its check sum.</summary>
    public static byte[] Pack(ReadOnlySpan<byte> data)
    {
        var bits = new BitRow(data.Length);
        bits.Add(0x78, 8);
        bits.Add(0x01, 8);
        PackBlock(bits, data);
        var check = Adler32(data);
        for (var shift = 24; shift >= 0; shift -= 8)
        {
            bits.Add((int)((check >> shift) & 0xFF), 8);
        }

        return bits.ToArray();
    }

    /// <summary>As RFC 1951: one last block of fixed codes.</summary>
    public static byte[] PackBare(ReadOnlySpan<byte> data)
    {
        var bits = new BitRow(data.Length);
        PackBlock(bits, data);
        return bits.ToArray();
    }

    private static void PackBlock(BitRow bits, ReadOnlySpan<byte> data)
    {
        bits.Add(0b011, 3);

        // The last place with each hash, and for each place of the window the one before it with the same hash; -1 for none.
        var last = _last ??= new int[1 << HashBits];
        var before = _before ??= new int[Window];
        Array.Fill(last, -1);
        for (var at = 0; at < data.Length;)
        {
            var (length, distance) = LongestBefore(data, at, last, before);
            if (length == 0)
            {
                AddSymbol(bits, data[at]);
            }
            else
            {
                AddMatch(bits, length, distance);
            }

            var next = at + Math.Max(length, 1);
            for (var end = Math.Min(next, at + MostRemembered); at < end; at++)
            {
                Remember(data, at, last, before);
            }

            at = next;
        }

        AddSymbol(bits, EndOfBlock);
        bits.Close();
    }

    private static void Remember(ReadOnlySpan<byte> data, int at, int[] last, int[] before)
    {
        if (at + LeastMatch <= data.Length)
        {
            var hash = Hash(data, at);
            before[at % Window] = last[hash];
            last[hash] = at;
        }
    }

    private static (int Length, int Distance) LongestBefore(ReadOnlySpan<byte> data, int at, int[] last, int[] before)
    {
        var most = Math.Min(LongestMatch, data.Length - at);
        if (most < LeastMatch)
        {
            return default;
        }

        var (best, distance) = (LeastMatch - 1, 0);
        var place = last[Hash(data, at)];
        for (var tries = 0; tries < Tries && place >= 0 && at - place < Window && best < most; tries++, place = before[place % Window])
        {
            var length = data.Slice(at, most).CommonPrefixLength(data[place..]);
            if (length > best)
            {
                (best, distance) = (length, at - place);
            }
        }

        return distance == 0 ? default : (best, distance);
    }

    private static int Hash(ReadOnlySpan<byte> data, int at) =>
        ((data[at] << 10) ^ (data[at + 1] << 5) ^ data[at + 2]) & ((1 << HashBits) - 1);

    private static void AddMatch(BitRow bits, int length, int distance)
    {
        int code = _lengthCodes[length];
        AddSymbol(bits, EndOfBlock + 1 + code);
        bits.Add(length - _lengths[code], _lengthBits[code]);
        code = Last(_distances, distance);
        bits.Add(_distanceBits[code], 5);
        bits.Add(distance - _distances[code], code < 2 ? 0 : (code / 2) - 1);
    }

    private static void AddSymbol(BitRow bits, int symbol)
    {
        var (code, count) = _symbols[symbol];
        bits.Add(code, count);
    }

    /// <summary>The fixed code of a literal or length (RFC 1951, 3.2.6).</summary>
    private static (int Bits, int Count) Symbol(int symbol)
    {
        var (code, count) = symbol switch
        {
            < 144 => (0x30 + symbol, 8),
            < 256 => (0x190 + symbol - 144, 9),
            < 280 => (symbol - 256, 7),
            _ => (0xC0 + symbol - 280, 8),
        };
        return (Turned(code, count), count);
    }

    /// <summary>A code with its highest bit first, as codes are packed.</summary>
    private static int Turned(int code, int count)
    {
        var turned = 0;
        for (var bit = 0; bit < count; bit++)
        {
            turned |= ((code >> bit) & 1) << (count - 1 - bit);
        }

        return turned;
    }

    private static int Last(ImmutableArray<int> firsts, int value)
    {
        var found = firsts.BinarySearch(value);
        return found >= 0 ? found : ~found - 1;
    }

    private static uint Adler32(ReadOnlySpan<byte> data)
    {
        const uint Modulus = 65521;

        // As many as the sums take in 32 bits before they are reduced.
        const int Most = 5552;
        var (a, b) = (1u, 0u);
        for (var from = 0; from < data.Length; from += Most)
        {
            foreach (var value in data[from..Math.Min(from + Most, data.Length)])
            {
                a += value;
                b += a;
            }

            (a, b) = (a % Modulus, b % Modulus);
        }

        return (b << 16) | a;
    }

    /// <summary>Bits in bytes, the lowest first.</summary>
    /// <param name="size">Of the data: packed it is mostly smaller.</param>
    private sealed class BitRow(int size)
    {
        private byte[] _bytes = new byte[Math.Max(64, size / 4)];
        private int _length;
        private int _bits;
        private int _count;

        public void Add(int value, int count)
        {
            _bits |= value << _count;
            for (_count += count; _count >= 8; _count -= 8)
            {
                if (_length == _bytes.Length)
                {
                    Array.Resize(ref _bytes, 2 * _length);
                }

                _bytes[_length++] = (byte)(_bits & 0xFF);
                _bits >>= 8;
            }
        }

        public void Close() => Add(0, (8 - _count) % 8);

        public byte[] ToArray() => _bytes.AsSpan(0, _length).ToArray();
    }
}
