namespace IfcCourser.Layouts;

/// <summary>Whole packs to order.</summary>
/// <param name="Count">Pallets or bags.</param>
/// <param name="Content">Of one, in the line's unit; of pallets, units.</param>
/// <param name="LeftOver">What remains of the last one when all is used, in the same unit.</param>
public readonly record struct OrderPacks(int Count, double Content, double LeftOver)
{
    /// <summary>The fewest packs that hold an amount.</summary>
    public static OrderPacks For(double amount, double content)
    {
        // What floating point adds to a sum must not open another bag.
        var count = (int)Math.Ceiling((amount / content) - 1e-9);
        return new OrderPacks(count, content, Math.Max(0, (count * content) - amount));
    }
}
