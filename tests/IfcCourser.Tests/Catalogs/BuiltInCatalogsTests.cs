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

    /// <summary>112.5 units in 100 ft2 of wall: NCMA TEK 14 (1969) p. 22; 75 for a 24 x 8 in face, 640 for 625 x 250 mm on 100 m2: arithmetic.</summary>
    [Theory]
    [InlineData("block-in", 112.5, 100 * 0.09290304)]
    [InlineData("aac-in", 75, 100 * 0.09290304)]
    [InlineData("aac-mm", 640, 100)]
    public void Units_per_area_follow_from_the_pitch(string catalog, double units, double squareMetres)
    {
        var c = BuiltInCatalogs.Get(catalog);
        Assert.Equal(units, squareMetres * 1e6 / (c.Pitch.Mm * c.CoursePitch.Mm), 6);
    }

    [Theory]
    [InlineData("aac-in", "Porenbeton", true)]
    [InlineData("octametric", "газобетон", true)]
    [InlineData("aac-mm", "stud", false)]
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
