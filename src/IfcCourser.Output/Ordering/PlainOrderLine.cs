using IfcCourser.Layouts;

namespace IfcCourser.Output.Ordering;

/// <summary>A line of a lot's order that can be added to those of other lots; amounts and widths in the units of the lot's set.</summary>
/// <param name="Catalog">Name of the block catalog.</param>
/// <param name="What">What it is, without amounts.</param>
/// <param name="Product">Size and name of a unit; null for what is no unit.</param>
/// <param name="Net">Null where it is not known.</param>
/// <param name="PackContent">Of a pallet, units; of a bag, in the line's unit; null where it is not sold in packs or that is not known.</param>
public sealed record PlainOrderLine(
    string Catalog, OrderItem Item, string What, string? Product, double? Width, string Unit, double? Net, double Waste, double? PackContent)
{
    /// <summary>Of the width; null where there is none.</summary>
    public string? WidthUnit { get; init; }

    /// <summary>Name of the delivery within the lot that brings it; empty where all of a lot comes at once.</summary>
    public string Delivery { get; init; } = string.Empty;

    /// <summary>Whole packs for the gross amount; null where there are none.</summary>
    public int? Packs { get; init; }

    public double? Gross => Net + Waste;

    /// <summary>The lines of a layout's order, delivery by delivery.</summary>
    /// <param name="layout">With its order.</param>
    public static ImmutableArray<PlainOrderLine> Of(Layout layout) => layout.Order!.Deliveries.IsEmpty
        ? Of(layout.Order.Lines, string.Empty, layout)
        : [.. layout.Order.Deliveries.SelectMany(delivery => Of(delivery.Lines, delivery.Phase.Name, layout))];

    private static ImmutableArray<PlainOrderLine> Of(ImmutableArray<OrderLine> lines, string delivery, Layout layout)
    {
        var text = new OrderText(layout.Rules);
        return
        [
            .. lines.Select(line => new PlainOrderLine(
                layout.Rules.Catalog.Name,
                line.Key.Item,
                text.Plain(line),
                line.Key is { Unit: QuantityUnit.Pallet } or { Item: OrderItem.FullUnit or OrderItem.PartUnit or OrderItem.TroughUnit or OrderItem.CoredUnit or OrderItem.CutUnit or OrderItem.UnitWaste }
                    ? text.Size(line.Key)
                    : null,
                line.Key.Width is { } width ? text.Number(width) : null,
                text.Unit(line.Key),
                text.Exact(line.Key, line.Net),
                text.Exact(line.Key, line.Waste)!.Value,
                line.Packs is { } packs ? text.Exact(line.Key, packs.Content) : null)
            {
                WidthUnit = line.Key.Width is null ? null : text.LengthUnit,
                Delivery = delivery,
            }),
        ];
    }
}
