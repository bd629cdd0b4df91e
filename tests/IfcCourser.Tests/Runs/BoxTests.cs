using IfcCourser.Catalogs;
using IfcCourser.Findings;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Tests.Support;
using IfcCourser.Units;

namespace IfcCourser.Tests.Runs;

public sealed class BoxTests
{
    /// <summary>
    /// A closed square box of ten-unit walls needs no cut when each wall runs through at one end only, hands swapped each
    /// course; where "A odd, B even" holds at all corners every course is cut (geometry: 10 units and 9 joints are the run
    /// of a wall that runs through once, its length less one thickness and joint).
    /// </summary>
    [Theory]
    [InlineData("aac-in", 7.875 * 25.4)]
    [InlineData("aac-mm", 240)]
    [InlineData("aac-600", 200)]
    public void A_square_box_whose_walls_run_through_once_for_ten_units_has_no_length_cut(string name, double thicknessMm)
    {
        var catalog = BuiltInCatalogs.Get(name);
        var thickness = Length.FromMm(thicknessMm);
        var length = (catalog.Pitch * 10) + thickness;
        var height = catalog.LevellingBed.Nominal + (catalog.CoursePitch * 6) - catalog.BedJoint.Nominal;
        var rules = LayoutRules.For(BuiltInRuleSets.Get("none"), catalog, OpeningPolicy.Keep);
        var layout = WallSketch.LayOut(WallSketch.Box(length, length, height, thickness), rules);
        Assert.All(layout.Walls.SelectMany(wall => wall.Courses).SelectMany(course => course.Pieces), piece => Assert.Equal(Cuts.None, piece.Cut));
        Assert.DoesNotContain(layout.Walls.SelectMany(wall => wall.Findings), finding => finding.Code == FindingCodes.OverlapShort);
    }

    /// <summary>NAVEDTRA 14045 ch. 4 (checkvalues.csv Q-008): a wall 10 ft high and 100 ft long takes 1125 blocks of 8 x 16 in: 75 a course, 15 courses.</summary>
    [Fact]
    public void A_wall_10_by_100_ft_of_8_by_16_blocks_takes_1125_blocks()
    {
        var catalog = BuiltInCatalogs.Get("block-in");
        var rules = LayoutRules.For(BuiltInRuleSets.Get("none"), catalog, OpeningPolicy.Keep);
        var wall = WallSketch.Straight(
            Length.FromInches(1200) - catalog.HeadJoint.Nominal, Length.FromInches(120), Length.FromInches(7.625));
        var pieces = WallSketch.LayOut(wall, rules).Courses.SelectMany(course => course.Pieces).ToList();

        // Half blocks at the ends of every second course are bought as parts: two make one block.
        var blocks = pieces.Sum(piece => piece.IsFull ? 1.0 : 0.5);
        Assert.All(pieces, piece => Assert.Equal(Cuts.None, piece.Cut));
        Assert.Equal(1125, blocks);
    }
}
