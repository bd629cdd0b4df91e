using System.Buffers.Binary;
using System.Text;

namespace IfcCourser.Output.Pdf;

/// <summary>
/// The font that comes with the program: DejaVu Sans 2.37, which <see cref="Sheets.TextMetrics"/> is measured on. Reads what is needed to draw with
/// it and to take a part of it (ISO/IEC 14496-22, Open Font Format).
/// </summary>
internal sealed class TrueTypeFont
{
    private readonly byte[] _bytes;
    private readonly Dictionary<string, Range> _tables = new(StringComparer.Ordinal);
    private readonly Dictionary<int, int> _glyphs = [];

    private TrueTypeFont(string name, byte[] bytes)
    {
        (Name, _bytes) = (name, bytes);
        for (var i = 0; i < U16(bytes, 4); i++)
        {
            var entry = bytes.AsSpan(12 + (16 * i));
            var start = I32(entry, 8);
            _tables.Add(Encoding.ASCII.GetString(entry[..4]), start..(start + I32(entry, 12)));
        }

        ReadCharacters();
    }

    public static TrueTypeFont Sans { get; } = Load("DejaVuSans");

    public string Name { get; }

    public int UnitsPerEm => U16(Table("head"), 18);

    public int Ascent => I16(Table("hhea"), 4);

    public int Descent => I16(Table("hhea"), 6);

    /// <summary>Left, bottom, right and top of all glyphs together.</summary>
    public ImmutableArray<int> Box => [I16(Table("head"), 36), I16(Table("head"), 38), I16(Table("head"), 40), I16(Table("head"), 42)];

    /// <summary>Top of the letter H.</summary>
    public int CapitalHeight => I16(Outline(GlyphOf(new Rune('H'))), 8);

    public ReadOnlySpan<byte> Table(string tag) => _bytes.AsSpan(_tables[tag]);

    /// <summary>0, a box, where there is none.</summary>
    public int GlyphOf(Rune character) => _glyphs.GetValueOrDefault(character.Value);

    /// <summary>In units of the font.</summary>
    public int Advance(int glyph) => U16(Table("hmtx"), 4 * Math.Min(glyph, U16(Table("hhea"), 34) - 1));

    public short SideBearing(int glyph)
    {
        var full = U16(Table("hhea"), 34);
        return I16(Table("hmtx"), glyph < full ? (4 * glyph) + 2 : (4 * full) + (2 * (glyph - full)));
    }

    /// <summary>The glyph's record in the table of outlines; empty for a space.</summary>
    public ReadOnlySpan<byte> Outline(int glyph)
    {
        var places = Table("loca");
        var isLong = U16(Table("head"), 50) == 1;
        var (from, to) = isLong ? (I32(places, 4 * glyph), I32(places, (4 * glyph) + 4)) : (2 * U16(places, 2 * glyph), 2 * U16(places, (2 * glyph) + 2));
        return Table("glyf")[from..to];
    }

    private static TrueTypeFont Load(string name)
    {
        using var stream = typeof(TrueTypeFont).Assembly.GetManifestResourceStream($"Pdf/{name}.ttf")!;
        using var bytes = new MemoryStream();
        stream.CopyTo(bytes);
        return new TrueTypeFont(name, bytes.ToArray());
    }

    /// <summary>The table of all of Unicode: platform 3, encoding 10, format 12.</summary>
    private void ReadCharacters()
    {
        var maps = Table("cmap");
        for (var i = 0; i < U16(maps, 2); i++)
        {
            var entry = maps[(4 + (8 * i))..];
            if ((U16(entry, 0), U16(entry, 2)) == (3, 10))
            {
                ReadGroups(maps[I32(entry, 4)..]);
            }
        }
    }

    private void ReadGroups(ReadOnlySpan<byte> map)
    {
        for (var i = 0; i < I32(map, 12); i++)
        {
            var group = map[(16 + (12 * i))..];
            var (first, last, glyph) = (I32(group, 0), I32(group, 4), I32(group, 8));
            for (var code = first; code <= last; code++)
            {
                _glyphs.Add(code, glyph + code - first);
            }
        }
    }

    private static int U16(ReadOnlySpan<byte> bytes, int at) => BinaryPrimitives.ReadUInt16BigEndian(bytes[at..]);

    private static short I16(ReadOnlySpan<byte> bytes, int at) => BinaryPrimitives.ReadInt16BigEndian(bytes[at..]);

    private static int I32(ReadOnlySpan<byte> bytes, int at) => BinaryPrimitives.ReadInt32BigEndian(bytes[at..]);
}
