using IfcCourser.Catalogs;
using IfcCourser.Units;

namespace IfcCourser.Tests.Catalogs;

/// <summary>Built-in values against published ones and arithmetic done outside this program.</summary>
public sealed class BuiltInCatalogsTests
{
    [Fact]
    public void Every_built_in_catalog_reads_and_is_called_what_it_is_listed_as() =>
        Assert.All(BuiltInCatalogs.Names, name => Assert.Equal(name, BuiltInCatalogs.Get(name).Name));

    /// <summary>Out-to-out of n units and n - 1 joints: IMI Technology Brief 1.1/01.02 (2010) sizes 23 7/8 + 1/8 in; arithmetic.</summary>
    [Theory]
    [InlineData("aac-in", 2, "47 7/8 in")]
    [InlineData("aac-in", 5, "119 7/8 in")]
    [InlineData("aac-in", 10, "239 7/8 in")]
    [InlineData("aac-in", 20, "479 7/8 in")]
    [InlineData("aac-600", 10, "5999 mm")]
    public void A_row_of_units_measures_what_its_sizes_add_up_to(string catalog, int units, string length)
    {
        var c = BuiltInCatalogs.Get(catalog);
        Assert.Equal(Parsed(length), (c.UnitLength * units) + (c.HeadJoint.Nominal * (units - 1)));
    }

    /// <summary>The same brief: twelve courses of 7 7/8 in on a 1/2 in bed, with the thickest and the thinnest thin joint (ASTM C1660-09 3.2.1).</summary>
    [Fact]
    public void Twelve_inch_courses_differ_by_eleven_sixteenths_between_thick_and_thin_joints()
    {
        var c = BuiltInCatalogs.Get("aac-in");
        var thick = Height(c, 12, c.BedJoint.Max);
        var thin = Height(c, 12, c.BedJoint.Min);

        Assert.Equal(Parsed("96 3/8 in"), thick);
        Assert.Equal(Parsed("95 11/16 in"), thin);
        Assert.Equal(Parsed("11/16 in"), thick - thin);
    }

    /// <summary>
    /// TMS 602 3.3 F.1 in trade texts (checkvalues.csv T-001, T-002): bed joints of 3/8 in. between courses within 1/8 in. of that, head joints no more than 1/4 in.
    /// narrower and 3/8 in. wider.
    /// </summary>
    [Fact]
    public void Mortared_joints_keep_to_their_tolerances()
    {
        var c = BuiltInCatalogs.Get("block-in");
        Assert.Equal(Parsed("3/8 in"), c.BedJoint.Nominal);
        Assert.Equal(Parsed("1/4 in"), c.BedJoint.Min);
        Assert.Equal(Parsed("1/2 in"), c.BedJoint.Max);
        Assert.True(c.HeadJoint.Min >= Parsed("1/8 in") && c.HeadJoint.Min <= c.HeadJoint.Nominal);
        Assert.True(c.HeadJoint.Max >= c.HeadJoint.Nominal && c.HeadJoint.Max <= Parsed("3/4 in"));
    }

    /// <summary>Eleven courses of 249 mm with 1 mm joints on a 20 mm bed; arithmetic.</summary>
    [Theory]
    [InlineData("aac-mm")]
    [InlineData("aac-600")]
    public void Eleven_metric_courses_are_2769_mm_high(string catalog)
    {
        var c = BuiltInCatalogs.Get(catalog);
        Assert.Equal(Length.FromMm(2769), Height(c, 11, c.BedJoint.Nominal));
    }

    /// <summary>DIN 4172 with 10 mm joints: an opening measures n * 125 + 10, a pier n * 125 - 10 (table read in a trade text).</summary>
    [Theory]
    [InlineData(8, 1010, 990)]
    [InlineData(9, 1135, 1115)]
    [InlineData(11, 1385, 1365)]
    [InlineData(14, 1760, 1740)]
    [InlineData(16, 2010, 1990)]
    [InlineData(20, 2510, 2490)]
    public void Octametric_openings_and_piers_are_those_of_the_standard(int n, int opening, int pier)
    {
        var c = BuiltInCatalogs.Get("octametric");
        Assert.Equal(Length.FromMm(opening), (c.Module * n) + c.HeadJoint.Nominal);
        Assert.Equal(Length.FromMm(pier), (c.Module * n) - c.HeadJoint.Nominal);
        Assert.Equal(c.Module * 2, c.Pitch);
    }

