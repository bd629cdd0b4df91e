using IfcCourser.Catalogs;

namespace IfcCourser.Tests.Catalogs;

public sealed class CatalogReaderTests
{
    private const string Good = """
        name = "mine"
        title = "A catalog of this test"
        source = "made up"
        units = "mm"
        [unit]
        length = "500 mm"
        height = "200 mm"
        part-lengths = ["245 mm"]
        other-heights = []
        widths = ["100 mm", { nominal = "200 mm", actual = "195 mm" }]
        [joints]
        head = { min = "0 mm", nominal = "2 mm", max = "3 mm" }
        bed = { min = "1 mm", nominal = "2 mm", max = "3 mm" }
        levelling-bed = { min = "10 mm", nominal = "20 mm", max = "30 mm" }
        [cutting]
        grid = "1 mm"
        kerf = "2 mm"
        least-piece = "100 mm"
        preferred-piece = "150 mm"
        [layout]
        module = "125 mm"
        least-pier = "249 mm"
        lintel-bearing = "200 mm"
        [[lintels]]
        name = "L1"
        kind = "solid"
        max-clear-span = "1 m"
        courses = 1
        """;

    [Fact]
    public void A_catalog_says_what_its_file_says()
    {
        var catalog = CatalogReader.Read(Good, "mine.toml").Value!;

        Assert.Equal("mine", catalog.Name);
        Assert.Equal(500, catalog.UnitLength.Mm);
        Assert.Equal(245, Assert.Single(catalog.PartLengths).Mm);
        Assert.Equal([(100d, 100d), (200d, 195d)], catalog.Widths.Select(width => (width.Nominal.Mm, width.Actual.Mm)));
        Assert.Null(catalog.LeastRip);
        Assert.Empty(catalog.Cores);
        var lintel = Assert.Single(catalog.Lintels);
        Assert.Equal(("L1", LintelKind.Solid, 1000d, 200d), (lintel.Name, lintel.Kind, lintel.MaxClearSpan.Mm, lintel.Height.Mm));
        Assert.Equal((1, null), (lintel.LoadClass, lintel.Bearing));
        Assert.Empty(lintel.Widths);
        Assert.Empty(lintel.Lengths);
    }

    /// <summary>Two courses of 200 mm and the 2 mm bed joint between them measure 402 mm.</summary>
    [Fact]
    public void A_lintel_says_what_it_is_made_for()
    {
        var text = Good.Replace(
            "courses = 1", "courses = 2\nload-class = 3\nbearing = \"150 mm\"\nwidths = [\"100 mm\", \"200 mm\"]\nlengths = [\"1.5 m\", \"1.2 m\"]", StringComparison.Ordinal);
        var lintel = Assert.Single(CatalogReader.Read(text, "mine.toml").Value!.Lintels);

        Assert.Equal((402d, 3, 150d), (lintel.Height.Mm, lintel.LoadClass, lintel.Bearing!.Value.Mm));
        Assert.Equal([100, 200], lintel.Widths.Select(width => width.Mm));
        Assert.Equal([1200, 1500], lintel.Lengths.Select(length => length.Mm));
    }

    [Fact]
    public void A_lintel_may_have_a_height_of_its_own() =>
        Assert.Equal(124, CatalogReader.Read(Good.Replace("courses = 1", "height = \"124 mm\"", StringComparison.Ordinal), "mine.toml").Value!.Lintels[0].Height.Mm);

