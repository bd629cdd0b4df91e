using IfcCourser.Catalogs;
using IfcCourser.Findings;
using IfcCourser.Modules;
using IfcCourser.Rules;
using IfcCourser.Tests.Support;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Tests.Modules;

/// <summary>Lengths on the module, worked by hand: a free run measures n p - j, with one end against a wall's face n p, with both n p + j.</summary>
public sealed class LengthChecksTests
{
    /// <summary>aac-in: p = 8, j = 1/8 in, joints 1/16 to 1/8. 40 ft = 480 = 60 x 8: 1/8 more than 479 7/8, and joints can't grow over 1/8.</summary>
    [Fact]
    public void An_inch_wall_drawn_at_its_nominal_length_is_named_with_its_true_one()
    {
        var finding = Assert.Single(Findings("aac-in", "us", Length.FromInches(480), EndKind.Free));
        Assert.Equal("The wall is 40'-0\" long, its nominal length: masonry ends a joint of 1/8\" before that, at 39'-11 7/8\"", finding.Message);
        Assert.Empty(Findings("aac-in", "us", Length.FromInches(479.875), EndKind.Free));
    }

    /// <summary>
    /// aac-mm: p = 125, j = 1, joints 0 to 3 mm. 5060 = 40 x 125 - 1 + 61: 4999 or 5124, 61 or 64 away; 7 joints (5060 / 625 = 8 units) take 14 mm at most.
    /// 5012 is 13 over 4999: 7 joints of 3 in place of 1 take 14. Against one wall's face 5000 is on the module, 5061 is not.
    /// </summary>
    [Theory]
    [InlineData(5060, EndKind.Free, "4999 mm or 5124 mm")]
    [InlineData(5012, EndKind.Free, null)]
    [InlineData(5000, EndKind.Tee, null)]
    [InlineData(5061, EndKind.Tee, "5000 mm or 5125 mm")]
    [InlineData(5061, EndKind.Continued, null)]
    public void A_length_that_joints_do_not_take_is_named_with_the_nearest_ones(double length, EndKind end, string? named)
    {
        var findings = Findings("aac-mm", "none", Length.FromMm(length), end);
        Assert.Equal(named is null ? 0 : 1, findings.Count);
        Assert.All(findings, finding => Assert.Contains($"off the module: {named} stand on it", finding.Message, StringComparison.Ordinal));
    }

    /// <summary>
    /// The same limits to the millimetre: 5012 and 5013 are 13 and 14 over 4999, which 7 joints grown by 2 mm take, 15 are too many; 5117 is 7 under 5124, which 7 joints
    /// of 0 mm take, 8 are too many. Against two faces 5001 is on the module. Under a module there is no length but 0.
    /// </summary>
    [Theory]
    [InlineData(5012, EndKind.Free, EndKind.Free, 4999, 5124, true)]
    [InlineData(5013, EndKind.Free, EndKind.Corner, 4999, 5124, true)]
    [InlineData(5014, EndKind.Free, EndKind.Free, 4999, 5124, false)]
    [InlineData(5117, EndKind.Free, EndKind.Free, 4999, 5124, true)]
    [InlineData(5116, EndKind.Free, EndKind.Free, 4999, 5124, false)]
    [InlineData(4999, EndKind.Free, EndKind.Free, 4999, 4999, true)]
    [InlineData(5000, EndKind.Tee, EndKind.Free, 5000, 5000, true)]
    [InlineData(5061, EndKind.Free, EndKind.Tee, 5000, 5125, false)]
    [InlineData(5001, EndKind.Tee, EndKind.Cross, 5001, 5001, true)]
    [InlineData(100, EndKind.Free, EndKind.Free, 0, 124, false)]
    public void Both_lengths_on_the_module_are_told_and_whether_joints_take_the_rest(double length, EndKind start, EndKind end, double under, double over, bool isTaken)
    {
        var check = LengthChecks.Of(Between(length, start, end), _millimetres)!;
        Assert.Equal((length, under, over, isTaken), (check.Length.Mm, check.Under.Mm, check.Over.Mm, check.IsTaken));
    }

    [Theory]
    [InlineData(EndKind.Continued)]
    [InlineData(EndKind.MovementJoint)]
    public void A_wall_that_goes_on_or_ends_on_a_slant_has_no_length_of_its_own(EndKind kind)
    {
        var wall = Between(5000, EndKind.Free, EndKind.Free);
        Wall[] others =
        [
            Between(5000, kind, EndKind.Free), Between(5000, EndKind.Free, kind),
            wall with { Start = wall.Start with { Slant = Length.FromMm(1) } }, wall with { End = wall.End with { Slant = Length.FromMm(-1) } },
        ];
        Assert.NotNull(LengthChecks.Of(wall, _millimetres));
        Assert.All(others, other => Assert.Null(LengthChecks.Of(other, _millimetres)));
    }

    private static readonly LayoutRules _millimetres = LayoutRules.For(BuiltInRuleSets.Get("none"), BuiltInCatalogs.Get("aac-mm"), OpeningPolicy.Keep);

    private static Wall Between(double length, EndKind start, EndKind end) =>
        WallSketch.Straight(Length.FromMm(length), Length.FromMm(2519), Length.FromMm(240)) with { Start = new WallEnd(start, []), End = new WallEnd(end, []) };

    private static List<Finding> Findings(string catalog, string rules, Length length, EndKind end)
    {
        var wall = WallSketch.Straight(length, Length.FromMm(2519), Length.FromInches(7.875)) with { End = new WallEnd(end, []) };
        var layout = WallSketch.LayOut(wall, LayoutRules.For(BuiltInRuleSets.Get(rules), BuiltInCatalogs.Get(catalog), OpeningPolicy.Keep));
        return [.. layout.Findings.Where(finding => finding.Code == FindingCodes.WallLengthOffModule)];
    }
}
