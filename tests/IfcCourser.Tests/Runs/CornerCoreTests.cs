using IfcCourser.Catalogs;
using IfcCourser.Findings;
using IfcCourser.Rules;
using IfcCourser.Tests.Models;
using IfcCourser.Tests.Support;
using IfcCourser.Tests.Walls.Fixtures;
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

    /// <summary>By hand: a wall of 6 courses, 48 3/8 in, between walls of 12, 96 3/8 in: the bars of its corners go up to the top of the higher walls, which list them.</summary>
    [Fact]
    public void A_corner_bar_goes_as_high_as_the_higher_wall()
    {
        var box = WallSketch.Box(Inches(160), Inches(160), Inches(96.375), Inches(7.875));
        var walls = WallSketch.LayOut(box with { Walls = box.Walls.SetItem(0, box.Walls[0] with { Outline = WallSketch.Rectangle(Inches(160), Inches(48.375)) }) }, _us).Walls;
        Assert.DoesNotContain(walls[0].Cores, core => core.Why.Contains("corner", StringComparer.Ordinal));
        var corners = walls.SelectMany(wall => wall.Cores).Where(core => core.Why.Contains("corner", StringComparer.Ordinal)).ToList();
        Assert.Equal(4, corners.Count);
        Assert.All(corners, core => Assert.Equal((Length.Zero, Inches(96.375)), (core.Bottom, core.Top)));
        Assert.Equal(2, walls[0].CornerCores.Length);
    }

    /// <summary>
    /// By hand: an opening from the floor to the last course takes the corner of the wall that comes first, and its lintel that course: the other wall's blocks hold the bar as high as
    /// the lintel lets it, and the first wall says that its own hold none.
    /// </summary>
    [Fact]
    public void An_opening_in_a_corner_leaves_its_bar_to_the_other_wall()
    {
        var box = WallSketch.Box(Inches(160), Inches(160), Inches(96.375), Inches(7.875));
        var walls = WallSketch.LayOut(box with { Walls = box.Walls.SetItem(0, box.Walls[0] with { Openings = [WallSketch.Opening(0, 128 * 25.4, 160 * 25.4, 0, 88.5 * 25.4)] }) }, _us).Walls;
        var core = Assert.Single(walls[1].Cores, core => core.SharedWith.Contains("W0", StringComparer.Ordinal));
        Assert.Equal(Assert.Single(walls[0].Lintels).Bottom, core.Top);
        Assert.Contains(walls[0].Findings, finding => finding.Code == FindingCodes.CoreNotPossible && finding.At!.S == Inches(160 - 3.9375));
        var shared = Assert.Single(walls[0].CornerCores, own => own.Core == core.Id);
        Assert.All(walls[1].Courses.Where(course => course.Bottom < core.Top), course => Assert.Contains(
            course.Pieces.Concat(walls[0].Courses[course.Number - 1].Pieces),
            piece => piece.Cores.Contains(core.Id, StringComparer.Ordinal) || piece.CornerCores.Contains(shared.Id, StringComparer.Ordinal)));
        Assert.DoesNotContain(walls.SelectMany(wall => wall.Findings), finding => finding.Code == FindingCodes.CoreInOpen);
    }

    /// <summary>
    /// The same where the other walls stand 6 in lower, on lines of their own: the wall that comes first runs through the corner from 6 in on, the other stops at it and still lists the bar.
    /// By hand, over the other wall's base: its first course, 1/2 to 8 3/8 in, is open over 6 in, and the opening's head lies at 94 1/2 in, within the twelfth, 88 1/2 to 96 3/8 in.
    /// </summary>
    [Fact]
    public void A_corner_bar_in_the_open_is_named_with_its_courses()
    {
        var box = WallSketch.Box(Inches(160), Inches(160), Inches(96.375), Inches(7.875));
        var opened = box.Walls[0] with { Openings = [WallSketch.Opening(0, 128 * 25.4, 160 * 25.4, 0, 88.5 * 25.4)] };
        var walls = WallSketch.LayOut(
            box with { Walls = [opened with { Frame = opened.Frame with { Origin = opened.Frame.Origin with { Z = opened.Frame.Origin.Z + (6 * 25.4) } } }, .. box.Walls.Skip(1)] }, _us).Walls;
        var core = Assert.Single(walls[1].Cores, core => core.SharedWith.Contains("W0", StringComparer.Ordinal));
        var finding = Assert.Single(walls.SelectMany(wall => wall.Findings), finding => finding.Code == FindingCodes.CoreInOpen);
        Assert.Equal(core.Id, finding.At!.Core);
        Assert.Equal($"The corner's bar {core.Id} stands in the open in courses 1-12: neither this wall nor {walls[0].Identity.Label} has blocks around it there", finding.Message);
    }

    /// <summary>
    /// Walls of 365 and 175 mm (fixtures/ifc/junctions): cores are for walls of 200 mm and more, so that none stands in the blocks of both. By hand: the thick wall ends there as at a wall it
    /// abuts, with a bar 101.6 to 203.2 mm from its end, and no finding speaks of a bar that is not there.
    /// </summary>
    [Fact]
    public void A_wall_turns_into_one_too_thin_for_cores_with_a_bar_at_its_own_end()
    {
        var rules = LayoutRules.For(BuiltInRuleSets.Get("us"), BuiltInCatalogs.Get("aac-mm"), OpeningPolicy.Keep);
        var walls = ModelFiles.LayOut(File.ReadAllBytes(ExpectedModels.PathOf("junctions/corner-unlike-thickness.ifc")), rules).Walls;
        var thick = walls.Single(wall => wall.Frame.Thickness == Length.FromMm(365));
        Assert.Empty(walls.Single(wall => wall != thick).Cores);
        Assert.DoesNotContain(walls.SelectMany(wall => wall.Findings), finding => finding.Code == FindingCodes.CoreOnJoint);
        Assert.DoesNotContain(thick.Cores, core => core.Why.Contains("corner", StringComparer.Ordinal));
        var last = thick.Cores.MaxBy(core => core.At)!;
        Assert.Contains("end", last.Why, StringComparer.Ordinal);
        Assert.True(last.At < Length.FromMm(3825), $"the bar at {last.At} stands in the corner");
    }

    /// <summary>A pier of 8 in between a wall's end and an opening is the opening's, which reaches over the end: no masonry is left for the end's bar, and that is said.</summary>
    [Fact]
    public void A_bar_that_finds_no_masonry_is_named()
    {
        var wall = WallSketch.LayOut(WallSketch.Straight(Inches(160), Inches(96.375), Inches(7.875), (120 * 25.4, 160 * 25.4, 0, 96.375 * 25.4)), _us);
        Assert.DoesNotContain(wall.Cores, core => core.At > Inches(120));
        Assert.Contains(wall.Findings, finding => finding.Code == FindingCodes.CoreNotPossible && finding.At!.S > Inches(150)
            && finding.Message.Contains("end", StringComparison.Ordinal));
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
