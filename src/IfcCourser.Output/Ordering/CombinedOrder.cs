using IfcCourser.Layouts;
using static System.FormattableString;

namespace IfcCourser.Output.Ordering;

/// <summary>Orders of several lots as one: amounts are added, packs are rounded once.</summary>
public static class CombinedOrder
{
    /// <param name="lots">The lines of each lot.</param>
    /// <returns>In the order of the items, then by width and words.</returns>
    public static ImmutableArray<PlainOrderLine> Of(IEnumerable<ImmutableArray<PlainOrderLine>> lots)
    {
        var sums = lots.SelectMany(lines => lines)
            .GroupBy(line => line with { Net = null, Waste = 0, Delivery = string.Empty })
            .Select(same => same.Key with { Net = same.Any(line => line.Net is null) ? null : same.Sum(line => line.Net), Waste = same.Sum(line => line.Waste) })
            .OrderBy(line => line.Item).ThenBy(line => line.Catalog, StringComparer.Ordinal).ThenBy(line => line.Width).ThenBy(line => line.What, StringComparer.Ordinal)
            .ToList();
        var units = sums.Where(line => line.Product is not null && line.Item != OrderItem.Pallet).ToLookup(line => (line.Catalog, line.Product, line.Width));
        return [.. sums.Select(line => line.PackContent is not { } content ? line
            : line.Item == OrderItem.Pallet ? Pallets(line, [.. units[(line.Catalog, line.Product, line.Width)]], content)
            : line with { What = Invariant($"{line.What}, in packs of {Math.Round(content, 2)} {line.Unit}"), Packs = OrderPacks.For(line.Gross!.Value, content).Count })];
    }

    /// <summary>Pallets that hold what is built in, and those more that the waste asks for.</summary>
    private static PlainOrderLine Pallets(PlainOrderLine line, ImmutableArray<PlainOrderLine> units, double content)
    {
        var (gross, packs) = (units.Sum(unit => unit.Gross!.Value), OrderPacks.For(units.Sum(unit => unit.Gross!.Value), content));
        var all = packs.Count;
        var plain = OrderPacks.For(units.Sum(unit => unit.Net!.Value), content).Count;
        var what = Invariant($"{line.What}, {all} whole {(all == 1 ? "pallet" : "pallets")} of {content} for {gross}, {packs.LeftOver} left over");
        return line with { What = what, Net = plain, Waste = all - plain, Packs = all };
    }
}
