using IfcCourser.Layouts;
using IfcCourser.Output.Workbooks;
using static System.FormattableString;

namespace IfcCourser.Output.Ordering;

/// <summary>What comes in each delivery.</summary>
internal static class DeliverySheet
{
    public static WorkbookSheet Of(Layout layout, OrderText text)
    {
        var rows = new SheetRows();
        rows.Title("By delivery", WorkbookWords.Deliveries);
        rows.Header(
            ("Delivery", CellFormat.Text), ("Item", CellFormat.Text), ("Description", CellFormat.Text), ($"Width ({text.LengthUnit})", CellFormat.Plain), ("Unit", CellFormat.Text),
            ("Net", CellFormat.Plain), ("Waste", CellFormat.Plain), ("Gross", CellFormat.Plain), ("Packs", CellFormat.Plain), ("Left over", CellFormat.Plain));
        foreach (var (delivery, line) in layout.Order!.Deliveries.SelectMany(delivery => delivery.Lines.Select(line => (delivery, line))))
        {
            var (format, row) = (text.Format(line.Key), rows.Next);
            var (net, waste) = (text.Exact(line.Key, line.Net), text.Exact(line.Key, line.Waste));
            rows.Row(
                WorkbookCell.Of(delivery.Phase.Name), WorkbookCell.Of(OrderItemWords.Of(line.Key.Item)), WorkbookCell.Of(text.Plain(line)),
                WorkbookCell.Of(line.Key.Width is { } width ? text.Number(width) : null, text.LengthFormat), WorkbookCell.Of(text.Unit(line.Key)),
                WorkbookCell.Of(net, format), WorkbookCell.Of(net is null ? null : waste, format),
                net is null ? WorkbookCell.Of((double?)null, format) : WorkbookCell.Reckoned(Invariant($"F{row}+G{row}"), net + waste, format),
                WorkbookCell.Of(line.Packs?.Count, CellFormat.Whole), WorkbookCell.Of(text.Exact(line.Key, line.Packs?.LeftOver), format));
        }

        return rows.Sheet("By delivery", 18, 15, 60, 10, 8, 10, 9, 10, 8, 10);
    }
}
