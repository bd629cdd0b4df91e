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
    /// By hand: a passage through the whole height, 10 courses, drawn at 1219 to 2220 and 30 short of the lines at 1249 and 2250. Units of 624, least piece 100, lap 40,
    /// joints 0 to 3. Moved: the left pier of 1249 is two units in one course, whose joint the next one laps only with two cut pieces; so is the right one of 3749
    /// (six units, or five and two cut): 0 + 2 and 0 + 2 in two courses. Kept: 1219 is a unit and a cut piece; the other way round the joints would lap 30 only, so that every
    /// second course has two cut pieces; 3779 is more than six units and less than six and a least piece: two cut pieces in each course: 1 + 2 and 2 + 2.
    /// That is 3 more in two courses, 15 in ten.
    /// </summary>
    [Theory]
    [InlineData(OpeningPolicy.Keep)]
    [InlineData(OpeningPolicy.Move)]
    public void A_passage_off_the_module_costs_what_was_worked_out_by_hand(OpeningPolicy policy)
    {
        var model = WallSketch.Alone(Wall((1219, 2220, 0, 2600)));
        Assert.Equal(new KeepCost(15, 15, 0, 0), KeepCosts.With(Laid(model, policy), model).Walls[0].Openings[0].Check!.Cost);
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
