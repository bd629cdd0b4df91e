using IfcCourser.Layouts;
using IfcCourser.Output.Workbooks;
using static System.FormattableString;

namespace IfcCourser.Output.Ordering;

/// <summary>The lines of the job, with prices to be filled in.</summary>
internal static class OrderSheet
{
    public static WorkbookSheet Of(Layout layout, OrderText text)
    {
        var (order, rows) = (layout.Order!, new SheetRows());
        rows.Title(
            WorkbookWords.Title(layout), WorkbookWords.Run(layout), WorkbookWords.Saving(order.Saw), WorkbookWords.Examples, WorkbookWords.Cautions, WorkbookWords.Prices);
        rows.Header(
            ("Item", CellFormat.Text), ("Description", CellFormat.Text), ($"Width ({text.LengthUnit})", CellFormat.Plain), ("Unit", CellFormat.Text), ("Net", CellFormat.Plain), ("Waste", CellFormat.Plain), ("Gross", CellFormat.Plain),
            ("Packs", CellFormat.Plain), ("Price", CellFormat.Plain), ("Amount", CellFormat.Plain));
        foreach (var line in order.Lines)
        {
            rows.Row(Line(line, order, text, rows.Next));
        }

        rows.Total(
        [
            WorkbookCell.Of(WorkbookWords.Total, CellRole.Total), .. Enumerable.Repeat(WorkbookCell.Of(null, CellRole.Total), 8),
            rows.Sum(9, 0, CellFormat.Money),
        ]);
        return rows.Sheet("Order", 15, 76, 10, 8, 10, 9, 10, 8, 12, 14);
    }

    private static IEnumerable<WorkbookCell> Line(OrderLine line, Order order, OrderText text, int row)
    {
        var format = text.Format(line.Key);
        var (net, waste) = (text.Exact(line.Key, line.Net), text.Exact(line.Key, line.Waste));
        return
        [
            WorkbookCell.Of(OrderItemWords.Of(line.Key.Item)),
            WorkbookCell.Of(text.Description(line, order)),
            WorkbookCell.Of(line.Key.Width is { } width ? text.Number(width) : null, text.LengthFormat),
            WorkbookCell.Of(text.Unit(line.Key)),
            WorkbookCell.Of(net, format),
            WorkbookCell.Of(net is null ? null : waste, format),
            net is null ? WorkbookCell.Of((double?)null, format) : WorkbookCell.Reckoned(Invariant($"E{row}+F{row}"), net + waste, format),
            WorkbookCell.Of(line.Packs?.Count, CellFormat.Whole),
            WorkbookCell.Of((double?)null, CellFormat.Money, CellRole.Input),
            WorkbookCell.Reckoned(Invariant($"IF(I{row}=\"\",\"\",I{row}*IF(H{row}=\"\",G{row},H{row}))"), null, CellFormat.Money),
        ];
    }
}
