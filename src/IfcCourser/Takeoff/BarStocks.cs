using System.Collections.Immutable;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Takeoff;

/// <summary>
/// Cuts the bars of a schedule out of stock lengths: for each size and steel the one length that takes the least steel, the shorter where two take
/// the same. Bars are sheared, so that a cut takes nothing. Mixes of lengths are not tried.
/// </summary>
internal static class BarStocks
{
    public static ImmutableArray<BarsOfStock> Of(Layout layout) =>
    [
        .. layout.BarSchedule.GroupBy(row => (row.Size, row.Steel))
            .OrderBy(bars => BarSizes.All.IndexOf(bars.Key.Size)).ThenBy(bars => bars.Key.Steel, StringComparer.Ordinal)
            .Select(bars => Of(bars.Key.Size, bars.Key.Steel, [.. bars], layout.Rules.Set.BarList.StockOf(bars.Key.Size, bars.Key.Steel))),
    ];

    private static BarsOfStock Of(BarSize size, string steel, ImmutableArray<BarScheduleRow> rows, ImmutableArray<Length> lengths)
    {
        var longest = lengths.IsEmpty ? Length.Zero : lengths[^1];
        ImmutableArray<string> tooLong = lengths.IsEmpty ? [] : [.. rows.Where(row => row.Length > longest).Select(row => row.Mark).Distinct(StringComparer.Ordinal)];
        var bars = rows.Where(row => row.Length <= longest).SelectMany(row => Enumerable.Repeat(row, row.Number)).ToList();
        if (bars.Count == 0)
        {
            return new BarsOfStock(size, steel, Length.Zero, [], 0, tooLong);
        }

        var most = bars.Max(bar => bar.Length);
        var (stock, plan) = lengths.Where(length => length >= most)
            .Select(length => (Stock: length, Plan: BinPacking.Fill(bars.Select(bar => bar.Length.Nanometres), length.Nanometres)))
            .MinBy(nested => nested.Stock * nested.Plan.Bins.Length);
        var cuts = BinContents.Of(plan, bars, bar => bar.Length.Nanometres)
            .GroupBy(bin => string.Join(' ', bin.OrderByDescending(bar => bar.Length).Select(bar => bar.Mark)), StringComparer.Ordinal)
            .Select(alike => new BarCut(
                alike.Count(),
                [.. alike.First().OrderByDescending(bar => bar.Length).Select(bar => bar.Mark)],
                stock - alike.First().Aggregate(Length.Zero, (sum, bar) => sum + bar.Length)));
        return new BarsOfStock(size, steel, stock, [.. cuts.OrderBy(cut => cut.Offcut).ThenByDescending(cut => cut.Count)], plan.Least, tooLong);
    }
}
