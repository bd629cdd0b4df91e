using System.Collections.Immutable;
using IfcCourser.Catalogs;
using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Runs;
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

    /// <summary>
    /// An opening from 999 to 2000 with its head at 2020; lintels of aac-mm bear 200. A joint of 10 takes 5 on each side of its middle. At 2205 it leaves 2200 - 2000 = 200, at
    /// 2204 it leaves 199: 1 too little; at 2100 it leaves 95. On the left, at 794 it leaves 999 - 799 = 200 and at 795 199; at 900 94. Over the opening, at 1600, it leaves nothing: 1595 - 2000 =
    /// -405 behind and 999 - 1605 = -606 before it, so that 605 to the right is the shorter way. A joint that ends at the head or begins over it cuts no lintel.
    /// </summary>
    [Theory]
    [InlineData(2205, 0, 2519, null)]
    [InlineData(2204, 0, 2519, "199 mm to bear on, 200 mm are asked for: the joint 1 mm to the right, or the opening 1 mm to the left, would do")]
    [InlineData(2100, 0, 2519, "95 mm to bear on, 200 mm are asked for: the joint 105 mm to the right, or the opening 105 mm to the left, would do")]
    [InlineData(794, 0, 2519, null)]
    [InlineData(795, 0, 2519, "199 mm to bear on, 200 mm are asked for: the joint 1 mm to the left, or the opening 1 mm to the right, would do")]
    [InlineData(900, 0, 2519, "94 mm to bear on, 200 mm are asked for: the joint 106 mm to the left, or the opening 106 mm to the right, would do")]
    [InlineData(1600, 0, 2519, "0 mm to bear on, 200 mm are asked for: the joint 605 mm to the right, or the opening 605 mm to the left, would do")]
    [InlineData(2100, 0, 2020, null)]
    [InlineData(2100, 2021, 2519, null)]
    public void A_lintel_at_a_movement_joint_is_told_with_the_way_that_gives_it_its_bearing(double at, double bottom, double top, string? told)
    {
        var wall = Wall((999, 2000, 1019, 2020));
        var opening = wall.Openings[0];
        var findings = new ConflictFindings(wall, [new OpeningLayout(opening, opening.Model, opening.Model, OnModule: true)], Rules)
            .Of([], [new MovementJoint(Mm(at), Mm(10), Mm(bottom), Mm(top), "given")]);
        Assert.Equal(told, findings.Where(finding => finding.Code == FindingCodes.LintelAtJoint).Select(finding => finding.Message.Split(opening.Label + " ")[1]).SingleOrDefault());
    }

    /// <summary>
    /// A wall of 365 goes on where this one of 240, not bearing, ends: the rules put a joint of 10 there, from 5989. An opening up to 5850 leaves the lintel 139 of its 200, one up to 5789 all of it.
    /// </summary>
    [Theory]
    [InlineData(5850, "139 mm to bear on, 200 mm are asked for: the joint 61 mm to the right, or the opening 61 mm to the left, would do")]
    [InlineData(5789, null)]
    public void A_lintel_beside_the_joint_to_a_thicker_wall_is_told(double right, string? told)
    {
        var findings = WallSketch.LayOut(Continued(Wall((right - 1001, right, 1019, 2020))), LayoutRules.For(
            BuiltInRuleSets.Get("eu") with { Datum = Datum.Start }, BuiltInCatalogs.Get("aac-mm"), OpeningPolicy.Keep)).Walls[0].Findings;
        Assert.Contains(findings, finding => finding.Code == FindingCodes.MovementJointAdded);
        Assert.Equal(told, findings.Where(finding => finding.Code == FindingCodes.LintelAtJoint).Select(finding => finding.Message.Split("opening #100 ")[1]).SingleOrDefault());
    }

    private static Wall Wall(params (double Left, double Right, double Bottom, double Top)[] openings) => WallSketch.Straight(Mm(5999), Mm(2519), Mm(240), openings);

    /// <summary>The wall, not bearing, and one of 365 that goes on in its line; the joint between them is the second's of a junction.</summary>
    private static WallModel Continued(Wall wall)
    {
        var length = wall.Frame.Length;
        var next = WallSketch.Straight(Mm(2999), Mm(2519), Mm(365));
        return new WallModel
        {
            Walls =
            [
                wall with { LoadBearing = false, End = new WallEnd(EndKind.Continued, [1]) },
                next with
                {
                    Identity = next.Identity with { GlobalId = "W1", StepId = 11 },
                    Frame = next.Frame with { Origin = new Vector3(length.Mm, 0, 0) },
                    Start = new WallEnd(EndKind.Continued, [0]),
                    LoadBearing = false,
                },
            ],
            Skipped = [],
            Junctions =
            [
                new Junction(
                    JunctionKind.Continued, 1, 0,
                    new JunctionPlace(JunctionSide.Start, Length.Zero, Length.Zero), new JunctionPlace(JunctionSide.End, length, length),
                    Length.Zero, Length.Zero, IsSquare: true),
            ],
            Findings = [],
        };
    }

    private static LayoutRules Rules { get; } = LayoutRules.For(BuiltInRuleSets.Get("none") with { Datum = Datum.Start }, BuiltInCatalogs.Get("aac-mm"), OpeningPolicy.Keep);

    private static ImmutableArray<Finding> Kept(WallModel model) => WallSketch.LayOut(model, Rules).Walls[0].Findings;

    private static Length Mm(double mm) => Length.FromMm(mm);
}
