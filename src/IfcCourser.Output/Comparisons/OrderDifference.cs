using IfcCourser.Layouts;
using IfcCourser.Output.Ordering;

namespace IfcCourser.Output.Comparisons;

/// <summary>A line of the order that a revision changes.</summary>
/// <param name="What">What it is, without amounts.</param>
/// <param name="Width">In the unit of its catalog; null where it has none.</param>
/// <param name="Before">Gross amount, waste included; null where it is not known, zero where the older order has no such line.</param>
/// <param name="After">Gross amount of the newer order, likewise.</param>
public sealed record OrderDifference(OrderItem Item, string What, double? Width, string Unit, double? Before, double? After)
{
    /// <summary>Of amounts: what is less does not change an order.</summary>
    private const int Decimals = 2;

    /// <summary>In the order of the items; none where a layout was written without its order.</summary>
    public static ImmutableArray<OrderDifference> Of(Layout older, Layout newer)
    {
        if (older.Order is null || newer.Order is null)
        {
            return [];
        }

        var (was, now) = (Amounts(older), Amounts(newer));
        return
        [
            .. was.Keys.Union(now.Keys)
                .Select(key => new OrderDifference(key.Item, key.What, key.Width, key.Unit, was.TryGetValue(key, out var before) ? before : 0, now.TryGetValue(key, out var after) ? after : 0))
                .Where(line => line.Before != line.After)
                .OrderBy(line => line.Item).ThenBy(line => line.Width).ThenBy(line => line.What, StringComparer.Ordinal),
        ];
    }

    private static Dictionary<(OrderItem Item, string What, double? Width, string Unit), double?> Amounts(Layout layout) => PlainOrderLine.Of(layout)
        .GroupBy(line => (line.Item, line.What, line.Width, line.Unit))
        .ToDictionary(same => same.Key, same => same.Any(line => line.Gross is null) ? (double?)null : Math.Round(same.Sum(line => line.Gross!.Value), Decimals));
}