    /// <summary>DIN 4172: the module is 125 mm; n = 1 to 40, by its rule.</summary>
    [Fact]
    public void Octametric_sizes_follow_the_rule_over_the_whole_table()
    {
        var c = BuiltInCatalogs.Get("octametric");
        Assert.All(Enumerable.Range(1, 40), n =>
        {
            Assert.Equal((125 * n) + 10, ((c.Module * n) + c.HeadJoint.Nominal).Mm);
            Assert.Equal((125 * n) - 10, ((c.Module * n) - c.HeadJoint.Nominal).Mm);
        });
    }

    /// <summary>Door heights in courses of 8 in blocks, 6'-8" and 7'-4": trade text on sizing metal door openings, read.</summary>
    [Theory]
    [InlineData(10, "6 ft 8 in")]
    [InlineData(11, "7 ft 4 in")]
    public void Door_heights_are_whole_courses_of_blocks(int courses, string height) =>
        Assert.Equal(Parsed(height), BuiltInCatalogs.Get("block-in").CoursePitch * courses);

    /// <summary>Modular opening widths 2'-8", 3'-4", 4'-0": the same text.</summary>
    [Theory]
    [InlineData("2 ft 8 in", 4)]
    [InlineData("3 ft 4 in", 5)]
    [InlineData("4 ft", 6)]
    public void Modular_widths_are_whole_modules(string width, int modules) =>
        Assert.Equal(Parsed(width), BuiltInCatalogs.Get("block-in").Module * modules);

    /// <summary>A 10 x 100 ft wall of 8 x 16 in blocks takes 1125: NCMA TEK 14 (1969) p. 22, 112.5 in 100 ft2.</summary>
    [Fact]
    public void A_wall_of_10_by_100_feet_takes_1125_blocks()
    {
        var c = BuiltInCatalogs.Get("block-in");
        Assert.Equal(1125, Parsed("100 ft").Inches * Parsed("10 ft").Inches / (c.Pitch.Inches * c.CoursePitch.Inches), 6);
    }

    /// <summary>Common practice, no source: an 8 x 24 in face is half as large again as an 8 x 16 in one.</summary>
    [Fact]
    public void An_aerated_face_is_half_as_large_again_as_a_block_face()
    {
        var (aerated, block) = (BuiltInCatalogs.Get("aac-in"), BuiltInCatalogs.Get("block-in"));
        Assert.Equal(1.5, aerated.Pitch.Inches * aerated.CoursePitch.Inches / (block.Pitch.Inches * block.CoursePitch.Inches), 6);
    }

    /// <summary>Common practice, no source: at the lowest class, 290 psi (IMI Technology Brief 1.1/01.02), one unit carries over 20 tons on its 8 in width.</summary>
    [Fact]
    public void One_unit_of_the_lowest_class_carries_over_20_tons()
    {
        const double Psi = 290;
        const double PoundsInATon = 2000;
        var c = BuiltInCatalogs.Get("aac-in");
        var width = c.Widths.Single(w => w.Nominal == Parsed("8 in")).Actual;
        Assert.True(Psi * width.Inches * c.UnitLength.Inches / PoundsInATon > 20);
    }

    /// <summary>112.5 units in 100 ft2 of wall: NCMA TEK 14 (1969) p. 22; 0.75 in 1 ft2 of a 24 x 8 in face, 6.4 and 6.6667 in 1 m2: arithmetic.</summary>
    [Theory]
    [InlineData("block-in", 112.5, 100 * 0.09290304)]
    [InlineData("aac-in", 75, 100 * 0.09290304)]
    [InlineData("aac-mm", 6.4, 1)]
    [InlineData("aac-600", 20.0 / 3, 1)]
    public void Units_per_area_follow_from_the_pitch(string catalog, double units, double squareMetres)
    {
        var c = BuiltInCatalogs.Get(catalog);
        Assert.Equal(units, squareMetres * 1e6 / (c.Pitch.Mm * c.CoursePitch.Mm), 6);
    }

    [Theory]
    [InlineData("aac-in", "*porenbeton", true)]
    [InlineData("octametric", "газобетон", true)]
    [InlineData("aac-mm", "studs", false)]
    public void Catalogs_without_words_of_their_own_take_the_common_ones(string catalog, string word, bool masonry)
    {
        var c = BuiltInCatalogs.Get(catalog);
        Assert.Equal(masonry, c.MasonryWords.Contains(word, StringComparer.Ordinal));
        Assert.Equal(!masonry, c.OtherWords.Contains(word, StringComparer.Ordinal));
    }

    private static Length Height(Catalog c, int courses, Length joint) =>
        c.LevellingBed.Nominal + (c.UnitHeight * courses) + (joint * (courses - 1));

    private static Length Parsed(string text)
    {
        Assert.True(LengthText.TryParse(text, out var length, out var problem), problem);
        return length;
    }
}
