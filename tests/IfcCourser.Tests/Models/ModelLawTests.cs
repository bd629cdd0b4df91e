using System.Text;
using CsCheck;
using FixtureMaker.Design;
using FixtureMaker.Ifc;
using IfcCourser.Catalogs;
using IfcCourser.Comparing;
using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Siting;

namespace IfcCourser.Tests.Models;

/// <summary>What a layout must not depend on: where a model stands, which way it looks, its units and the order of its file.</summary>
public sealed class ModelLawTests
{
    private const double Near = 0.002; // mm; corners of outlines lie on a grid of 0.001 mm

    private static readonly LayoutRules _metric = LayoutRules.For(BuiltInRuleSets.Get("eu"), BuiltInCatalogs.Get("aac-mm"), OpeningPolicy.Move);

    private static readonly LayoutRules _inches = LayoutRules.For(BuiltInRuleSets.Get("us"), BuiltInCatalogs.Get("aac-in"), OpeningPolicy.Move);

    private static readonly Gen<(House House, LayoutRules Rules)> _houses = Gen.OneOf(
        HouseGen.Metric.Select(house => (house, _metric)), HouseGen.Inches.Select(house => (house, _inches)));

    private static readonly Gen<PlanMap> _maps = Gen.Select(Gen.Double[0, 360], Gen.Double[-1e7, 1e7], Gen.Double[-1e7, 1e7]).Select((d, e, n) => new PlanMap(d, e, n));

    [Fact]
    public void A_model_turned_and_moved_gives_the_same_layout() => Gen.Select(_houses, _maps, Gen.Double[-1e4, 1e4]).ForAll(
        (given, map, up) =>
        {
            var (plain, placed) = (LayOut(given.House, given.Rules), LayOut(given.House.Placed(map, up), given.Rules));
            AssertSame(plain, placed);
            foreach (var (a, b) in plain.Walls.Zip(placed.Walls))
            {
                Assert.True((map.Point(a.Frame.Origin.Plan) - b.Frame.Origin.Plan).Length < Near, $"{a.Frame} became {b.Frame}");
                Assert.Equal(a.Frame.Origin.Z + up, b.Frame.Origin.Z, Near);
                Assert.All(a.Cores.Zip(b.Cores), core => Assert.True((map.Point(core.First.Point) - core.Second.Point).Length < Near));
            }
        }, cases: 10);

    /// <summary>
    /// Walls of a mirrored model keep their runs, so their elevations are the same; left and right faces are exchanged. (A wall
    /// drawn from its other end is another matter: module lines count from the start of the run.)
    /// </summary>
    [Fact]
    public void A_mirrored_model_gives_the_same_layout_with_left_and_right_exchanged() => _houses.ForAll(
        given =>
        {
            var (plain, mirrored) = (LayOut(given.House, given.Rules), LayOut(given.House.Mirrored(), given.Rules));
            AssertSame(plain, mirrored);
            foreach (var (a, b) in plain.Walls.Zip(mirrored.Walls))
            {
                var right = a.Frame.Origin.Plan - (a.Frame.Normal * a.Frame.Thickness.Mm);
                Assert.True((new Vector2(-right.X, right.Y) - b.Frame.Origin.Plan).Length < Near, $"{a.Frame} became {b.Frame}");
            }
        }, cases: 10);

    [Theory]
    [InlineData(nameof(HouseUnits.Metre), 1000)]
    [InlineData(nameof(HouseUnits.Foot), 304.8)]
    [InlineData(nameof(HouseUnits.Inch), 25.4)]
    public void A_model_in_other_units_gives_the_same_layout(string units, double mm) => _houses.ForAll(
        given => AssertSame(LayOut(given.House, given.Rules), LayOut(given.House.In(Enum.Parse<HouseUnits>(units), mm), given.Rules)), cases: 4);

