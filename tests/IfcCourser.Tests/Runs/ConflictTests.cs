using System.Collections.Immutable;
using IfcCourser.Catalogs;
using IfcCourser.Findings;
using IfcCourser.Rules;
using IfcCourser.Tests.Support;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Tests.Runs;

/// <summary>Openings in the way of other things, with the way out worked out by hand. Walls of 240, openings kept as drawn, no allowances.</summary>
public sealed class ConflictTests
{
    /// <summary>999 to 2000 and 1900 to 2901: 2000 - 1900 = 100 to the right parts them; the other way it would be 2901 - 999 = 1902.</summary>
    [Fact]
    public void Openings_that_overlap_are_told_with_the_shorter_way_out()
    {
        var finding = Assert.Single(Kept(WallSketch.Alone(Wall((999, 2000, 1019, 2020), (1900, 2901, 1519, 2270)))), finding => finding.Code == FindingCodes.OpeningsOverlap);
        Assert.Contains("100 mm to the right", finding.Message, StringComparison.Ordinal);
    }

    /// <summary>One over the other, and one beside the other with a pier between: neither is in the other's way. 3 mm are dust of the model.</summary>
    [Theory]
    [InlineData(999, 2000, 2020, 2270)]
    [InlineData(2249, 3000, 1019, 2020)]
    [InlineData(1997, 3000, 1019, 2020)]
    public void Openings_that_only_touch_are_not(double left, double right, double bottom, double top) =>
        Assert.DoesNotContain(Kept(WallSketch.Alone(Wall((999, 2000, 1019, 2020), (left, right, bottom, top)))), finding => finding.Code == FindingCodes.OpeningsOverlap);

    /// <summary>The corner takes 0 to 240: from 150 it is 90 to the right; at the other end of 5999 it takes 5759 on: an opening up to 5800 is 41 into it.</summary>
    [Theory]
    [InlineData(150, 1151, "90 mm to the right")]
    [InlineData(4799, 5800, "41 mm to the left")]
    [InlineData(240, 1241, null)]
    public void Corners_are_kept_free(double left, double right, string? told)
    {
        var box = WallSketch.Box(Mm(5999), Mm(5999), Mm(2519), Mm(240));
        var model = box with { Walls = box.Walls.SetItem(0, box.Walls[0] with { Openings = Wall((left, right, 1019, 2020)).Openings }) };
        Assert.Equal(told, Kept(model).Where(finding => finding.Code == FindingCodes.OpeningAtCorner).Select(finding => finding.Message.Split("; ")[1].Replace(" it would be clear of it", string.Empty, StringComparison.Ordinal)).SingleOrDefault());
    }

    /// <summary>
    /// A wall of 240 stands against 3000 to 3240. An opening up to 3080 reaches 80 behind it, one up to 3200 reaches 200; from 3200 on it is 40. A door of 2020 stands before
    /// more than half of its 240 and of its 2519 and is the model's finding. Over a wall 1000 high a sill at 1019 is clear.
    /// </summary>
    [Theory]
    [InlineData(2079, 3080, 1019, 2519, "80 mm to the left")]
    [InlineData(2199, 3200, 1019, 2519, "200 mm to the left")]
    [InlineData(3200, 4201, 1019, 2519, "40 mm to the right")]
    [InlineData(2199, 3200, 0, 2519, null)]
    [InlineData(1999, 3000, 1019, 2519, null)]
    [InlineData(2079, 3080, 1019, 1000, null)]
    public void Walls_that_meet_this_one_are_kept_free(double left, double right, double bottom, double height, string? told)
    {
        var abutting = WallSketch.Straight(Mm(2000), Mm(height), Mm(240));
        var model = WallSketch.Tee(Wall((left, right, bottom, 2020)), abutting, Mm(3000));
        Assert.Equal(told, Kept(model).Where(finding => finding.Code == FindingCodes.OpeningAtTee).Select(finding => finding.Message.Split("; ")[1].Replace(" it would be clear of it", string.Empty, StringComparison.Ordinal)).SingleOrDefault());
    }

    private static Wall Wall(params (double Left, double Right, double Bottom, double Top)[] openings) => WallSketch.Straight(Mm(5999), Mm(2519), Mm(240), openings);

    private static ImmutableArray<Finding> Kept(WallModel model) => WallSketch.LayOut(
        model, LayoutRules.For(BuiltInRuleSets.Get("none") with { Datum = Datum.Start }, BuiltInCatalogs.Get("aac-mm"), OpeningPolicy.Keep)).Walls[0].Findings;

    private static Length Mm(double mm) => Length.FromMm(mm);
}
