using System.Collections.Immutable;
using IfcCourser.Catalogs;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Takeoff;

/// <summary>Adds waste, packs and masses to summed lines, as the catalog gives them.</summary>
internal sealed class OrderTotals(LayoutRules rules)
{
    /// <summary>Thin joints, 1/8 in at most: to these the rule of half a pallet a bag belongs.</summary>
    private static readonly Length _thin = Length.FromInches(0.125);

    private readonly OrderingData _data = rules.Catalog.Ordering;

    /// <summary>The lines of the job: with waste of units, and pallets, as lines of their own.</summary>
    public ImmutableArray<OrderLine> Of(ImmutableArray<OrderLine> lines)
    {
        var products = lines.Where(line => line.Key.IsUnit)
            .GroupBy(line => line.Key with { Item = OrderItem.UnitWaste })
            .Select(group => (group.Key, Net: group.Sum(line => line.Net!.Value)))
            .OrderBy(product => product.Key.Width).ThenBy(product => product.Key.Product, StringComparer.Ordinal).ThenBy(product => product.Key.Height).ThenByDescending(product => product.Key.Length)
            .ToList();
        var weighed = Weighed(lines);
        return
        [
            .. weighed.Where(line => line.Key.IsUnit),
            .. products.Select(product => Weighed(new OrderLine(product.Key, 0) { Waste = UnitWaste(product.Net) })),
            .. products.Select(product => Pallets(product.Key, product.Net)),
            .. weighed.Where(line => !line.Key.IsUnit).Select(WithLoss),
        ];
    }

    /// <summary>The lines of a job whose deliveries each have their own waste and packs: what is ordered in all.</summary>
    /// <param name="job">As if all came at once.</param>
    public static ImmutableArray<OrderLine> Together(ImmutableArray<OrderLine> job, ImmutableArray<Delivery> deliveries)
    {
        var parts = deliveries.SelectMany(delivery => delivery.Lines).ToLookup(line => line.Key);
        return deliveries.IsEmpty ? job :
        [
            .. job.Select(line => line with
            {
                Net = line.Net is null ? null : parts[line.Key].Sum(part => part.Net),
                Waste = parts[line.Key].Sum(part => part.Waste),
                Packs = line.Packs is { } packs
                    ? packs with { Count = parts[line.Key].Sum(part => part.Packs!.Value.Count), LeftOver = parts[line.Key].Sum(part => part.Packs!.Value.LeftOver) }
                    : null,
            }),
        ];
    }

    /// <summary>The lines with the masses of their pieces.</summary>
    public ImmutableArray<OrderLine> Weighed(ImmutableArray<OrderLine> lines) => [.. lines.Select(Weighed)];

    /// <summary>Two bags a pallet; null where that rule does not apply or a pallet's content is not known.</summary>
    public int? BagsByPallets(ImmutableArray<OrderLine> lines)
    {
        var pallets = lines.Where(line => line.Key.IsUnit).Select(line => line.Net / Content(line.Key)).ToList();
        return rules.Catalog.BedJoint.Max > _thin || pallets.Count == 0 || pallets.Contains(null) ? null : (int)Math.Ceiling((pallets.Sum()!.Value * 2) - 1e-9);
    }

    private OrderLine Weighed(OrderLine line)
    {
        var isUnit = line.Key.IsUnit || line.Key.Item == OrderItem.UnitWaste;
        var mass = isUnit && line.Key is { Length: { } length, Height: { } height, Width: { } width } ? rules.Catalog.Mass(line.Key.Product, length, height, width) : line.MassEach;
        return line with { MassEach = mass, IsOverLiftLimit = isUnit && mass > _data.LiftLimit };
    }

    private double UnitWaste(double net) => Math.Ceiling((net * _data.UnitWastePercent / 100) - 1e-9);

    private int? Content(OrderKey key) => rules.Catalog.PalletContent(key.Product, key.Height!.Value, key.Width!.Value);

    /// <summary>Pallets of a product: those that hold what is built in, and those more that the waste asks for.</summary>
    private OrderLine Pallets(OrderKey product, double net)
    {
        var key = product.Pallet;
        if (Content(product) is not { } content)
        {
            return new OrderLine(key, null);
        }

        var packs = OrderPacks.For(net + UnitWaste(net), content);
        var plain = OrderPacks.For(net, content).Count;
        return new OrderLine(key, plain)
        {
            Waste = packs.Count - plain,
            Packs = packs,
            MassEach = rules.Catalog.Mass(product.Product, product.Length!.Value, product.Height!.Value, product.Width!.Value) * content,
        };
    }

    private OrderLine WithLoss(OrderLine line) => line.Key.Item switch
    {
        OrderItem.JointMortar => Bags(line, _data.JointMortar),
        OrderItem.LevellingMortar => Bags(line, _data.LevellingMortar),
        OrderItem.Membrane => rules.Set.Membrane?.Roll is { } roll ? line with { Packs = OrderPacks.For(line.Gross!.Value, roll.Mm / 1000) } : line,
        OrderItem.Grout or OrderItem.Concrete => line with { Waste = line.Net!.Value * _data.GroutWastePercent / 100 },
        _ => line,
    };

    private static OrderLine Bags(OrderLine line, MortarData mortar)
    {
        var loss = line with { Waste = line.Net!.Value * mortar.LossPercent / 100 };
        return mortar.LitresPerBag is { } litres ? loss with { Packs = OrderPacks.For(loss.Gross!.Value, litres), MassEach = mortar.KilogramsPerLitre } : loss;
    }
}
