using System.Buffers.Binary;
using System.IO.Compression;
using IfcCourser.Output.Png;
using IfcCourser.Output.Sheets;

namespace IfcCourser.Output.Tests.Png;

public sealed class PictureTests
{
    /// <summary>Two pixels to a millimetre, 2 by 1 mm: 4 by 2 pixels. A black face from x 0.5 to 1.25 mm, y 0 to 0.5: the lower row, pixel 1 whole and half of pixel 2.</summary>
    [Fact]
    public void A_pixel_is_as_dark_as_it_is_covered()
    {
        var raster = new Raster(2, 1, 2);
        raster.Fill([[new Point(0.5, 0), new Point(1.25, 0), new Point(1.25, 0.5), new Point(0.5, 0.5)]], (0, 0, 0));
        Assert.Equal((4, 2), (raster.Width, raster.Height));
        Assert.Equal([255, 255, 255, 255, 255, 0, 128, 255], raster.Pixels.Where((_, i) => i % 3 == 0).Select(value => (int)value));
    }

    /// <summary>A square with a square hole, even-odd: the middle stays white; what lies outside the picture is left out.</summary>
    [Fact]
    public void Inner_loops_are_holes_and_the_edge_clips()
    {
        var raster = new Raster(3, 3, 1);
        raster.Fill([new Box(-5, -5, 8, 8).Corners(), new Box(1, 1, 2, 2).Corners()], (10, 20, 30));
        var red = raster.Pixels.Where((_, i) => i % 3 == 0).Select(value => (int)value).ToList();
        Assert.Equal([10, 10, 10, 10, 255, 10, 10, 10, 10], red);
    }

    /// <summary>ISO/IEC 15948: signature, header, one data chunk whose rows, each after its filter's number (2: less the row above), give the pixels back.</summary>
    [Fact]
    public void A_png_gives_its_pixels_back()
    {
        var pixels = Enumerable.Range(0, 3 * 5 * 4).Select(i => (byte)(i * 37 % 256)).ToArray();
        var png = PngFile.Of(pixels, 5);
        var (at, data) = (8, Array.Empty<byte>());
        while (at < png.Length)
        {
            var length = BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(at));
            if (png.AsSpan(at + 4, 4).SequenceEqual("IDAT"u8))
            {
                data = png[(at + 8)..(at + 8 + length)];
            }

            at += 12 + length;
        }

        using var rows = new MemoryStream();
        using (var zlib = new ZLibStream(new MemoryStream(data), CompressionMode.Decompress))
        {
            zlib.CopyTo(rows);
        }

        var read = new byte[pixels.Length];
        var row = rows.ToArray();
        for (var i = 0; i < read.Length; i++)
        {
            var (y, x) = (i / 15, i % 15);
            Assert.Equal(2, row[y * 16]);
            read[i] = unchecked((byte)(row[(y * 16) + 1 + x] + (y == 0 ? 0 : read[i - 15])));
        }

        Assert.Equal(pixels, read);
    }

    /// <summary>An I of DejaVu Sans is a bar; its outline is one loop of four corners as high as capitals are (1493 of 2048 units).</summary>
    [Fact]
    public void Letters_have_outlines()
    {
        var (loops, width) = GlyphShapes.Of("I");
        var bar = Assert.Single(loops);
        Assert.Equal((4, 0d, 1493d), (bar.Length, bar.Min(p => p.Y), bar.Max(p => p.Y)));
        Assert.True(width > bar.Max(p => p.X));
        Assert.Equal(2, GlyphShapes.Of("O").Loops.Count);
        Assert.Equal(3, GlyphShapes.Of("Ö").Loops.Count - 1);
    }
}
