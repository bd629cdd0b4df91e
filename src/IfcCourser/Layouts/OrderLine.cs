namespace IfcCourser.Layouts;

/// <summary>A line of an order.</summary>
/// <param name="Net">What is built in; null where it is not known.</param>
public sealed record OrderLine(OrderKey Key, double? Net)
{
    /// <summary>Waste, breakage, loss: in the same unit.</summary>
    public double Waste { get; init; }

    /// <summary>Null where it is not sold in packs, or what a pack holds is not known.</summary>
    public OrderPacks? Packs { get; init; }

    /// <summary>Of a piece, a pallet or a metre as delivered, kg; null where it is not known or does not matter.</summary>
    public double? MassEach { get; init; }

    /// <summary>Whether one of them is heavier than the catalog's limit for lifting by hand.</summary>
    public bool IsOverLiftLimit { get; init; }

    /// <summary>What is to be had.</summary>
    public double? Gross => Net + Waste;
}