    [Theory]
    [InlineData("length = \"500 mm\"", "lenght = \"500 mm\"", 6, "there is no key \"unit.lenght\". Did you mean \"length\"?")]
    [InlineData("length = \"500 mm\"", "length = \"500\"", 6, "unit.length: the length \"500\" has no unit")]
    [InlineData("length = \"500 mm\"", "length = 500", 6, "unit.length is not a length in quotes")]
    [InlineData("height = \"200 mm\"", "", 5, "the key \"unit.height\" is missing")]
    [InlineData("height = \"200 mm\"", "height = \"0 mm\"", 7, "unit.height must be more than nothing")]
    [InlineData("[\"245 mm\"]", "[\"500 mm\"]", 8, "unit.part-lengths must be more than nothing and shorter than the unit")]
    [InlineData("min = \"0 mm\", nominal = \"2 mm\"", "min = \"5 mm\", nominal = \"2 mm\"", 12, "joints.head must have 0 <= min <= nominal <= max")]
    [InlineData("actual = \"195 mm\"", "actual = \"205 mm\"", 10, "unit.widths.actual must not be more than the nominal width")]
    [InlineData("preferred-piece = \"150 mm\"", "preferred-piece = \"99 mm\"", 19, "cutting.preferred-piece must lie between")]
    [InlineData("kind = \"solid\"", "kind = \"wood\"", 26, "lintels.kind is \"wood\", which is none of solid, trough")]
    [InlineData("courses = 1", "courses = 0", 28, "lintels.courses must be a whole number from 1 to 10")]
    [InlineData("courses = 1", "courses = 1\nheight = \"124 mm\"", 29, "lintels.height and courses are both given")]
    [InlineData("courses = 1", "courses = 1\nwidths = [\"150 mm\"]", 29, "lintels.widths names a width that no unit of the catalog has")]
    [InlineData("courses = 1", "courses = 1\nload-class = 0", 29, "lintels.load-class must be a whole number from 1 to 9")]
    [InlineData("courses = 1", "courses = 1\nbearing = \"0 mm\"", 29, "lintels.bearing must be more than nothing")]
    [InlineData("courses = 1", "courses = 1\nlengths = [\"400 mm\"]", 29, "lintels.lengths must leave a span between the bearings")]
    [InlineData("units = \"mm\"", "units = mm", 4, "this is no valid TOML")]
    [InlineData("units = \"mm\"", "units = \"mm\"\nunits = \"mm\"", 5, "this is no valid TOML")]
    [InlineData("[layout]", "[words]\nmasonry = [\"block\", \"*\"]\nother = []\n[layout]", 21, "words.masonry must hold words of two letters or more")]
    [InlineData("[layout]", "[extra]\na = 1\n[layout]", 20, "there is no key \"extra\"")]
    [InlineData("[layout]", "[[troughs]]\nname = \"trough\"\nwidths = [\"150 mm\"]\nshell = \"40 mm\"\nbottom = \"50 mm\"\n[layout]", 22, "troughs.widths names a width that no unit of the catalog has")]
    [InlineData("[layout]", "[[troughs]]\nname = \"trough\"\nshell = \"100 mm\"\nbottom = \"50 mm\"\n[layout]", 22, "troughs.shell leaves no hollow in the narrowest width")]
    [InlineData("[layout]", "[[troughs]]\nname = \"trough\"\nshell = \"40 mm\"\nbottom = \"200 mm\"\n[layout]", 23, "troughs.bottom must be less than the unit's height")]
    public void A_fault_names_file_line_key_and_remedy(string replace, string with, int line, string what)
    {
        Assert.Contains(replace, Good, StringComparison.Ordinal);
        var fault = CatalogReader.Read(Good.Replace(replace, with, StringComparison.Ordinal), "mine.toml").Fault!;

        Assert.Equal(("mine.toml", line), (fault.File, fault.Line));
        Assert.Contains(what, fault.ToString(), StringComparison.Ordinal);
        Assert.NotEmpty(fault.Remedy);
    }

    /// <summary>Found by fuzzing: what a trough is measured by is missing.</summary>
    [Fact]
    public void A_catalog_with_troughs_and_no_width_is_a_fault_with_its_line()
    {
        var text = Good.Replace("[\"100 mm\", { nominal = \"200 mm\", actual = \"195 mm\" }]", "[]", StringComparison.Ordinal)
            + "\n[[troughs]]\nname = \"trough\"\nshell = \"40 mm\"\nbottom = \"50 mm\"\n";
        var fault = CatalogReader.Read(text, "mine.toml").Fault!;
        Assert.Equal(10, fault.Line);
        Assert.Contains("unit.widths must name at least one width", fault.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_mistyped_built_in_name_is_answered_with_the_nearest() =>
        Assert.Contains("Did you mean \"aac-mm\"?", CatalogReader.Load("acc-mm").Fault!.Remedy, StringComparison.Ordinal);

    [Fact]
    public void A_missing_file_is_a_fault_that_names_it()
    {
        var fault = CatalogReader.Load("nowhere/mine.toml").Fault!;
        Assert.Equal("nowhere/mine.toml", fault.File);
    }
}
