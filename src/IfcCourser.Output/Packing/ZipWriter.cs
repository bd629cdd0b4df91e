using System.Buffers.Binary;
using System.Text;

namespace IfcCourser.Output.Packing;

/// <summary>
/// Writes a zip file (PKWARE APPNOTE 6.3.10, 4.3 and 4.4, no zip64); entries are packed where that makes them smaller. Of our own, because the runtime's
/// writer puts the machine it runs on into each entry, and packs as its version packs.
/// </summary>
/// <param name="stream">Where it goes; need not seek.</param>
/// <param name="time">Of all entries, to two seconds; years before 1980 and after 2107 can't be said and become the nearest.</param>
internal sealed class ZipWriter(Stream stream, DateTime time)
{
    private const ushort Version = 20;
    private const ushort Utf8Names = 1 << 11;

    private const ushort Stored = 0;
    private const ushort Deflated = 8;

    private readonly List<Entry> _entries = [];
    private readonly (ushort Time, ushort Date) _stamp = Stamp(time);
    private uint _written;

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
            Write([
                .. U32(0x02014b50), .. U16(Version), .. U16(Version), .. Common(entry), .. U16((ushort)entry.Name.Length), .. U16(0), .. U16(0), .. U16(0), .. U16(0),
                .. U32(0), .. U32(entry.Offset), .. entry.Name,
            ]);
        }

        var count = (ushort)_entries.Count;
        Write([.. U32(0x06054b50), .. U16(0), .. U16(0), .. U16(count), .. U16(count), .. U32(_written - start), .. U32(start), .. U16(0)]);
    }

    /// <summary>Flags, method, time, date, check and both sizes.</summary>
    private byte[] Common(Entry entry) =>
        [.. U16(Utf8Names), .. U16(entry.Method), .. U16(_stamp.Time), .. U16(_stamp.Date), .. U32(entry.Crc), .. U32(entry.Packed), .. U32(entry.Size)];

    private void Write(ReadOnlySpan<byte> bytes)
    {
        stream.Write(bytes);
        _written = checked(_written + (uint)bytes.Length);
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

    private readonly record struct Entry(byte[] Name, ushort Method, uint Crc, uint Packed, uint Size, uint Offset);
}
