using System.Collections.Immutable;
using IfcCourser.Layouts;

namespace IfcCourser.Takeoff;

/// <summary>Takes off what a finished layout needs.</summary>
public static class Orders
{
    /// <summary>The layout with its order, all in one delivery.</summary>
    /// <param name="layout">Finished.</param>
    /// <param name="reuse">How far offcuts may go.</param>
    public static Layout With(Layout layout, OffcutReuse reuse) => With(layout, reuse, []);

    /// <summary>The layout with its order.</summary>
    /// <param name="layout">Finished.</param>
    /// <param name="reuse">How far offcuts may go; from one delivery to a later one they may.</param>
    /// <param name="phases">Together every coursed wall, once; none where all comes at once.</param>
    public static Layout With(Layout layout, OffcutReuse reuse, ImmutableArray<DeliveryPhase> phases)
    {
        var saw = SawLists.Of(layout, reuse, phases);
        var ofWalls = new WallLines(layout, saw);
        var walls = layout.Walls.Select(wall => (wall.Identity.GlobalId, Joints: Joints.Of(wall, layout.Rules), Lines: Summed(ofWalls.Of(wall))))
            .ToDictionary(wall => wall.GlobalId, wall => new OrderGroup(wall.GlobalId, wall.Joints, WithMortar(wall.Lines, wall.Joints)), StringComparer.Ordinal);
        ImmutableArray<OrderGroup> storeys = [.. layout.Storeys.Select(storey => Group(storey.Key, [.. storey.Select(wall => walls[wall.Identity.GlobalId])]))];
        var job = Group(null, [.. storeys]);
        var totals = new OrderTotals(layout.Rules);
        ImmutableArray<Delivery> deliveries = [.. phases.Select(phase => Delivered(phase, Group(phase.Name, [.. phase.Walls.Select(wall => walls[wall])]), totals))];
        var lines = OrderTotals.Together(totals.Of(job.Lines), deliveries);
        return layout with
        {
            Order = new Order
            {
                Lines = lines,
                Joints = job.Joints,
                BagsByPallets = totals.BagsByPallets(job.Lines),
                Deliveries = deliveries,
                Staging = StagedPacks.Of(
                    layout, deliveries.IsEmpty ? [new Delivery(new DeliveryPhase(string.Empty, [.. walls.Keys]), job.Joints, lines)] : deliveries, walls),
                Storeys = [.. storeys.Select(storey => storey with { Lines = totals.Weighed(storey.Lines) })],
                Walls = [.. LayingOrder.Of(layout).Select(wall => walls[wall.Identity.GlobalId]).Select(wall => wall with { Lines = totals.Weighed(wall.Lines) })],
                Saw = saw,
                Bars = BarStocks.Of(layout),
            },
        };
    }

    private static Delivery Delivered(DeliveryPhase phase, OrderGroup group, OrderTotals totals) => new(phase, group.Joints, totals.Of(group.Lines));

    private static OrderGroup Group(string? name, ImmutableArray<OrderGroup> parts)
    {
        var joints = parts.Aggregate(default(JointSums), (sum, part) => sum + part.Joints);
        return new OrderGroup(name, joints, Summed(parts.SelectMany(part => part.Lines)));
    }

    private static ImmutableArray<OrderLine> WithMortar(ImmutableArray<OrderLine> lines, JointSums joints)
    {
        OrderLine[] mortar =
        [
            new(new OrderKey(OrderItem.JointMortar, string.Empty, QuantityUnit.Litre), joints.BedVolume + joints.HeadVolume),
            new(new OrderKey(OrderItem.LevellingMortar, string.Empty, QuantityUnit.Litre), joints.LevellingVolume),
        ];
        return Summed(lines.Concat(mortar.Where(line => line.Net > 0)));
    }

    /// <summary>Lines with the same key become one; in the order of the items, then by width, product and length.</summary>
    private static ImmutableArray<OrderLine> Summed(IEnumerable<OrderLine> lines) =>
    [
        .. lines.GroupBy(line => line.Key)
            .Select(group => group.First() with { Net = group.Sum(line => line.Net), Waste = group.Sum(line => line.Waste) })
            .OrderBy(line => line.Key.Item).ThenBy(line => line.Key.Width).ThenBy(line => line.Key.Product, StringComparer.Ordinal)
            .ThenBy(line => line.Key.Height).ThenBy(line => line.Key.Length).ThenBy(line => line.Key.Mark.Length).ThenBy(line => line.Key.Mark, StringComparer.Ordinal),
    ];
}
