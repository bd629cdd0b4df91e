using IfcCourser.Catalogs;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Tests.Rules;

/// <summary>Built-in rules against the published values they claim.</summary>
public sealed class BuiltInRuleSetsTests
{
    [Fact]
    public void Every_built_in_rule_set_reads_and_is_called_what_it_is_listed_as() =>
        Assert.All(BuiltInRuleSets.Names, name => Assert.Equal(name, BuiltInRuleSets.Get(name).Name));

    /// <summary>EN 1996-1-1:2005 8.1.4.1 (from memory): hu to 250 mm: max(0.4 hu, 40); above: max(0.2 hu, 100).</summary>
    [Theory]
    [InlineData(65, 40)]
    [InlineData(90, 40)]
    [InlineData(100, 40)]
    [InlineData(199, 79.6)]
    [InlineData(200, 80)]
    [InlineData(215, 86)]
    [InlineData(248, 99.2)]
    [InlineData(249, 99.6)]
    [InlineData(250, 100)]
    [InlineData(300, 100)]
    [InlineData(400, 100)]
    [InlineData(499, 100)]
    [InlineData(500, 100)]
    [InlineData(623, 124.6)]
    public void European_overlap_follows_the_unit_height(int height, double overlap) =>
        Assert.Equal(overlap, Overlap("eu", "aac-mm", Length.FromMm(height)));

    /// <summary>German national annex, max(0.4 hu, 45): worked values of a trade text, printed to whole or half tens (71 and 113: 45, 238: 95, 249: 100).</summary>
    [Theory]
    [InlineData(71, 45)]
    [InlineData(113, 45.2)]
    [InlineData(238, 95.2)]
    [InlineData(249, 99.6)]
    public void German_overlap_has_a_higher_floor(int height, double overlap) =>
        Assert.Equal(overlap, Overlap("de", "octametric", Length.FromMm(height)));

    /// <summary>Running bond, a quarter of the unit: Design of Reinforced Masonry Structures p. 367 (MSJC): 24 in gives 6, 16 in gives 4.</summary>
    [Theory]
    [InlineData("aac-in", 6)]
    [InlineData("block-in", 4)]
    public void American_overlap_is_a_quarter_of_the_unit(string catalog, int inches) =>
        Assert.Equal(Length.FromInches(inches), Applied("us", catalog).MinOverlap);

    /// <summary>Bar distances: TMS 402-16 7.3.2.3.1 (from memory): 8 in from ends, 16 in from jambs; 48 in apart: WAC 246-359-440 (3).</summary>
    [Fact]
    public void Only_the_american_set_asks_for_bars()
    {
        var bars = BuiltInRuleSets.Get("us").Bars!;
        Assert.Equal((8d, 16d, 48d), (bars.FromEnd.Largest.Inches, bars.FromJamb.Largest.Inches, bars.LargestSpacing.Inches));
        Assert.All(["eu", "de", "none"], name => Assert.Null(BuiltInRuleSets.Get(name).Bars));
    }

    /// <summary>
    /// Bond beams within 16 in of wall tops, 120 in apart at most, at openings with an extension of 24 in or 40 diameters: TMS 402-16
    /// 7.3.2.3.1 (from memory). The lap of a No. 4 bar of grade 60, 48 diameters: ACI 530 8.5.7 (checkvalues.csv R-LAP-4).
    /// </summary>
    [Fact]
    public void Only_the_american_set_asks_for_bond_beams()
    {
        var beams = BuiltInRuleSets.Get("us").BondBeams!;
        Assert.Equal((16d, 120d, 24d, 24d), (beams.TopWithin.Inches, beams.LargestSpacing!.Value.Inches, beams.Openings!.Extension.Inches, beams.Bars.Lap.Inches));
        Assert.True(beams.Openings.Extension >= Length.FromInches(40 * 0.5));
        Assert.All(["eu", "de", "none"], name => Assert.Null(BuiltInRuleSets.Get(name).BondBeams));
    }

    /// <summary>The table that the other files show as a comment reads as it stands.</summary>
    [Theory]
    [InlineData("eu")]
    [InlineData("de")]
    public void Bond_beams_are_added_by_taking_the_comment_away(string name)
    {
        var text = SettingsReader.BuiltInText(name)!;
        var start = text.IndexOf("# [bond-beams]", StringComparison.Ordinal);
        var set = RuleSetReader.Read(text[..start] + text[start..].Replace("# ", string.Empty, StringComparison.Ordinal), "mine.toml");
        Assert.Equal(Length.FromMm(4000), set.Value!.BondBeams!.LargestSpacing);
    }

    /// <summary>Third bond in an 8 in wall of 24 in units, half bond in a 12 in one; half bond where the thickness would leave too short a lap. Common practice, no source.</summary>
    [Theory]
    [InlineData("us", "aac-in", 7.875 * 25.4, 7.875 * 25.4)]
    [InlineData("us", "aac-in", 5.875 * 25.4, 12 * 25.4)]
    [InlineData("eu", "aac-mm", 365, 365)]
    [InlineData("eu", "aac-mm", 175, 312.5)]
    [InlineData("de", "octametric", 240, 125)]
    public void The_preferred_lap_follows_the_corner(string rules, string catalog, double thickness, double lap) =>
        Assert.Equal(lap, Applied(rules, catalog).PreferredLap(Length.FromMm(thickness)).Mm, 6);

    /// <summary>The longer of the catalog's and the rule set's least piece and bearing counts.</summary>
    [Theory]
    [InlineData("eu", "aac-mm", 100, 200)]
    [InlineData("de", "aac-mm", 115, 200)]
    [InlineData("de", "octametric", 115, 115)]
    [InlineData("none", "aac-600", 100, 200)]
    public void The_stricter_least_counts(string rules, string catalog, double piece, double bearing)
    {
        var applied = Applied(rules, catalog);
        Assert.Equal((piece, bearing), (applied.MinPiece.Mm, applied.LintelBearing.Mm));
    }

    private static LayoutRules Applied(string rules, string catalog) =>
        LayoutRules.For(BuiltInRuleSets.Get(rules), BuiltInCatalogs.Get(catalog), OpeningPolicy.Move);

    private static double Overlap(string rules, string catalog, Length height) =>
        BuiltInRuleSets.Get(rules).MinOverlap.For(BuiltInCatalogs.Get(catalog) with { UnitHeight = height }).Mm;
}
