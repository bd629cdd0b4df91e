using System.Buffers.Binary;
using System.Text;
using IfcCourser.Output.Packing;

namespace IfcCourser.Output.Png;

/// <summary>A picture as PNG (ISO/IEC 15948): eight bits each of red, green and blue.</summary>
internal static class PngFile
{
    private const int Channels = 3;

    /// <summary>Each row less the one above it: drawings repeat from row to row.</summary>
    private const byte UpFilter = 2;

    /// <param name="pixels">Row by row from the top, red, green, blue.</param>
    /// <param name="width">In pixels.</param>
    public static byte[] Of(ReadOnlySpan<byte> pixels, int width)
    {
        var row = width * Channels;
        var height = pixels.Length / row;
        var filtered = new byte[height * (row + 1)];
        ReadOnlySpan<byte> above = new byte[row];
        for (var y = 0; y < height; y++)
        {
            var source = pixels.Slice(y * row, row);
            var target = filtered.AsSpan(y * (row + 1), row + 1);
            target[0] = UpFilter;
            for (var x = 0; x < row; x++)
            {
                target[x + 1] = unchecked((byte)(source[x] - above[x]));
            }

            above = source;
        }

        return [0x89, .. "PNG\r\n\u001a\n"u8, .. Chunk("IHDR", [.. U32((uint)width), .. U32((uint)height), 8, 2, 0, 0, 0]), .. Chunk("IDAT", Deflate.Pack(filtered)), .. Chunk("IEND", [])];
    }

    private static byte[] Chunk(string type, byte[] data)
    {
        byte[] named = [.. Encoding.ASCII.GetBytes(type), .. data];
        return [.. U32((uint)data.Length), .. named, .. U32(Crc32.Of(named))];
    }

    private static byte[] U32(uint value)
    {
        var bytes = new byte[sizeof(uint)];
        BinaryPrimitives.WriteUInt32BigEndian(bytes, value);
        return bytes;
    }
}
