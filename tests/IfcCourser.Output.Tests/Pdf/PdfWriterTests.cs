using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using IfcCourser.Output.Pdf;
using IfcCourser.Output.Sheets;
using IfcCourser.Output.Tests.Support;

namespace IfcCourser.Output.Tests.Pdf;

public static class PdfWriterTests
{
    private static readonly PdfReading _metric = PdfReading.Of([.. MetricSheets()]);

    /// <summary>Pens that print, with width (hundredths of a millimetre), lightness and dashes (tenths of a millimetre) worked from the pen table's text.</summary>
    public static TheoryData<Pen, string> Strokes => new()
    {
        { Pen.OuterEdge, "0.7 w [] 0 d 0 G" },
        { Pen.WholeBlock, "0.18 w [] 0 d 0 G" },
        { Pen.CutHatch, "0.13 w [] 0 d 0.35 G" },
        { Pen.Core, "0.35 w [9 1.2 0.2 1.2] 0 d 0 G" },
        { Pen.DesignedJamb, "0.35 w [2.5 1.25] 0 d 0 G" },
        { Pen.LevelLine, "0.35 w [6 1.5] 0 d 0 G" },
    };

    [Fact]
    public static void Every_item_matches_the_reviewed_page_in_every_culture()
    {
        var written = Cultures.Each(() => PdfReading.Of(EveryItem.Sheet));
        Assert.All(written, file => Assert.Equal(written[0].Bytes, file.Bytes));
        var drawn = Lowering.Lower(EveryItem.Sheet).OfType<TextItem>().Where(text => EveryItem.Sheet.Pens[text.Pen].IsPrinted).Select(text => text.Text);
        Assert.All(written, file => Assert.Equal(drawn, file.Texts(0), StringComparer.Ordinal));
        Golden.Matches("every-item.pdf-page", Encoding.ASCII.GetBytes(written[0].Content(0)));
    }

    [Theory]
    [MemberData(nameof(Sheets.WallSheetTests.Walls), MemberType = typeof(Sheets.WallSheetTests))]
    public static void Says_every_text_of_the_sheet(string wall)
    {
        var sheet = Samples.Sheets[wall].Sheet;
        Assert.Equal(Lowering.Lower(sheet).OfType<TextItem>().Select(text => text.Text), PdfReading.Of(sheet).Texts(0), StringComparer.Ordinal);
    }

    [Fact]
    public static void Every_reference_leads_to_an_object_and_every_object_is_used()
    {
        var root = int.Parse(_metric.Trailer.Split("/Root ")[1].Split(' ')[0], CultureInfo.InvariantCulture);
        var info = int.Parse(_metric.Trailer.Split("/Info ")[1].Split(' ')[0], CultureInfo.InvariantCulture);
        Assert.Equal(_metric.Objects.Keys.Order(), _metric.References().Append(root).Append(info).Distinct().Order());
    }

    [Fact]
    public static void Pages_have_the_true_size_of_their_sheets()
    {
        // A3 landscape in points of 1/72 in: 420 and 297 mm by 72 / 25.4.
        var sheet = EveryItem.Sheet with { Paper = PaperSize.Iso[0] };
        Assert.Equal("0 0 1190.551 841.89", PdfReading.Value(PdfReading.Of(sheet).Pages[0], "MediaBox"));
    }

    /// <summary>7112 mm are 20160 points, more than the 14,400 units that a page may have; in units of two points they are 10080.</summary>
    [Fact]
    public static void Longer_pages_count_in_larger_units()
    {
        var file = PdfReading.Of(EveryItem.Sheet with { Paper = new PaperSize("a roll", 7112, 914.4) });
        Assert.Equal("0 0 10080 1296", PdfReading.Value(file.Pages[0], "MediaBox"));
        Assert.Contains("/UserUnit 2 ", file.Pages[0], StringComparison.Ordinal);
        Assert.StartsWith("1.41732283 0 0 1.41732283 0 0 cm", file.Content(0), StringComparison.Ordinal);
    }

    [Fact]
    public static void Pages_are_labelled_with_their_sheets_numbers() => Assert.Equal(
        MetricSheets().Select(sheet => sheet.Title.IdentificationNumber),
        PdfReading.Value(_metric.Single("/Type /Catalog"), "Nums").Split("/P ")[1..].Select(label => PdfReading.Value("/P " + label, "P")),
        StringComparer.Ordinal);

    [Fact]
    public static void Bookmarks_stand_under_their_sections_and_without_one_on_their_own()
    {
        var sheets = new[] { ("a", "Upper"), ("b", null), ("c", "Ground"), ("d", "Upper"), ("e", null) }
            .Select(entry => new PdfPage(EveryItem.Sheet with { Name = entry.Item1 }, entry.Item2));
        var file = PdfReading.Of([.. sheets]);
        Assert.Equal("Upper(a d) b Ground(c) e", Tree(file, file.Single("/Type /Outlines")));
        Assert.Contains("/Count 7", file.Single("/Type /Outlines"), StringComparison.Ordinal);
    }

    [Fact]
    public static void Bookmarks_lead_to_their_sheets()
    {
        var bookmarks = _metric.Objects.Values.Where(value => value.StartsWith("<< /Title <FEFF", StringComparison.Ordinal) && value.Contains("/Dest", StringComparison.Ordinal));
        var pages = MetricSheets().Select(sheet => sheet.Name).ToArray();
        Assert.All(bookmarks, bookmark =>
        {
            var page = int.Parse(PdfReading.Value(bookmark, "Dest").Split(' ')[0], CultureInfo.InvariantCulture);
            Assert.Equal(_metric.Pages[Array.IndexOf(pages, PdfReading.Value(bookmark, "Title"))], _metric.Objects[page]);
        });
    }

