using System.Numerics;
using IfcCourser.Catalogs;
using IfcCourser.Findings;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Runs;
using IfcCourser.Tests.Support;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Tests.Runs;

/// <summary>What it costs to keep openings, held to whole layouts made one way and the other.</summary>
public sealed class KeepCostsTests
{
    /// <summary>
    /// By hand, ten passages of 1001 through the whole height, ten courses. Units of 624 every 625, least piece 100, lap 40, joints 0 to 3. A pier is 625 q and a rest r. In two courses
    /// that lap each other it needs: r = -1, whole units: 0 cut pieces and 2 (a joint in the middle of each unit needs cut pieces at both ends); r from 100 to 584 + 2 q: one in each, at either
    /// end in turn (at most with all q joints of 3: the cut piece is r - 2 q long, and each joint of 624 k + 3 k - 1.5 is 624 - r + 2 q from that of r - 2 q + 627 (k - 1) + 1.5, 40 or more);
    /// r over that: joints of such courses would lap by less than 40, so one and two; r from 3 to 94: too short a piece even with the narrowest joints: two in each.
    /// On lines (125 k - 1) both piers need 2 each. What the passage needs more, kept where it is, times five:
    /// 1219: 625 + 594 and 3779 = 6 x 625 + 29: 3 + 4 - 4 = 3. 1279: 29 and 3719 = 5 x 625 + 594, just 584 + 2 x 5: 4 + 2 - 4 = 2. 1314: 64 and 3684 = 5 x 625 + 559: 4 + 2 - 4 = 2.
    /// 1189: 564 and 3809 = 6 x 625 + 59: 2 + 4 - 4 = 2. 1164: 539 and 3834 = 6 x 625 + 84: 2. 1344: 94 (1348 with joints of 0) and 3654 = 5 x 625 + 529: 2.
    /// 1039: 414 and 209; 1409: 159 and 464; 1459: 209 and 414; 1524: 274 and 349: one in each course, as on lines: nothing.
    /// </summary>
    [Theory]
    [InlineData(1219, 30, 15)]
    [InlineData(1279, -30, 10)]
    [InlineData(1314, 60, 10)]
    [InlineData(1189, 60, 10)]
    [InlineData(1164, -40, 10)]
    [InlineData(1344, 30, 10)]
    [InlineData(1039, -40, 0)]
    [InlineData(1409, -35, 0)]
    [InlineData(1459, 40, 0)]
    [InlineData(1524, -25, 0)]
    public void A_passage_off_the_module_costs_what_was_worked_out_by_hand(double left, double way, int cuts)
    {
        var model = WallSketch.Alone(Wall((left, left + 1001, 0, 2600)));
        foreach (var policy in new[] { OpeningPolicy.Keep, OpeningPolicy.Move })
        {
            var check = KeepCosts.With(Laid(model, policy), model).Walls[0].Openings[0].Check!;
            Assert.Equal((Mm(way), Mm(way)), (check.MoveLeft, check.MoveRight));
            Assert.Equal(new KeepCost(cuts, cuts, 0, 0), check.Cost);
        }
    }

    /// <summary>One opening, 40 off its lines: it answers for the whole difference between the wall kept and the wall moved, each laid out by itself.</summary>
    [Theory]
    [InlineData(OpeningPolicy.Keep)]
    [InlineData(OpeningPolicy.Move)]
    public void An_opening_alone_costs_what_two_layouts_differ_by(OpeningPolicy policy)
    {
        var model = WallSketch.Alone(Wall((1039, 2040, 1029, 2030)));
        var expected = Minus(Counts(Laid(model, OpeningPolicy.Keep).Walls[0]), Counts(Laid(model, OpeningPolicy.Move).Walls[0]));
        Assert.NotEqual(default, expected);
        Assert.Equal(expected, Assert.Single(KeepCosts.With(Laid(model, policy), model).Walls[0].Openings).Check!.Cost);
    }

    /// <summary>
    /// 951 wide, kept at 999 to 1950, cured at 999 to 2000. Pieces beside it end at 1950 in place of 2000 on the right, so at most the courses beside the opening, 5 to 8
    /// (19 + 4 x 250 to 20 + 8 x 250), have another cut: what it costs is the difference to the wall drawn 1001 wide.
    /// </summary>
    [Fact]
    public void A_width_off_the_module_costs_what_the_wider_opening_saves()
    {
        var (model, wider) = (WallSketch.Alone(Wall((999, 1950, 1019, 2020))), WallSketch.Alone(Wall((999, 2000, 1019, 2020))));
        var expected = Minus(Counts(Laid(model, OpeningPolicy.Move).Walls[0]), Counts(Laid(wider, OpeningPolicy.Move).Walls[0]));
        Assert.NotEqual(default, expected);
        Assert.Equal(expected, KeepCosts.With(Laid(model, OpeningPolicy.Move), model).Walls[0].Openings[0].Check!.Cost);
    }

    /// <summary>Of several that move, each counts what lies nearest to it: together the wall's whole difference. What stands on the module has no cost.</summary>
    [Fact]
    public void Costs_of_a_walls_openings_add_up()
    {
        var model = WallSketch.Alone(Wall((1009, 2010, 1019, 2020), (2999, 4000, 1019, 2020), (4899, 5900, 1019, 2020)) with { Outline = WallSketch.Rectangle(Mm(8999), Mm(2519)), Frame = Wall().Frame with { Length = Mm(8999) } });
        var openings = KeepCosts.With(Laid(model, OpeningPolicy.Move), model).Walls[0].Openings;
        var expected = Minus(Counts(Laid(model, OpeningPolicy.Keep).Walls[0]), Counts(Laid(model, OpeningPolicy.Move).Walls[0]));
        Assert.Equal(expected, openings.Select(opening => opening.Check!.Cost ?? default).Aggregate((a, b) => a + b));
        Assert.Null(openings[1].Check!.Cost);
    }

    [Fact]
    public void Where_nothing_would_move_nothing_is_laid_out_again()
    {
        var model = WallSketch.Alone(Wall((999, 2000, 1019, 2020)));
        Assert.Null(KeepCosts.With(Laid(model, OpeningPolicy.Move), model).Walls[0].Openings[0].Check!.Cost);
    }

    private static Wall Wall(params (double Left, double Right, double Bottom, double Top)[] openings) => WallSketch.Straight(Mm(5999), Mm(2519), Mm(240), openings);

    private static Layout Laid(WallModel model, OpeningPolicy policy) => WallSketch.LayOut(
        model, LayoutRules.For(BuiltInRuleSets.Get("none") with { Datum = Datum.Start }, BuiltInCatalogs.Get("aac-mm"), policy));

    private static KeepCost Counts(WallLayout wall)
    {
        var cut = wall.Courses.SelectMany(course => course.Pieces).Where(piece => piece.Cut != Cuts.None).ToList();
        return new KeepCost(
            cut.Count, cut.Sum(piece => BitOperations.PopCount((uint)piece.Cut)), wall.Findings.Count(finding => finding.Code == FindingCodes.PieceShort),
            wall.Findings.Count(finding => finding.Code == FindingCodes.OverlapShort));
    }

    private static KeepCost Minus(KeepCost a, KeepCost b) =>
        new(a.CutPieces - b.CutPieces, a.SawCuts - b.SawCuts, a.ShortPieces - b.ShortPieces, a.ShortLaps - b.ShortLaps);

    private static Length Mm(double mm) => Length.FromMm(mm);
}
