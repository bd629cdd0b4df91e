using System.IO.Compression;
using System.Text;
using CsCheck;
using IfcCourser.Output.Packing;
using IfcCourser.Output.Tests.Support;

namespace IfcCourser.Output.Tests.Packing;

/// <summary>Held to the runtime's unpacker, which shares no code with the packer.</summary>
public static class DeflateTests
{
    [Fact]
    public static void What_is_packed_unpacks_to_the_same() =>
        Gen.OneOf(Gen.Byte.Array, Gen.Byte[0, 3].Array[0, 5000]).ForAll(bytes => Unpacked(Deflate.Pack(bytes)).SequenceEqual(bytes));

    [Theory]
    [InlineData(1)]
    [InlineData(257)]
    [InlineData(258)]
    [InlineData(259)]
    [InlineData(100_000)]
    public static void Long_runs_and_repeats_beyond_the_window_unpack_to_the_same(int period)
    {
        var bytes = new byte[250_000];
        for (var i = 0; i < bytes.Length; i++)
        {
            var place = i % period;
            bytes[i] = (byte)((place ^ (place >> 7) ^ (place >> 11)) & 0xFF);
        }

        Assert.Equal(bytes, Unpacked(Deflate.Pack(bytes)));
    }

    [Fact]
    public static void A_page_is_packed_to_less_than_one_and_a_half_of_what_the_runtimes_packer_needs()
    {
        var page = Encoding.ASCII.GetBytes(PdfReading.Of(Samples.Sheets.Values.First().Sheet).Content(0));
        using var packed = new MemoryStream();
        using (var packer = new ZLibStream(packed, CompressionLevel.Optimal, leaveOpen: true))
        {
            packer.Write(page);
        }

        Assert.InRange(Deflate.Pack(page).Length, 1, packed.Length * 3 / 2);
    }

    private static byte[] Unpacked(byte[] packed)
    {
        using var stream = new ZLibStream(new MemoryStream(packed), CompressionMode.Decompress);
        using var bytes = new MemoryStream();
        stream.CopyTo(bytes);
        return bytes.ToArray();
    }
}
