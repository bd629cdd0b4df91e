using System.Buffers.Binary;
using System.Globalization;
using System.Text;

namespace IfcCourser.Output.Packing;

/// <summary>
/// Writes zip files (APPNOTE 6.3, no zip64) whose bytes depend on nothing but their contents and the date given: the runtime's own differ with its
/// version and the system.
/// </summary>
internal static class ZipWriter
{
    private const uint LocalHeader = 0x04034B50;
    private const uint CentralHeader = 0x02014B50;
    private const uint EndOfDirectory = 0x06054B50;
    private const ushort Version = 20;
    private const ushort Utf8Names = 0x0800;
    private const ushort Deflated = 8;

    private static readonly uint[] _crc = [.. Enumerable.Range(0, 256).Select(Crc)];

    /// <param name="entries">In the order they are to stand in.</param>
    /// <param name="date">ISO 8601, of all entries; years before 1980 and what is no date become 1980-01-01.</param>
    public static void Write(IEnumerable<(string Name, byte[] Content)> entries, string date, Stream stream)
    {
        var (written, directory, time, count) = (0L, new List<byte[]>(), DosTime(date), (ushort)0);
        foreach (var (name, content) in entries)
        {
            var (bytes, packed) = (Encoding.UTF8.GetBytes(name), Deflate.PackBare(content));
            byte[] facts =
            [
                .. Two(Version), .. Two(Utf8Names), .. Two(Deflated), .. Four(time), .. Four(Checksum(content)), .. Four((uint)packed.Length), .. Four((uint)content.Length),
                .. Two((ushort)bytes.Length), .. Two(0),
            ];
            directory.Add([.. Four(CentralHeader), .. Two(Version), .. facts, .. Two(0), .. Two(0), .. Two(0), .. Four(0), .. Four((uint)written), .. bytes]);
            byte[] local = [.. Four(LocalHeader), .. facts, .. bytes];
            stream.Write(local);
            stream.Write(packed);
            written += local.Length + packed.Length;
            count++;
        }

        directory.ForEach(entry => stream.Write(entry));
        stream.Write([.. Four(EndOfDirectory), .. Two(0), .. Two(0), .. Two(count), .. Two(count), .. Four((uint)directory.Sum(entry => entry.Length)), .. Four((uint)written), .. Two(0)]);
    }

    /// <summary>Date in the upper half, time in the lower, as MS-DOS kept them; the clock of the text, whatever its zone.</summary>
    private static uint DosTime(string date)
    {
        var at = DateTimeOffset.TryParse(date, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out var parsed) && parsed.Year >= 1980
            ? parsed.DateTime
            : new DateTime(1980, 1, 1, 0, 0, 0, DateTimeKind.Unspecified);
        var day = (uint)(((at.Year - 1980) << 9) | (at.Month << 5) | at.Day);
        return (day << 16) | (uint)((at.Hour << 11) | (at.Minute << 5) | (at.Second / 2));
    }

    private static uint Crc(int value)
    {
        const uint Polynomial = 0xEDB88320;
        var rest = (uint)value;
        for (var bit = 0; bit < 8; bit++)
        {
            rest = (rest & 1) == 1 ? (rest >> 1) ^ Polynomial : rest >> 1;
        }

        return rest;
    }

    private static uint Checksum(byte[] content) => ~content.Aggregate(uint.MaxValue, (sum, value) => (sum >> 8) ^ _crc[(sum ^ value) & 0xFF]);

    private static byte[] Two(ushort value)
    {
        var bytes = new byte[2];
        BinaryPrimitives.WriteUInt16LittleEndian(bytes, value);
        return bytes;
    }

    private static byte[] Four(uint value)
    {
        var bytes = new byte[4];
        BinaryPrimitives.WriteUInt32LittleEndian(bytes, value);
        return bytes;
    }
}
