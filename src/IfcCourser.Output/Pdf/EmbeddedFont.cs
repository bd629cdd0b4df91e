using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using static IfcCourser.Output.Pdf.PdfSyntax;

namespace IfcCourser.Output.Pdf;

/// <summary>
/// The font of a file: codes are given to characters as they come, and at the end only their glyphs are embedded, with the table that leads
/// back to the characters (ISO 32000-1, 9.7 and 9.10.3). A character without glyph has a code of its own too: it is drawn as a box and is
/// still found by a search.
/// </summary>
internal sealed class EmbeddedFont
{
    private const int MostInBlock = 100;

    private readonly TrueTypeFont _font = TrueTypeFont.Sans;
    private readonly Dictionary<Rune, int> _codes = [];
    private readonly List<Rune> _characters = [];
    private readonly List<MissingGlyph> _missing = [];

    /// <summary>Height of capitals as a share of the font size.</summary>
    public double CapitalHeight => (double)_font.CapitalHeight / _font.UnitsPerEm;

    public IReadOnlyList<MissingGlyph> Missing => _missing;

    /// <summary>Codes in hex and the width for a font size of one. Control characters are left out.</summary>
    /// <param name="sheet">Where it is drawn.</param>
    public (string Codes, double Width) Set(string text, string sheet)
    {
        var runes = text.EnumerateRunes().Where(rune => !Rune.IsControl(rune)).ToArray();
        var codes = string.Concat(runes.Select(rune => Code(rune, sheet).ToString("X4", CultureInfo.InvariantCulture)));
        return (codes, runes.Sum(rune => (double)_font.Advance(_font.GlyphOf(rune))) / _font.UnitsPerEm);
    }

    /// <summary>Writes the font under the number that the pages use.</summary>
    public void WriteTo(PdfFile file, int number)
    {
        // Code 0 is the box for what no font has.
        ImmutableArray<int> glyphs = [0, .. _characters.Select(_font.GlyphOf)];
        var name = $"/{Tag()}+{_font.Name}";
        var program = FontSubset.Of(_font, glyphs);
        var embedded = file.AddStream(program, string.Create(CultureInfo.InvariantCulture, $" /Length1 {program.Length}"));
        var toUnicode = file.AddStream(Encoding.ASCII.GetBytes(ToUnicode()));
        var widths = string.Join(' ', glyphs.Select(glyph => Number(Share(_font.Advance(glyph)))));

        // Flags: not of the standard Latin set (bit 3). No reader of embedded programs uses the stems' width, which may be 0 where unknown.
        var descriptor = file.Add(
            $"<< /Type /FontDescriptor /FontName {name} /Flags 4 /FontBBox [{string.Join(' ', _font.Box.Select(side => Number(Share(side))))}] "
            + $"/ItalicAngle 0 /Ascent {Number(Share(_font.Ascent))} /Descent {Number(Share(_font.Descent))} "
            + $"/CapHeight {Number(Share(_font.CapitalHeight))} /StemV 0 /FontFile2 {Reference(embedded)} >>");
        var descendant = file.Add(
            $"<< /Type /Font /Subtype /CIDFontType2 /BaseFont {name} /CIDSystemInfo << /Registry (Adobe) /Ordering (Identity) /Supplement 0 >> "
            + $"/FontDescriptor {Reference(descriptor)} /CIDToGIDMap /Identity /W [0 [{widths}]] >>");
        file.Write(
            number,
            $"<< /Type /Font /Subtype /Type0 /BaseFont {name} /Encoding /Identity-H /DescendantFonts [{Reference(descendant)}] /ToUnicode {Reference(toUnicode)} >>");
    }

    private int Code(Rune rune, string sheet)
    {
        if (!_codes.TryGetValue(rune, out var code))
        {
            _characters.Add(rune);
            code = _characters.Count;
            _codes.Add(rune, code);
            if (_font.GlyphOf(rune) == 0 || rune == Rune.ReplacementChar || NeedsShaping(rune))
            {
                _missing.Add(new MissingGlyph(rune, sheet));
            }
        }

        return code;
    }

    /// <summary>Hebrew to the Arabic supplements and their presentation forms: written from right to left, which nothing here does.</summary>
    private static bool NeedsShaping(Rune rune) => rune.Value is (>= 0x0590 and <= 0x08FF) or (>= 0xFB1D and <= 0xFDFF) or (>= 0xFE70 and <= 0xFEFF);

    private double Share(int units) => 1000.0 * units / _font.UnitsPerEm;

    /// <summary>Six capitals that name the subset (9.6.4): a hash of its characters.</summary>
    private string Tag()
    {
        var hash = SHA256.HashData(Encoding.UTF8.GetBytes(string.Concat(_characters)));
        return string.Concat(hash.Take(6).Select(value => (char)('A' + (value % 26))));
    }

    private string ToUnicode()
    {
        var lines = _characters.Select((rune, i) => string.Create(
            CultureInfo.InvariantCulture,
            $"<{i + 1:X4}> <{Convert.ToHexString(Encoding.BigEndianUnicode.GetBytes(rune.ToString()))}>\n"));
        var blocks = lines.Chunk(MostInBlock).Select(block => $"{Number(block.Length)} beginbfchar\n{string.Concat(block)}endbfchar\n");
        return "/CIDInit /ProcSet findresource begin\n12 dict begin\nbegincmap\n"
            + "/CIDSystemInfo << /Registry (Adobe) /Ordering (UCS) /Supplement 0 >> def\n/CMapName /Adobe-Identity-UCS def\n/CMapType 2 def\n"
            + "1 begincodespacerange\n<0000> <FFFF>\nendcodespacerange\n"
            + string.Concat(blocks)
            + "endcmap\nCMapName currentdict /CMap defineresource pop\nend\nend\n";
    }
}
