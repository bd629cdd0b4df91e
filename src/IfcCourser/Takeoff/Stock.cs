using IfcCourser.Catalogs;
using IfcCourser.Layouts;
using IfcCourser.Units;

namespace IfcCourser.Takeoff;

/// <summary>The bought unit that a piece is, or is sawn from.</summary>
/// <param name="Item">What it is in the order where it is laid whole.</param>
/// <param name="Product">As pieces name it, or cored unit.</param>
/// <param name="Width">Thickness of the wall.</param>
internal sealed record Stock(OrderItem Item, string Product, Length Width, Length Length, Length Height)
{
    /// <summary>A piece that is sawn comes from a unit of full length, of the least height that holds it; if it has a core, that is bored on site.</summary>
    public static Stock Of(Piece piece, WallLayout wall, Catalog catalog)
    {
        var isWhole = piece.Cut == Cuts.None;
        var length = isWhole ? piece.Length : catalog.UnitLength;
        var height = catalog.OtherHeights.Append(catalog.UnitHeight).Order().FirstOrDefault(height => height >= piece.Height, catalog.UnitHeight);
        var (item, product) =
            piece.IsTrough ? (OrderItem.TroughUnit, piece.Product)
            : IsCored(piece, catalog) ? (OrderItem.CoredUnit, OrderingData.CoredUnit)
            : isWhole && length < catalog.UnitLength ? (OrderItem.PartUnit, OrderingData.PartUnit)
            : (OrderItem.FullUnit, OrderingData.Unit);
        return new Stock(item, product, wall.Frame.Thickness, length, height);
    }

    /// <summary>Whether it is bought with its core.</summary>
    public static bool IsCored(Piece piece, Catalog catalog) =>
        piece.Cut == Cuts.None && !piece.IsTrough && !(piece.Cores.IsEmpty && piece.CornerCores.IsEmpty) && catalog.Ordering.Cored == CoredUnits.Factory;

    public OrderKey Key(OrderItem item) => new(item, Product, QuantityUnit.Piece, Width, Length, Height);
}
