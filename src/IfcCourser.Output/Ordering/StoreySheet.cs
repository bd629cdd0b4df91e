using IfcCourser.Layouts;
using IfcCourser.Output.Workbooks;
using static System.FormattableString;

namespace IfcCourser.Output.Ordering;

/// <summary>What each storey takes, side by side.</summary>
internal static class StoreySheet
{
    private const int FirstStorey = 4;

    public static WorkbookSheet Of(Layout layout, OrderText text)
    {
        var (order, rows) = (layout.Order!, new SheetRows());
        var storeys = order.Storeys;
        rows.Title("By storey", WorkbookWords.NetOnly);
        rows.Header(
        [
            ("Item", CellFormat.Text), ("Description", CellFormat.Text), ($"Width ({text.LengthUnit})", CellFormat.Plain), ("Unit", CellFormat.Text),
            .. storeys.Select(storey => (storey.Name ?? "no storey", CellFormat.Plain)), (WorkbookWords.Total, CellFormat.Plain),
        ]);
        var amounts = storeys.Select(storey => storey.Lines.ToDictionary(line => line.Key, line => line.Net)).ToArray();
        foreach (var line in order.Lines.Where(line => storeys.Any(storey => storey.Lines.Any(own => own.Key == line.Key))))
        {
            var (format, row) = (text.Format(line.Key), rows.Next);
            var nets = amounts.Select(storey => text.Exact(line.Key, storey.GetValueOrDefault(line.Key))).ToArray();
            rows.Row(
            [
                WorkbookCell.Of(OrderItemWords.Of(line.Key.Item)), WorkbookCell.Of(text.Short(line)), WorkbookCell.Of(line.Key.Width is { } width ? text.Number(width) : null, text.LengthFormat),
                WorkbookCell.Of(text.Unit(line.Key)), .. nets.Select(net => WorkbookCell.Of(net, format)),
                WorkbookCell.Reckoned(
                    Invariant($"SUM({WorkbookSheet.Column(FirstStorey)}{row}:{WorkbookSheet.Column(FirstStorey + storeys.Length - 1)}{row})"), nets.Sum(), format),
            ]);
        }

        return rows.Sheet("By storey", [15, 56, 10, 8, .. Enumerable.Repeat(14.0, storeys.Length), 12]);
    }
}
