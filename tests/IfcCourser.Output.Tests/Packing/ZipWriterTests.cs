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
