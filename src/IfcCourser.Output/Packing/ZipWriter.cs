using System.Buffers.Binary;
using System.Text;

namespace IfcCourser.Output.Packing;

/// <summary>
/// Writes a zip file (PKWARE APPNOTE 6.3.10, 4.3 to 4.5); entries are packed where that makes them smaller. Of our own, because the runtime's
/// writer puts the machine it runs on into each entry, and packs as its version packs. Records of zip64 stand only where there are 65,535 entries or
/// 4 GB, so that readers without it take all other files. An entry alone stays below: its bytes are in memory.
/// </summary>
/// <param name="stream">Where it goes; need not seek. Places are counted from the start of one that can.</param>
/// <param name="time">Of all entries, to two seconds; years before 1980 and after 2107 can't be said and become the nearest.</param>
internal sealed class ZipWriter(Stream stream, DateTime time)
{
    private const ushort Version = 20;
    private const ushort Zip64Version = 45;
    private const ushort Utf8Names = 1 << 11;

    private const ushort Stored = 0;
    private const ushort Deflated = 8;

    private readonly List<Entry> _entries = [];
    private readonly (ushort Time, ushort Date) _stamp = Stamp(time);
    private ulong _written = stream.CanSeek ? (ulong)stream.Position : 0;

    public void Add(string name, ReadOnlySpan<byte> content)
    {
        ReadOnlySpan<byte> packed = Deflate.PackBare(content);
        var isSmaller = packed.Length < content.Length;
        var written = isSmaller ? packed : content;
        var entry = new Entry(Encoding.UTF8.GetBytes(name), isSmaller ? Deflated : Stored, Crc32.Of(content), (uint)written.Length, (uint)content.Length, _written);
        _entries.Add(entry);
        Write([.. U32(0x04034b50), .. U16(Version), .. Common(entry), .. U16((ushort)entry.Name.Length), .. U16(0), .. entry.Name]);
        Write(written);
    }

    /// <summary>Writes the directory; nothing may be added after it.</summary>
    public void Close()
    {
        var start = _written;
        foreach (var entry in _entries)
        {
            // Made by version 2.0 on no system in particular (0, FAT): neither attributes nor comment.
            byte[] far = entry.Offset < uint.MaxValue ? [] : [.. U16(0x0001), .. U16(sizeof(ulong)), .. U64(entry.Offset)];
            Write([
                .. U32(0x02014b50), .. U16(Version), .. U16(far.Length == 0 ? Version : Zip64Version), .. Common(entry), .. U16((ushort)entry.Name.Length), .. U16((ushort)far.Length), .. U16(0), .. U16(0), .. U16(0),
                .. U32(0), .. U32(Capped(entry.Offset)), .. entry.Name, .. far,
            ]);
        }

        var (end, count) = (_written, (ulong)_entries.Count);
        if (count >= ushort.MaxValue || end >= uint.MaxValue)
        {
            // Both counts and both places in 64 bits, and where they stand (4.3.14 and 4.3.15).
            const ulong LengthBehindItself = 44;
            Write([
                .. U32(0x06064b50), .. U64(LengthBehindItself), .. U16(Zip64Version), .. U16(Zip64Version), .. U32(0), .. U32(0), .. U64(count), .. U64(count), .. U64(end - start), .. U64(start),
                .. U32(0x07064b50), .. U32(0), .. U64(end), .. U32(1),
            ]);
        }

        var few = (ushort)Math.Min(count, ushort.MaxValue);
        Write([.. U32(0x06054b50), .. U16(0), .. U16(0), .. U16(few), .. U16(few), .. U32(Capped(end - start)), .. U32(Capped(start)), .. U16(0)]);
    }

    /// <summary>What does not fit is all ones: the reader then looks into the record of zip64.</summary>
    private static uint Capped(ulong value) => (uint)Math.Min(value, uint.MaxValue);

    /// <summary>Flags, method, time, date, check and both sizes.</summary>
    private byte[] Common(Entry entry) =>
        [.. U16(Utf8Names), .. U16(entry.Method), .. U16(_stamp.Time), .. U16(_stamp.Date), .. U32(entry.Crc), .. U32(entry.Packed), .. U32(entry.Size)];

    private void Write(ReadOnlySpan<byte> bytes)
    {
        stream.Write(bytes);
        _written += (uint)bytes.Length;
    }

    /// <summary>MS-DOS time and date (4.4.6).</summary>
    private static (ushort Time, ushort Date) Stamp(DateTime time)
    {
        var t = time.Year < 1980 ? new DateTime(1980, 1, 1) : time.Year > 2107 ? new DateTime(2107, 12, 31) : time;
        return ((ushort)((t.Hour << 11) | (t.Minute << 5) | (t.Second / 2)), (ushort)(((t.Year - 1980) << 9) | (t.Month << 5) | t.Day));
    }

    private static byte[] U16(ushort value)
    {
        var bytes = new byte[sizeof(ushort)];
        BinaryPrimitives.WriteUInt16LittleEndian(bytes, value);
        return bytes;
    }

    private static byte[] U32(uint value)
    {
        var bytes = new byte[sizeof(uint)];
        BinaryPrimitives.WriteUInt32LittleEndian(bytes, value);
        return bytes;
    }

    private static byte[] U64(ulong value)
    {
        var bytes = new byte[sizeof(ulong)];
        BinaryPrimitives.WriteUInt64LittleEndian(bytes, value);
        return bytes;
    }

    private readonly record struct Entry(byte[] Name, ushort Method, uint Crc, uint Packed, uint Size, ulong Offset);
}