    [Fact]
    public static void Says_what_it_is_and_when_but_never_the_time_of_writing()
    {
        Assert.Equal(PdfReading.Set.Title, PdfReading.Value(_metric.Info, "Title"));
        Assert.Equal(PdfReading.Set.Author, PdfReading.Value(_metric.Info, "Author"));
        Assert.Contains("/CreationDate (D:20260301140506) /ModDate (D:20260301140506)", _metric.Info, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("2026-03-01", "(D:20260301000000)")]
    [InlineData("2026-03-01T14:05:06+02:00", "(D:20260301140506)")]
    [InlineData("2026-03-01T", "(D:20260301000000)")]
    [InlineData("1 March", null)]
    [InlineData("", null)]
    public static void Dates_are_those_of_the_standard(string iso, string? date) => Assert.Equal(date, PdfSyntax.Date(iso));

    [Fact]
    public static void Accents_and_Cyrillic_are_in_the_font() =>
        Assert.Empty(PdfReading.Of(Saying("Öl é ß ñ ł ő ş ğ ž Юг Ґ Ђ Ελ ½ ± Ø ≤ → ″")).Missing);

    [Fact]
    public static void What_the_font_lacks_is_told_once_drawn_as_a_box_and_still_found()
    {
        var file = PdfReading.Of(Saying("漢 Nord 漢 𓀀"), Saying("字") with { Name = "Second" });
        Assert.Equal("漢 Every item, Öl / Юг|𓀀 Every item, Öl / Юг|字 Second", string.Join('|', file.Missing.Select(glyph => $"{glyph.Character} {glyph.Sheet}")));
        Assert.Equal("漢 Nord 漢 𓀀", file.Texts(0).Single());
    }

    [Theory]
    [InlineData("דרום")]
    [InlineData("جنوب")]
    [InlineData("\uFFFD")]
    public static void Letters_of_another_direction_and_of_broken_texts_are_told(string text) =>
        Assert.Equal(text.EnumerateRunes().Distinct(), PdfReading.Of(Saying(text)).Missing.Select(glyph => glyph.Character));

    [Theory]
    [MemberData(nameof(Strokes))]
    public static void Lines_have_the_width_dashes_and_grey_of_their_pens(Pen pen, string operators)
    {
        var content = PdfReading.Of(Bare(new LineItem(pen, new Point(1, 2), new Point(3, 4)))).Content(0);
        Assert.EndsWith($"{operators}\n1 2 m\n3 4 l\nS\n", content, StringComparison.Ordinal);
    }

    [Fact]
    public static void What_does_not_print_is_not_drawn() => Assert.Equal(
        PdfReading.Of(Bare()).Bytes, PdfReading.Of(Bare(new LineItem(Pen.NotPrinted, new Point(1, 1), new Point(2, 2)))).Bytes);

    [Theory]
    [InlineData(0, 360)]
    [InlineData(30, 300)]
    [InlineData(-20, 25)]
    public static void Arcs_keep_to_their_circle(double start, double end)
    {
        var arc = new ArcItem(Pen.Text, new Point(100, 70), 50, start, end);
        var content = PdfReading.Of(Bare(arc)).Content(0);
        var from = new Point(double.NaN, double.NaN);
        foreach (var numbers in content.Split('\n').Where(line => line.EndsWith(" m", StringComparison.Ordinal) || line.EndsWith(" c", StringComparison.Ordinal))
            .Select(line => line.Split(' ')[..^1].Select(number => double.Parse(number, CultureInfo.InvariantCulture)).ToArray()))
        {
            if (numbers.Length == 6)
            {
                // The middle and the quarters of a cubic curve, by its definition.
                Point[] p = [from, new(numbers[0], numbers[1]), new(numbers[2], numbers[3]), new(numbers[4], numbers[5])];
                Assert.All([0.25, 0.5, 0.75], t => Assert.InRange(Distance(At(p, t), arc.Centre), 49.985, 50.015));
            }

            from = new Point(numbers[^2], numbers[^1]);
        }

        Assert.InRange(Distance(from, arc.PointAt(end)), 0, 0.001);
    }

    private static double Distance(Point a, Point b) => Math.Sqrt(((a - b).X * (a - b).X) + ((a - b).Y * (a - b).Y));

    private static Point At(Point[] p, double t) =>
        (p[0] * Math.Pow(1 - t, 3)) + (p[1] * (3 * t * (1 - t) * (1 - t))) + (p[2] * (3 * t * t * (1 - t))) + (p[3] * Math.Pow(t, 3));

    private static string Tree(PdfReading file, string parent)
    {
        var parts = new List<string>();
        for (var item = file.Follow(parent, "First"); ; item = file.Follow(item, "Next"))
        {
            parts.Add(PdfReading.Value(item, "Title") + (item.Contains("/First", StringComparison.Ordinal) ? $"({Tree(file, item)})" : string.Empty));
            if (!item.Contains("/Next", StringComparison.Ordinal))
            {
                return string.Join(' ', parts);
            }
        }
    }

    private static Sheet Saying(string text) => Bare(new TextItem(Pen.Text, new Point(10, 10), text, 3));

    private static Sheet Bare(params ImmutableArray<SheetItem> items) => EveryItem.Sheet with { Views = [], Items = items };

    private static IEnumerable<Sheet> MetricSheets() => Samples.Metric.Walls.Select(wall => Samples.Sheets[wall.Identity.Name!].Sheet);
}
