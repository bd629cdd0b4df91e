using System.Collections.Immutable;
using CsCheck;
using IfcCourser.Catalogs;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Takeoff;
using IfcCourser.Tests.Support;
using IfcCourser.Units;

namespace IfcCourser.Tests.Takeoff;

[Collection(FinishedLayouts.Collection)]
public sealed class OrderTests
{
    private static readonly OrderItem[] _whole = [OrderItem.FullUnit, OrderItem.PartUnit, OrderItem.TroughUnit, OrderItem.CoredUnit];

    [Fact]
    public void The_order_is_the_layout_to_the_piece() => FinishedLayouts.ForAll(
        finished =>
        {
            var layout = Orders.With(finished, OffcutReuse.Wall);
            var (order, totals) = (layout.Order!, LayoutTotals.Of(layout));
            double Net(params OrderItem[] items) => order.Lines.Where(line => items.Contains(line.Key.Item)).Sum(line => line.Net!.Value);

            Assert.Equal(totals.FullUnits, Net(_whole));
            Assert.Equal(totals.PartUnits, order.Saw.Pieces);
            Assert.Equal(order.Saw.Units.Length, Net(OrderItem.CutUnit));
            Assert.Equal(totals.Lintels, Net(OrderItem.Lintel, OrderItem.FormedLintel));
            Assert.Equal(layout.BarSchedule.Sum(row => row.Number), Net(OrderItem.Bar, OrderItem.BeamBar, OrderItem.CornerBar));
            Assert.Equal(layout.Junctions.Sum(junction => junction.Ties.Length), Net(OrderItem.Tie));
            Assert.Equal(layout.Walls.Sum(wall => wall.Cores.Sum(core => core.Bars?.GroutVolume ?? 0)), Grout(layout, "cores") / 1000, tolerance: 1e-10);
            Assert.All(order.Walls.Zip(LayingOrder.Of(layout)), pair => Assert.Equal(
                pair.Second.Quantities.FullUnits, pair.First.Lines.Where(line => _whole.Contains(line.Key.Item)).Sum(line => line.Net)));
        },
        cases: 60);

    [Fact]
    public void Walls_add_up_to_storeys_and_storeys_to_the_job() => FinishedLayouts.ForAll(
        layout =>
        {
            var order = Orders.With(layout, OffcutReuse.Storey).Order!;
            foreach (var groups in (ImmutableArray<OrderGroup>[])[order.Walls, order.Storeys])
            {
                Assert.All(
                    order.Lines.Where(line => line.Key.Item is not (OrderItem.UnitWaste or OrderItem.Pallet)),
                    line => Assert.Equal(line.Net!.Value, groups.SelectMany(group => group.Lines).Where(own => own.Key == line.Key).Sum(own => own.Net!.Value), 6));
            }
        },
        cases: 60);

    [Fact]
    public void What_the_catalog_does_not_say_is_not_known()
    {
        var rules = LayoutRules.For(BuiltInRuleSets.Get("none"), BuiltInCatalogs.Get("aac-mm") with { Ordering = OrderingData.Unknown }, OpeningPolicy.Keep);
        var order = Ordered(4999, 2000, 240, rules);

        Assert.Null(Assert.Single(order.Lines, line => line.Key.Item == OrderItem.Pallet).Net);
        Assert.All(order.Lines, line => Assert.True(line.MassEach is null && line.Packs is null));
        Assert.True(Assert.Single(order.Lines, line => line.Key.Item == OrderItem.JointMortar).Net > 0);
        Assert.Null(order.BagsByPallets);
    }

    /// <summary>aac-mm in 300 mm, by hand: 624 x 249 x 300 mm x 500 kg/m3 x 1.3 are 30.30 kg, over 25; in 240 mm 24.24 kg, under it.</summary>
    [Theory]
    [InlineData(300, 30.298, true)]
    [InlineData(240, 24.239, false)]
    public void A_heavy_unit_is_marked(int width, double mass, bool isOver)
    {
        var line = Assert.Single(Ordered(4999, 2000, width, Rules("aac-mm")).Lines, line => line.Key.Item == OrderItem.FullUnit);

        Assert.Equal((mass, isOver), (Math.Round(line.MassEach!.Value, 3), line.IsOverLiftLimit));
    }

    /// <summary>checkvalues.csv Q-PAL: 116 units, 40 on a pallet: 3 pallets; 4 left over. A sum that floating point lifts a little over a whole number opens no new one.</summary>
    [Fact]
    public void Packs_are_whole()
    {
        Assert.Equal(new OrderPacks(3, 40, 4), OrderPacks.For(116, 40));
        Assert.Equal(3, OrderPacks.For(0.1 + 0.2, 0.1).Count);
        Assert.Equal(0, OrderPacks.For(0, 40).Count);
    }

    /// <summary>
    /// By hand, aac-mm without openings, whole units only: 4 courses of 8 units of 240 mm. 32 units, 5 per cent are 2; 34 on pallets of 48 are 1, 14 left
    /// over. Two bags a pallet: 32 / 48 x 2 = 1.33, so 2.
    /// </summary>
    [Fact]
    public void Waste_and_pallets_worked_by_hand()
    {
        var rules = Rules("aac-mm");
        var wall = WallSketch.LayOut(WallSketch.Straight(Length.FromMm(4999), Length.FromMm(1019), Length.FromMm(240)), rules);
        var whole = wall.Courses[0].Pieces;
        Assert.Equal(8, whole.Length);
        var layout = WallSketch.LayOut(WallSketch.Alone(wall.Wall), rules) with { Walls = [wall with { Courses = [.. wall.Courses.Select(course => course with { Pieces = whole })] }] };
        var order = Orders.With(layout, OffcutReuse.Wall).Order!;

        Assert.Equal(2, Assert.Single(order.Lines, line => line.Key.Item == OrderItem.UnitWaste).Waste);
        Assert.Equal(new OrderPacks(1, 48, 14), Assert.Single(order.Lines, line => line.Key.Item == OrderItem.Pallet).Packs);
        Assert.Equal(2, order.BagsByPallets);
    }

    private static double Grout(Layout layout, string fills) => layout.Order!.Lines.Where(line => line.Key.Item == OrderItem.Grout && line.Key.Product == fills).Sum(line => line.Net!.Value);

    private static LayoutRules Rules(string catalog) => LayoutRules.For(BuiltInRuleSets.Get("none"), BuiltInCatalogs.Get(catalog), OpeningPolicy.Keep);

    private static Order Ordered(double length, double height, double width, LayoutRules rules) =>
        Orders.With(WallSketch.LayOut(WallSketch.Alone(WallSketch.Straight(Length.FromMm(length), Length.FromMm(height), Length.FromMm(width))), rules), OffcutReuse.Wall).Order!;
}
