using IfcCourser.Catalogs;
using IfcCourser.Findings;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Tests.Support;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Tests.Runs;

/// <summary>What the job file has built in for others, in a wall of hollow blocks 20 ft by 8 ft with a door from 8 to 11 ft.</summary>
public sealed class EmbedTests
{
    private static readonly LayoutRules _rules = LayoutRules.For(BuiltInRuleSets.Get("us") with { MovementJoints = null }, BuiltInCatalogs.Get("block-in"), OpeningPolicy.Keep);

    private static readonly Wall _wall = WallSketch.Straight(Inches(239.625), Inches(96), Inches(7.625), (96 * 25.4, 132 * 25.4, 0, 80 * 25.4));

    private static readonly GivenEmbed _strap = new()
    {
        Kind = "strap",
        Size = "1 in",
        Note = "truss",
        At = Inches(30),
        Every = null,
        To = null,
        Height = Inches(50),
        Play = Length.Zero,
        Clear = Inches(2),
    };

    /// <summary>By hand: from 12 in on every 24 in, ten lie in 239 5/8 in; the last at 228 in. None is left out, for the top beam covers the wall.</summary>
    [Fact]
    public void Straps_in_the_top_beam_stand_at_their_spacing_clear_of_bars()
    {
        var wall = LayOut(_strap with { At = Inches(12), Every = Inches(24), Height = null, Play = Inches(4) });
        var beam = wall.BondBeams.MaxBy(beam => beam.Top)!;
        Assert.Equal(10, wall.Embeds.Length);
        Assert.All(wall.Embeds.Zip(Enumerable.Range(0, 10)), pair => Assert.InRange(Math.Abs((pair.First.At - Inches(12 + (24 * pair.Second))).Inches), 0, 4));
        Assert.All(wall.Embeds, embed => Assert.Equal((beam.Bottom + beam.Top) / 2, embed.Z));
        foreach (var embed in wall.Embeds)
        {
            var isNear = wall.Cores.Any(core => core.Bottom <= embed.Z && core.Top >= embed.Z && Length.Abs(core.At - embed.At) < Inches(2));
            Assert.Equal(isNear, wall.Findings.Any(finding => finding.Code == FindingCodes.EmbedNearBar && Length.Abs(finding.At!.S!.Value - embed.At) <= Inches(4)));
            Assert.False(isNear);
        }
    }

    [Fact]
    public void One_on_a_bar_is_named_and_moves_where_it_may()
    {
        var core = LayOut().Cores[1];
        var onBar = _strap with { At = core.At, Height = (core.Bottom + core.Top) / 2 };
        Assert.Equal(core.At, Assert.Single(LayOut(onBar).Embeds).At);
        Assert.Contains(LayOut(onBar).Findings, finding => finding.Code == FindingCodes.EmbedNearBar && finding.At!.S == core.At);

        var moved = LayOut(onBar with { Play = Inches(2) });
        Assert.Equal(Inches(2), Length.Abs(Assert.Single(moved.Embeds).At - core.At));
        Assert.DoesNotContain(moved.Findings, finding => finding.Code == FindingCodes.EmbedNearBar);
    }

    [Theory]
    [InlineData(110, 40)]
    [InlineData(300, 40)]
    [InlineData(30, 120)]
    public void One_that_stands_in_no_masonry_is_left_out_and_named(double at, double height)
    {
        var wall = LayOut(_strap with { At = Inches(at), Height = Inches(height) });
        Assert.Empty(wall.Embeds);
        Assert.Equal(Inches(at), Assert.Single(wall.Findings, finding => finding.Code == FindingCodes.EmbedNotPlaced).At!.S);
    }

    [Fact]
    public void One_without_a_beam_is_left_out_and_named()
    {
        var wall = WallSketch.LayOut(_wall with { Embeds = [_strap with { Height = null }] }, _rules with { Set = _rules.Set with { BondBeams = null } });
        Assert.Empty(wall.Embeds);
        Assert.Contains(wall.Findings, finding => finding.Code == FindingCodes.EmbedNotPlaced);
    }

    private static WallLayout LayOut(params GivenEmbed[] embeds) => WallSketch.LayOut(_wall with { Embeds = [.. embeds] }, _rules);

    private static Length Inches(double inches) => Length.FromInches(inches);
}
