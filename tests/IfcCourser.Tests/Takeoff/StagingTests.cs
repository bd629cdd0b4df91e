using System.Collections.Immutable;
using CsCheck;
using IfcCourser.Catalogs;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Takeoff;
using IfcCourser.Tests.Support;
using IfcCourser.Units;

namespace IfcCourser.Tests.Takeoff;

public sealed class StagingTests
{
    [Fact]
    public void Packs_are_those_of_the_order_and_hold_what_walls_take() => WallGen.Short.ForAll(
        given =>
        {
            var order = Orders.With(WallSketch.LayOut(given.Model, given.Rules), OffcutReuse.Wall).Order!;
            var pallets = order.Lines.Where(line => line.Packs is not null && line.Key.Item == OrderItem.Pallet).ToList();

            Assert.Equal(pallets.Sum(line => line.Packs!.Value.Count), order.Staging.Length);
            Assert.Equal(Enumerable.Range(1, order.Staging.Length), order.Staging.Select(pack => pack.Number));
            Assert.All(order.Staging, pack => Assert.InRange(pack.Spare, 0, pack.Units));
            Assert.All(pallets, line => Assert.All(order.Walls, wall => Assert.Equal(
                wall.Lines.Where(own => own.Key.IsUnit && own.Key.Pallet == line.Key).Sum(own => own.Net),
                order.Staging.Where(pack => pack.Product == line.Key).SelectMany(pack => pack.Uses).Where(use => use.Wall == wall.Name).Sum(use => use.Units))));
        },
        cases: 24);

    /// <summary>
    /// A box of 9 x 7 m with a door in its south wall, by coordinates: packs of 1.2 x 1 m stand 750 mm clear of each wall, none in the way through the door or in
    /// another, and each within 2.5 m of its wall.
    /// </summary>
    [Fact]
    public void Packs_are_clear_of_walls_doors_and_each_other_and_within_reach()
    {
        var rules = LayoutRules.For(BuiltInRuleSets.Get("none"), BuiltInCatalogs.Get("aac-mm"), OpeningPolicy.Keep);
        var box = WallSketch.Box(Length.FromMm(8999), Length.FromMm(6999), Length.FromMm(2519), Length.FromMm(240));
        var model = box with { Walls = box.Walls.SetItem(0, box.Walls[0] with { Openings = [WallSketch.Opening(0, 4000, 5000, 0, 2019)] }) };
        var layout = Orders.With(WallSketch.LayOut(model, rules), OffcutReuse.Wall);
        var door = layout.Walls.Single(wall => wall.Identity.GlobalId == "W0").Openings[0].Placed;
        (double Left, double Bottom, double Right, double Top)[] walls = [(0, 0, 8999, 240), (0, 6759, 8999, 6999), (0, 0, 240, 6999), (8759, 0, 8999, 6999)];
        var packs = layout.Order!.Staging.Select(pack => Around(pack.Place!.Loop(rules.Catalog.Ordering.Staging!))).ToList();

        Assert.True(packs.Count >= 8);
        Assert.All(packs, pack => Assert.Equal(1_200_000, (pack.Right - pack.Left) * (pack.Top - pack.Bottom), 1));
        Assert.All(packs, pack => Assert.All(walls, wall => Assert.True(Apart(pack, wall) >= 750 - 0.01)));
        Assert.All(packs, pack => Assert.False(pack.Left < door.Right.Mm && pack.Right > door.Left.Mm && pack.Bottom < 240 + 2500));
        Assert.All(packs, pack => Assert.InRange(walls.Min(wall => Apart(pack, wall)), 0, 2500.01));
        Assert.All(packs.SelectMany((pack, i) => packs.Skip(i + 1).Select(other => (pack, other))), pair => Assert.True(Apart(pair.pack, pair.other) >= 100 - 0.01));
    }

    /// <summary>A room that packs fill: those that find no place in reach have none, and none is lost.</summary>
    [Fact]
    public void Where_there_is_no_room_a_pack_has_no_place()
    {
        var catalog = BuiltInCatalogs.Get("aac-mm");
        var narrow = catalog with { Ordering = catalog.Ordering with { Staging = catalog.Ordering.Staging! with { Reach = catalog.Ordering.Staging.Strip }, Pallets = [new PalletContent(null, Length.FromMm(240), null, 4)] } };
        var rules = LayoutRules.For(BuiltInRuleSets.Get("none"), narrow, OpeningPolicy.Keep);
        var order = Orders.With(WallSketch.LayOut(WallSketch.Alone(WallSketch.Straight(Length.FromMm(4999), Length.FromMm(2519), Length.FromMm(240))), rules), OffcutReuse.Wall).Order!;

        // Three to a side: 3 x 1.2 m and 2 x 0.1 m of 5 m.
        Assert.InRange(order.Staging.Count(pack => pack.Place is not null), 4, 6);
        Assert.Contains(order.Staging, pack => pack.Place is null);
    }

    /// <summary>Around a box each wall touches the next.</summary>
    [Fact]
    public void Walls_follow_one_another()
    {
        var rules = LayoutRules.For(BuiltInRuleSets.Get("none"), BuiltInCatalogs.Get("aac-mm"), OpeningPolicy.Keep);
        var layout = WallSketch.LayOut(WallSketch.Box(Length.FromMm(8999), Length.FromMm(6999), Length.FromMm(2519), Length.FromMm(240)), rules);
        var sequence = WallSequence.Of(layout.Walls).Select(wall => wall.Identity.GlobalId[1] - '0').ToList();

        Assert.Equal([0, 1, 2, 3], sequence.Order());
        Assert.All(sequence.Zip(sequence.Skip(1)), pair => Assert.Contains((pair.Second - pair.First + 4) % 4, (int[])[1, 3]));
    }

    private static (double Left, double Bottom, double Right, double Top) Around(ImmutableArray<Vector2> loop) =>
        (loop.Min(corner => corner.X), loop.Min(corner => corner.Y), loop.Max(corner => corner.X), loop.Max(corner => corner.Y));

    private static double Apart((double Left, double Bottom, double Right, double Top) a, (double Left, double Bottom, double Right, double Top) b)
    {
        var (x, y) = (Math.Max(0, Math.Max(a.Left - b.Right, b.Left - a.Right)), Math.Max(0, Math.Max(a.Bottom - b.Top, b.Bottom - a.Top)));
        return Math.Sqrt((x * x) + (y * y));
    }
}