    [Fact]
    public void The_order_and_numbers_of_instances_mean_nothing() => Gen.Select(_houses, Gen.Int).ForAll(
        (given, seed) =>
        {
            var text = HouseFile.Write(given.House);
            var (plain, reordered) = (LayOut(text, given.Rules), LayOut(ModelFiles.Reordered(text, new Random(seed).Shuffle), given.Rules));
            AssertSame(plain, reordered);
            Assert.True(LayoutComparison.Of(plain, reordered).IsSame);
        }, cases: 10);

    [Fact]
    public void Other_GlobalIds_mean_nothing() => Gen.Select(_houses, Gen.Int).ForAll(
        (given, seed) =>
        {
            var text = HouseFile.Write(given.House);
            var change = LayoutComparison.Of(LayOut(text, given.Rules), LayOut(ModelFiles.WithOtherIds(text, seed), given.Rules));
            Assert.True(change.IsSame, string.Join(", ", change.Changed.Select(wall => $"{wall.New.Name}: {string.Join(' ', wall.Changes)}")));
        }, cases: 10);

    /// <summary>What is derived for a lot is what the model itself would give, were it drawn mirrored and turned.</summary>
    [Fact]
    public void A_plan_on_its_lot_is_laid_out_as_a_model_drawn_so() => Gen.Select(_houses, Gen.Bool, Gen.OneOf(Gen.Int[0, 3].Select(quarter => quarter * 90), Gen.Int[1, 359])).ForAll(
        (given, isMirrored, degrees) =>
        {
            var derived = SitedLayout.Of(LayOut(given.House, given.Rules), LotSiting.Of(isMirrored, degrees));
            var drawn = LayOut((isMirrored ? given.House.Mirrored() : given.House).Placed(new PlanMap(degrees, 0, 0), 0), given.Rules);
            AssertSame(drawn, derived with { Findings = [.. derived.Findings.Where(finding => finding.Code != FindingCodes.PlanSited)] });
            foreach (var (a, b) in drawn.Walls.Zip(derived.Walls))
            {
                Assert.True((a.Frame.Origin - b.Frame.Origin).Length < Near, $"{a.Frame} became {b.Frame}");
                Assert.True((a.Frame.Direction - b.Frame.Direction).Length < 1e-6, $"{a.Frame} became {b.Frame}");
                Assert.Equal(a.Wall.Start.Slant.Mm, b.Wall.Start.Slant.Mm, Near);
                Assert.Equal(a.Wall.End.Slant.Mm, b.Wall.End.Slant.Mm, Near);
                Assert.All(a.Cores.Zip(b.Cores), core => Assert.True((core.First.Point - core.Second.Point).Length < Near && core.First.Across == core.Second.Across));
                var slack = degrees % 90 == 0 ? Near : double.PositiveInfinity;
                Assert.True((a.Wall.Body.Min - b.Wall.Body.Min).Length <= slack && (a.Wall.Body.Max - b.Wall.Body.Max).Length <= slack);
            }

            Assert.Equal(BarPoints(drawn), BarPoints(derived), (a, b) => (a - b).Length < Near);
        }, cases: 8);

    private static Vector3[] BarPoints(Layout layout) =>
    [
        .. layout.SetOut.Storeys.SelectMany(storey => storey.Bars).OrderBy(bar => bar.Wall, StringComparer.Ordinal).ThenBy(bar => bar.Core, StringComparer.Ordinal).Select(bar => bar.Point),
    ];

    private static Layout LayOut(House house, LayoutRules rules) => LayOut(HouseFile.Write(house), rules);

    private static Layout LayOut(string text, LayoutRules rules) => ModelFiles.LayOut(Encoding.UTF8.GetBytes(text), rules);

    private static void AssertSame(Layout expected, Layout actual)
    {
        Assert.NotEmpty(expected.Walls);
        Assert.Equal(LayoutLines.Of(expected), LayoutLines.Of(actual), StringComparer.Ordinal);
    }
}
