using IfcCourser.Units;

namespace IfcCourser.Layouts;

/// <summary>What lines of an order must share to be summed.</summary>
/// <param name="Product">As the layout names it; of grout and concrete, what it fills.</param>
/// <param name="Width">Thickness of the wall it is for; null where that does not matter.</param>
/// <param name="Length">Null where it does not matter.</param>
/// <param name="Height">Null where it does not matter.</param>
/// <param name="Mark">Of a bar in the schedule; empty for all else.</param>
public sealed record OrderKey(OrderItem Item, string Product, QuantityUnit Unit, Length? Width = null, Length? Length = null, Length? Height = null, string Mark = "")
{
    /// <summary>Whether it is a unit from a pallet, laid or sawn.</summary>
    public bool IsUnit => Item is OrderItem.FullUnit or OrderItem.PartUnit or OrderItem.TroughUnit or OrderItem.CoredUnit or OrderItem.CutUnit;

    /// <summary>Of the pallets that such units come on.</summary>
    public OrderKey Pallet => this with { Item = OrderItem.Pallet, Unit = QuantityUnit.Pallet };
}
