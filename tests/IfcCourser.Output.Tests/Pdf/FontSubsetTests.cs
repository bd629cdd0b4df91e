using System.Buffers.Binary;
using System.Text;
using IfcCourser.Output.Pdf;
using IfcCourser.Output.Sheets;
using IfcCourser.Output.Tests.Support;

namespace IfcCourser.Output.Tests.Pdf;

public static class FontSubsetTests
{
    private const string Text = "aÉőЙÿ ½";

    private static readonly byte[] _program = PdfReading.Of(EveryItem.Sheet with { Views = [], Items = [new TextItem(Pen.Text, default, Text, 3)] }).FontProgram();

    [Fact]
    public static void Sums_of_the_tables_and_of_the_whole_are_those_of_the_format()
    {
        // ISO/IEC 14496-22, 5.2: the whole sums up to B1B0AFBA; head's own sum is taken without the adjustment.
        Assert.Equal(0xB1B0AFBA, Sum(_program));
        Assert.All(Tables().Where(table => table.Tag != "head"), table => Assert.Equal(table.Sum, Sum(_program[table.Start..table.End])));
    }

    [Fact]
    public static void Tables_lie_behind_each_other_in_the_order_of_their_names()
    {
        Assert.Equal(["cvt ", "fpgm", "glyf", "head", "hhea", "hmtx", "loca", "maxp", "prep"], Tables().Select(table => table.Tag), StringComparer.Ordinal);
        Assert.All(Tables(), table => Assert.Equal(0, table.Start % 4));
        Assert.All(Tables().Zip(Tables().Skip(1)), pair => Assert.Equal((pair.First.End + 3) / 4 * 4, pair.Second.Start));
    }

    [Fact]
    public static void Composed_letters_find_their_parts_among_the_glyphs()
    {
        var count = U16(Table("maxp"), 4);
        Assert.Equal(4 * (count + 1), Table("loca").Length);
        Assert.Equal(4 * count, Table("hmtx").Length);
        var composed = 0;
        for (var glyph = 0; glyph < count; glyph++)
        {
            var outline = Table("glyf")[U32(Table("loca"), 4 * glyph)..U32(Table("loca"), (4 * glyph) + 4)];
            if (outline.Length > 0 && U16(outline, 0) > short.MaxValue)
            {
                composed++;
                Assert.InRange(U16(outline, 12), 1, count - 1);
            }
        }

        Assert.True(composed >= 3);
        Assert.True(count > Text.Length + 1);
    }

    [Fact]
    public static void Texts_are_as_wide_as_the_sheets_were_composed_for()
    {
        var font = TrueTypeFont.Sans;
        for (var c = ' '; c <= '~'; c++)
        {
            // The table of widths is rounded to thousandths of the capitals' height.
            var width = (double)font.Advance(font.GlyphOf(new Rune(c))) / font.CapitalHeight;
            Assert.Equal(TextMetrics.Width(c.ToString(), 1), width, 0.00051);
        }
    }

    private static IEnumerable<(string Tag, uint Sum, int Start, int End)> Tables() => Enumerable.Range(0, U16(_program, 4))
        .Select(i => 12 + (16 * i))
        .Select(at => (Encoding.ASCII.GetString(_program, at, 4), BinaryPrimitives.ReadUInt32BigEndian(_program.AsSpan(at + 4)), U32(_program, at + 8), U32(_program, at + 8) + U32(_program, at + 12)));

    private static byte[] Table(string tag) => Tables().Where(table => table.Tag == tag).Select(table => _program[table.Start..table.End]).Single();

    private static uint Sum(byte[] bytes) => bytes.Chunk(4).Aggregate(0u, (sum, word) =>
        unchecked(sum + ((uint)word[0] << 24) + ((uint)word.ElementAtOrDefault(1) << 16) + ((uint)word.ElementAtOrDefault(2) << 8) + word.ElementAtOrDefault(3)));

    private static int U16(byte[] bytes, int at) => BinaryPrimitives.ReadUInt16BigEndian(bytes.AsSpan(at));

    private static int U32(byte[] bytes, int at) => BinaryPrimitives.ReadInt32BigEndian(bytes.AsSpan(at));
}
