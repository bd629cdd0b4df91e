using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Text.RegularExpressions;
using IfcCourser.Output.Pdf;
using IfcCourser.Output.Sheets;

namespace IfcCourser.Output.Tests.Support;

/// <summary>A written file read back: its objects by number as the table of places leads to them.</summary>
internal sealed partial record PdfReading(byte[] Bytes, IReadOnlyDictionary<int, string> Objects, IReadOnlyList<MissingGlyph> Missing)
{
    public static PdfSet Set { get; } = new("Öl / Юг", "Author", "2026-03-01T14:05:06");

    /// <summary>Dictionaries of the pages in their order.</summary>
    public IReadOnlyList<string> Pages => [.. Reference().Matches(Value(Single("/Type /Pages"), "Kids")).Select(kid => Objects[Number(kid)])];

    public string Info => Objects[Number(Reference().Match(Trailer[Trailer.IndexOf("/Info", StringComparison.Ordinal)..]))];

    public string Trailer => Latin(Bytes)[Latin(Bytes).LastIndexOf("trailer", StringComparison.Ordinal)..];

    public static PdfReading Of(params Sheet[] sheets) => Of([.. sheets.Select(sheet => new PdfPage(sheet, null))]);

    public static PdfReading Of(IReadOnlyList<PdfPage> pages)
    {
        using var stream = new MemoryStream();
        var missing = PdfWriter.Write(Set, pages, stream);
        var bytes = stream.ToArray();
        var text = Latin(bytes);
        var table = int.Parse(StartOfTable().Match(text).Groups["at"].Value, CultureInfo.InvariantCulture);
        var objects = new Dictionary<int, string>();
        var lines = text[table..].Split('\n');
        Assert.Equal("xref", lines[0]);
        for (var number = 1; number < int.Parse(lines[1].Split(' ')[1], CultureInfo.InvariantCulture); number++)
        {
            // ISO 32000-1, 7.5.4: entries of 20 bytes, the end of line among them.
            Assert.Matches("^[0-9]{10} 00000 n $", lines[number + 2]);
            var place = int.Parse(lines[number + 2][..10], CultureInfo.InvariantCulture);
            var head = string.Create(CultureInfo.InvariantCulture, $"{number} 0 obj\n");
            Assert.Equal(head, text.Substring(place, head.Length));
            objects.Add(number, text[(place + head.Length)..text.IndexOf("\nendobj", place, StringComparison.Ordinal)]);
        }

        return new PdfReading(bytes, objects, missing);
    }

    public string Single(string part) => Objects.Values.Single(value => value.Contains(part, StringComparison.Ordinal));

    public IEnumerable<int> References() => Objects.Values.Select(value => value.Split("stream\n")[0])
        .SelectMany(value => Reference().Matches(value)).Select(match => Number(match));

    /// <summary>The object that an entry of a dictionary leads to.</summary>
    public string Follow(string dictionary, string key) =>
        Objects[int.Parse(Regex.Match(dictionary, $"/{key} ([0-9]+) 0 R", RegexOptions.None, TimeSpan.FromSeconds(1)).Groups[1].Value, CultureInfo.InvariantCulture)];

    /// <summary>A page's operators.</summary>
    public string Content(int page) => Latin(Unpacked(Follow(Pages[page], "Contents")));

    /// <summary>The texts a page shows, as the font's table of characters tells them.</summary>
    public IEnumerable<string> Texts(int page)
    {
        var toUnicode = Latin(Unpacked(Follow(Single("/Type0"), "ToUnicode")));
        var characters = Mapping().Matches(toUnicode).ToDictionary(
            match => match.Groups["code"].Value,
            match => Encoding.BigEndianUnicode.GetString(Convert.FromHexString(match.Groups["text"].Value)),
            StringComparer.Ordinal);
        return Shown().Matches(Content(page)).Select(match => string.Concat(match.Groups["codes"].Value.Chunk(4).Select(code => characters[new string(code)])));
    }

    /// <summary>The embedded font program.</summary>
    public byte[] FontProgram() => Unpacked(Follow(Single("/FontDescriptor /FontName"), "FontFile2"));

    /// <summary>An entry in brackets or a text string of a dictionary.</summary>
    public static string Value(string dictionary, string key)
    {
        var found = Regex.Match(dictionary, $@"/{key} (?:\[(?<value>[^]]*)\]|<FEFF(?<hex>[0-9A-F]*)>)", RegexOptions.None, TimeSpan.FromSeconds(1));
        return found.Groups["hex"].Success ? Encoding.BigEndianUnicode.GetString(Convert.FromHexString(found.Groups["hex"].Value)) : found.Groups["value"].Value;
    }

    private static byte[] Unpacked(string value)
    {
        var start = value.IndexOf("stream\n", StringComparison.Ordinal) + "stream\n".Length;
        using var packed = new ZLibStream(new MemoryStream(Encoding.Latin1.GetBytes(value[start..^"\nendstream".Length])), CompressionMode.Decompress);
        using var bytes = new MemoryStream();
        packed.CopyTo(bytes);
        return bytes.ToArray();
    }

    private static string Latin(byte[] bytes) => Encoding.Latin1.GetString(bytes);

    private static int Number(Match match) => int.Parse(match.Groups["number"].Value, CultureInfo.InvariantCulture);

    [GeneratedRegex("(?<number>[0-9]+) 0 R", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Reference();

    [GeneratedRegex("startxref\n(?<at>[0-9]+)\n%%EOF\n$", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex StartOfTable();

    [GeneratedRegex("^<(?<code>[0-9A-F]{4})> <(?<text>[0-9A-F]+)>$", RegexOptions.ExplicitCapture | RegexOptions.Multiline, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Mapping();

    [GeneratedRegex("<(?<codes>[0-9A-F]*)> Tj", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Shown();
}
