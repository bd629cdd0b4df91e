using IfcCourser.Catalogs;
using IfcCourser.Findings;
using IfcCourser.Rules;
using IfcCourser.Tests.Support;
using IfcCourser.Units;

namespace IfcCourser.Tests.Runs;

/// <summary>A corner's bar is listed in one wall and stands in the blocks of two.</summary>
public sealed class CornerCoreTests
{
    private static readonly LayoutRules _us = LayoutRules.For(BuiltInRuleSets.Get("us"), BuiltInCatalogs.Get("aac-in"), OpeningPolicy.Keep);

    /// <summary>By hand: a block of each course of one wall or the other lies around each of the four bars, 12 courses high; the lowest of them is open at its foot.</summary>
    [Fact]
    public void Every_course_has_one_bored_block_around_a_corner_bar()
    {
        var walls = WallSketch.LayOut(WallSketch.Box(Inches(160), Inches(160), Inches(96.375), Inches(7.875)), _us).Walls;
        foreach (var (owner, core) in walls.SelectMany(wall => wall.Cores.Where(core => !core.SharedWith.IsEmpty).Select(core => (wall, core))))
        {
            var other = Assert.Single(walls, wall => core.SharedWith.Contains(wall.Identity.GlobalId, StringComparer.Ordinal));
            var shared = Assert.Single(other.CornerCores, own => own.Wall == owner.Identity.GlobalId && own.Core == core.Id);
            Assert.Equal((core.Bottom, core.Top, core.Diameter), (shared.Bottom, shared.Top, shared.Diameter));
            var bored = Enumerable.Range(0, owner.Courses.Length)
                .Select(i => owner.Courses[i].Pieces.Where(piece => piece.Cores.Contains(core.Id, StringComparer.Ordinal))
                    .Concat(other.Courses[i].Pieces.Where(piece => piece.CornerCores.Contains(shared.Id, StringComparer.Ordinal))).ToList()).ToList();
            Assert.All(bored, blocks => Assert.Single(blocks));
            Assert.NotNull(bored[0][0].Notch);
        }
    }

    /// <summary>A lintel's bearing that lies over the bar of a corner ends the bar, though the other wall lists it.</summary>
    [Fact]
    public void A_corner_bar_ends_under_a_lintel_of_either_wall()
    {
        var box = WallSketch.Box(Inches(160), Inches(160), Inches(96.375), Inches(7.875));
        var opened = box with { Walls = box.Walls.SetItem(0, box.Walls[0] with { Openings = [WallSketch.Opening(0, 8.5 * 25.4, 48 * 25.4, 0, 72 * 25.4)] }) };
        var walls = WallSketch.LayOut(opened, _us).Walls;
        var lintel = Assert.Single(walls[0].Lintels);
        Assert.True(lintel.From < Inches(3.9375), $"the lintel begins at {lintel.From}: it bears on no corner");
        var core = Assert.Single(walls[3].Cores, core => core.SharedWith.Contains("W0", StringComparer.Ordinal));
        Assert.Equal(lintel.Bottom, core.Top);
    }

    /// <summary>
    /// By hand: at most 12 in are asked for, and the lintel over the door takes all that lies between the bars next to its ends: they stand further apart than
    /// the door and its bearings are long together, 32 in, and no bar between them runs through the lintel's height.
    /// </summary>
    [Fact]
    public void Bars_that_no_place_brings_nearer_are_named()
    {
        var tight = _us with { Set = _us.Set with { Bars = _us.Set.Bars! with { LargestSpacing = Inches(12), SpacingFromHeight = Length.Zero, OpeningsFrom = Inches(100) } } };
        var wall = WallSketch.LayOut(WallSketch.Straight(Inches(64), Inches(96.375), Inches(7.875), (24 * 25.4, 40 * 25.4, 0, 80 * 25.4)), tight);
        var lintel = Assert.Single(wall.Lintels);
        var passing = wall.Cores.Where(core => core.Bottom < lintel.Top && core.Top > lintel.Bottom).Select(core => core.At).Order().ToList();
        Assert.DoesNotContain(passing, at => at > lintel.From && at < lintel.To);
        var (before, after) = (passing.Last(at => at <= lintel.From), passing.First(at => at >= lintel.To));
        Assert.Contains(wall.Findings, finding => finding.Code == FindingCodes.BarsFarApart && finding.At!.S == before
            && finding.Message.Contains(LengthText.WithUnit(after, UnitSystem.Inch), StringComparison.Ordinal));
    }

    private static Length Inches(double inches) => Length.FromInches(inches);
}
