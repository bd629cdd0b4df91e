using System.Buffers.Binary;
using System.IO.Compression;
using System.Text;
using CsCheck;
using IfcCourser.Output.Packing;

namespace IfcCourser.Output.Tests.Packing;

public sealed class ZipWriterTests
{
    /// <summary>Read by the runtime, which checks lengths and check sums.</summary>
    [Fact]
    public void What_is_packed_comes_out_again() => Gen.Byte[0, 9].Array[0, 3000].Array[0, 4].ForAll(contents =>
    {
        var entries = contents.Select((content, i) => (Name: $"folder/ä{i}.xml", content)).ToArray();
        using var read = new ZipArchive(new MemoryStream(Written(entries, "2026-03-02")), ZipArchiveMode.Read);
        Assert.Equal(entries.Select(entry => entry.Name), read.Entries.Select(entry => entry.FullName), StringComparer.Ordinal);
        Assert.All(entries.Zip(read.Entries), pair => Assert.Equal(pair.First.content, Bytes(pair.Second)));
    }, cases: 50);

    [Theory]
    [InlineData("2026-03-02T08:00:00", "2026-03-02 08:00:00")]
    [InlineData("2026-03-02T08:00:00+05:00", "2026-03-02 03:00:00")]
    [InlineData("1971-01-01", "1980-01-01 00:00:00")]
    [InlineData("no date", "1980-01-01 00:00:00")]
    public void Entries_bear_the_date_given_in_UTC(string date, string expected)
    {
        using var read = new ZipArchive(new MemoryStream(Written([("a", [1])], date)), ZipArchiveMode.Read);

        Assert.Equal(expected, read.Entries[0].LastWriteTime.DateTime.ToString("yyyy-MM-dd HH:mm:ss", System.Globalization.CultureInfo.InvariantCulture));
    }

    /// <summary>The check value of CRC-32 (ISO 3309): of "123456789" it is CBF43926.</summary>
    [Fact]
    public void The_check_sum_is_that_of_the_standard()
    {
        var bytes = Written([("a", Encoding.ASCII.GetBytes("123456789"))], "2026-01-01");

        Assert.Equal(0xCBF43926, BinaryPrimitives.ReadUInt32LittleEndian(bytes.AsSpan(14)));
    }

    /// <summary>APPNOTE 4.4.21 and 4.4.22: counts of 65,535 and more stand in the records of zip64. Read by the runtime.</summary>
    [Theory]
    [InlineData(65_534, false)]
    [InlineData(65_535, true)]
    [InlineData(70_001, true)]
    public void Any_number_of_entries_is_read_again(int count, bool isZip64)
    {
        var bytes = Written(Enumerable.Range(0, count).Select(i => ($"{i}", new[] { (byte)(i % 200) })), "2026-01-01");

        using var read = new ZipArchive(new MemoryStream(bytes), ZipArchiveMode.Read);
        Assert.Equal(count, read.Entries.Count);
        Assert.Equal([(byte)((count - 1) % 200)], Bytes(read.Entries[^1]));
        Assert.Equal(isZip64, bytes.AsSpan().IndexOf("PK\u0006\u0006"u8) >= 0);
    }

    /// <summary>Places of 4 GB and more stand in the extra field of zip64 (APPNOTE 4.5.3); the first bytes are left out, as of a disk's hole.</summary>
    [Theory]
    [InlineData(0xFFFF_FFF0L)]
    [InlineData(0x1_2345_6789L)]
    public void Entries_beyond_four_gigabytes_are_read_again(long hole)
    {
        using var stream = new StreamWithHole(hole);
        var zip = new ZipWriter(stream, StampTime.Of("2026-01-01"));
        zip.Add("near", [1, 2, 3]);
        zip.Add("far", [4, 5]);
        zip.Close();

        using var read = new ZipArchive(stream, ZipArchiveMode.Read);
        Assert.Equal(["near", "far"], read.Entries.Select(entry => entry.FullName), StringComparer.Ordinal);
        Assert.Equal([1, 2, 3], Bytes(read.Entries[0]));
        Assert.Equal([4, 5], Bytes(read.Entries[1]));
    }

    private static byte[] Written(IEnumerable<(string Name, byte[] Content)> entries, string date)
    {
        using var stream = new MemoryStream();
        var zip = new ZipWriter(stream, StampTime.Of(date));
        foreach (var (name, content) in entries)
        {
            zip.Add(name, content);
        }

        zip.Close();
        return stream.ToArray();
    }

    private static byte[] Bytes(ZipArchiveEntry entry)
    {
        using var opened = entry.Open();
        using var copy = new MemoryStream();
        opened.CopyTo(copy);
        return copy.ToArray();
    }
}
