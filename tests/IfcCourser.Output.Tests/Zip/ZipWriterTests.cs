using System.IO.Compression;
using System.Text;
using IfcCourser.Output.Zip;

namespace IfcCourser.Output.Tests.Zip;

/// <summary>Read again by the runtime's reader.</summary>
public sealed class ZipWriterTests
{
    [Fact]
    public void Entries_come_back_with_their_names_contents_and_time()
    {
        using var stream = new MemoryStream();
        var zip = new ZipWriter(stream, new DateTime(2026, 3, 1, 10, 20, 31, DateTimeKind.Utc));
        zip.Add("a/Süd.txt", "hello"u8);
        zip.Add("empty", []);
        zip.Close();

        using var read = new ZipArchive(new MemoryStream(stream.ToArray()));
        Assert.Equal(["a/Süd.txt", "empty"], read.Entries.Select(entry => entry.FullName));
        Assert.Equal(new DateTime(2026, 3, 1, 10, 20, 30), read.Entries[0].LastWriteTime.DateTime);
        using var content = new StreamReader(read.Entries[0].Open());
        Assert.Equal("hello", content.ReadToEnd());
        Assert.Equal(0, read.Entries[1].Length);
    }

    /// <summary>The check value of the CRC catalogues: the digits 1 to 9.</summary>
    [Fact]
    public void The_check_is_that_of_the_digits() => Assert.Equal(0xCBF43926u, Crc32.Of(Encoding.ASCII.GetBytes("123456789")));
}
