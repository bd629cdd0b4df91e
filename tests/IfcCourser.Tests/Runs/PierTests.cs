using IfcCourser.Catalogs;
using IfcCourser.Findings;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Tests.Support;
using IfcCourser.Units;

namespace IfcCourser.Tests.Runs;

/// <summary>Piers that do not work, and the lengths that would. Octametric: units of 240 mm, pieces of 115, lap 95.2, least pier 240; module 125 with 10 mm joints.</summary>
public sealed class PierTests
{
    /// <summary>
    /// Between 240 and 335.2 mm (two pieces with 10 mm joints) no two courses lap: 240 or 335.2 mm would do; n 125 - 10 first
    /// bonds at 365 mm. 400 mm are too long for two pieces, too short for three: 394.8 or 430.4 mm, 490 on the module.
    /// </summary>
    [Theory]
    [InlineData(260, "240 mm or 335.2 mm would do, 365 mm on the module")]
    [InlineData(400, "394.8 mm or 430.4 mm would do, 490 mm on the module")]
    public void A_pier_that_no_courses_bond_names_lengths_that_would(double pier, string lengths)
    {
        var finding = LaidOut("octametric", "de", pier).Findings.Single(finding => finding.Code == FindingCodes.PierNotBondable);
        Assert.Contains(lengths, finding.Message, StringComparison.Ordinal);
        Assert.Equal("O1", finding.At!.Opening);
    }

    [Theory]
    [InlineData("octametric", "de", 240)]
    [InlineData("octametric", "de", 365)]
    [InlineData("octametric", "de", 490)]
    [InlineData("aac-mm", "eu", 260)]
    [InlineData("aac-mm", "eu", 650)]
    public void Piers_that_can_be_bonded_are_not_named(string catalog, string rules, double pier) =>
        Assert.DoesNotContain(LaidOut(catalog, rules, pier).Findings, finding => finding.Code == FindingCodes.PierNotBondable || finding.Code == FindingCodes.PierShort);

    /// <summary>180 mm: 60 more make the least pier of 240, which is 2 x 125 - 10.</summary>
    [Fact]
    public void A_short_pier_names_what_is_missing()
    {
        var finding = Assert.Single(LaidOut("octametric", "de", 180).Findings, finding => finding.Code == FindingCodes.PierShort);
        Assert.Contains("60 mm more would do, 240 mm is the next length on the module", finding.Message, StringComparison.Ordinal);
    }

    private static WallLayout LaidOut(string catalog, string rules, double pier) => WallSketch.LayOut(
        WallSketch.Straight(Length.FromMm(6000), Length.FromMm(2512), Length.FromMm(240), (1490, 2500, 1012, 2012), (2500 + pier, 3510 + pier, 1012, 2012)),
        LayoutRules.For(BuiltInRuleSets.Get(rules), BuiltInCatalogs.Get(catalog), OpeningPolicy.Keep));
}
