namespace IfcCourser.Layouts;

/// <summary>What a quantity of an order is counted in.</summary>
public enum QuantityUnit
{
    Piece,
    Pallet,
    Metre,
    SquareMetre,
    Litre,
}
