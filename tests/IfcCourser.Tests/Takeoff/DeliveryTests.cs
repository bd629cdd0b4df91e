using System.Collections.Immutable;
using CsCheck;
using IfcCourser.Catalogs;
using IfcCourser.Jobs;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Takeoff;
using IfcCourser.Tests.Support;
using IfcCourser.Units;

namespace IfcCourser.Tests.Takeoff;

public sealed class DeliveryTests
{
    /// <summary>What sums in another order may differ by. Not decimals: amounts that end in half of the last one would be rounded apart.</summary>
    private const double Dust = 1e-9;

    private static readonly OrderItem[] _rounded = [OrderItem.UnitWaste, OrderItem.Pallet];

    /// <summary>
    /// By hand, aac-mm in 240 mm, 48 units on a pallet: two walls of two courses of 8 whole units, 16 and 1 for breakage each. At once 34, one pallet with
    /// 14 left over; in two deliveries two pallets, each with 31.
    /// </summary>
    [Fact]
    public void Each_delivery_has_whole_pallets()
    {
        var layout = Twins();
        var apart = Orders.With(layout, OffcutReuse.Job, [new DeliveryPhase("1", ["W0"]), new DeliveryPhase("2", ["W1"])]).Order!;

        Assert.Equal(new OrderPacks(1, 48, 14), Pallets(Orders.With(layout, OffcutReuse.Job).Order!.Lines));
        Assert.All(apart.Deliveries, delivery => Assert.Equal(new OrderPacks(1, 48, 31), Pallets(delivery.Lines)));
        Assert.Equal(new OrderPacks(2, 48, 62), Pallets(apart.Lines));
        Assert.Equal(32, Assert.Single(apart.Lines, line => line.Key.Item == OrderItem.FullUnit).Net);
    }

    [Fact]
    public void Deliveries_add_up_to_what_is_built_in() => WallGen.Short.ForAll(
        given =>
        {
            var layout = WallSketch.LayOut(given.Model, given.Rules);
            ImmutableArray<DeliveryPhase> phases =
            [
                .. layout.Walls.Select((wall, i) => (wall.Identity.GlobalId, Phase: i % 2)).GroupBy(wall => wall.Phase)
                    .Select(phase => new DeliveryPhase($"{phase.Key}", [.. phase.Select(wall => wall.GlobalId)])),
            ];
            var (whole, order) = (Orders.With(layout, OffcutReuse.Wall).Order!, Orders.With(layout, OffcutReuse.Wall, phases).Order!);
            Assert.Equal(whole.Lines.Select(line => line.Key), order.Lines.Select(line => line.Key));
            foreach (var (line, together) in whole.Lines.Zip(order.Lines))
            {
                var parts = order.Deliveries.SelectMany(delivery => delivery.Lines).Where(part => part.Key == line.Key).ToList();
                Assert.Equal(together.Gross ?? 0, parts.Sum(part => part.Gross ?? 0), Dust);
                Assert.Equal(together.Packs?.Count ?? 0, parts.Sum(part => part.Packs?.Count ?? 0));
                if (!_rounded.Contains(line.Key.Item))
                {
                    Assert.Equal(line.Net!.Value, together.Net!.Value, Dust);
                }
            }
        },
        seed: "bIuZn7aqDO81", cases: 24);

    /// <summary>A sawn unit comes with the first piece that is sawn from it, whatever the order of the walls in the model.</summary>
    [Fact]
    public void An_offcut_never_waits_for_a_later_delivery()
    {
        var layout = Twins(wholeOnly: false);
        var order = Orders.With(layout, OffcutReuse.Job, [new DeliveryPhase("first", ["W1"]), new DeliveryPhase("second", ["W0"])]).Order!;

        Assert.Equal(["W1", "W0"], Assert.Single(order.Saw.Units).Pieces.Select(piece => piece.Wall), StringComparer.Ordinal);
    }

    [Fact]
    public void A_wall_comes_with_the_first_phase_that_names_it_and_the_rest_last()
    {
        var layout = Twins();
        var phases = DeliveryPhases.Of(layout, new JobPhases(ByStorey: false, [new JobPhase("early", [], ["W1"]), new JobPhase("late", [], ["W1"])]));

        Assert.Equal(["early: W1", $"{Messages.NoPhase}: W0"], phases.Select(phase => $"{phase.Name}: {string.Join(' ', phase.Walls)}"), StringComparer.Ordinal);
        Assert.Equal(["Ground floor: W0 W1"], DeliveryPhases.Of(layout, new JobPhases(ByStorey: true, [])).Select(phase => $"{phase.Name}: {string.Join(' ', phase.Walls)}"), StringComparer.Ordinal);
        Assert.Empty(DeliveryPhases.Of(layout, JobPhases.One));
    }

    /// <summary>By hand: 4.999 m and one lap of 100 mm, from a roll of 25 m (rule set eu; common practice, no source).</summary>
    [Fact]
    public void Membrane_is_laid_under_the_lowest_first_course()
    {
        var rules = LayoutRules.For(BuiltInRuleSets.Get("eu"), BuiltInCatalogs.Get("aac-mm"), OpeningPolicy.Keep);
        var lower = WallSketch.Straight(Length.FromMm(4999), Length.FromMm(1019), Length.FromMm(240));
        var line = Assert.Single(Orders.With(WallSketch.LayOut(WallSketch.Alone(lower), rules), OffcutReuse.Wall).Order!.Lines, line => line.Key.Item == OrderItem.Membrane);

        Assert.Equal((4.999, 0.1), (line.Net!.Value, line.Waste));
        Assert.Equal((1, 19.901), (line.Packs!.Value.Count, Math.Round(line.Packs.Value.LeftOver, 6)));
    }

    private static OrderPacks? Pallets(ImmutableArray<OrderLine> lines) => Assert.Single(lines, line => line.Key.Item == OrderItem.Pallet).Packs;

    /// <summary>Two equal walls, of two courses of whole units or of one piece of 300 mm.</summary>
    private static Layout Twins(bool wholeOnly = true)
    {
        var rules = LayoutRules.For(BuiltInRuleSets.Get("none"), BuiltInCatalogs.Get("aac-mm"), OpeningPolicy.Keep);
        var layout = WallSketch.LayOut(WallSketch.Alone(WallSketch.Straight(Length.FromMm(4999), Length.FromMm(1019), Length.FromMm(240))), rules);
        var wall = layout.Walls[0];
        var twin = wall with
        {
            Courses = wholeOnly
                ? [.. wall.Courses.Take(2).Select(course => course with { Pieces = wall.Courses[0].Pieces })]
                : [wall.Courses[0] with { Pieces = [wall.Courses[0].Pieces[0] with { To = wall.Courses[0].Pieces[0].From + Length.FromMm(300), Cut = Cuts.Length }] }],
        };
        return layout with { Walls = [twin, twin with { Wall = twin.Wall with { Identity = twin.Identity with { GlobalId = "W1" } } }] };
    }
}
