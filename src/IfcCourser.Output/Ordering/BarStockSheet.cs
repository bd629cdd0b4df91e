using IfcCourser.Layouts;
using IfcCourser.Output.Workbooks;
using static System.FormattableString;

namespace IfcCourser.Output.Ordering;

/// <summary>Which bars are cut from which stock lengths, and what is left of each.</summary>
internal static class BarStockSheet
{
    public static WorkbookSheet Of(Layout layout, OrderText text)
    {
        var rows = new SheetRows();
        rows.Title("Bar stock", [.. layout.Order!.Bars.Select(text.Nested).Append(WorkbookWords.Stock)]);
        var unit = text.LengthUnit;
        rows.Header(
            ("Size", CellFormat.Text), ("Steel", CellFormat.Text), ($"Stock ({unit})", CellFormat.Plain), ("Number", CellFormat.Plain), ("Cut into", CellFormat.Text),
            ($"Offcut ({unit})", CellFormat.Plain), ($"Offcuts in all ({unit})", CellFormat.Plain));
        var sums = (Number: 0.0, Offcuts: 0.0);
        foreach (var (bars, cut) in layout.Order.Bars.SelectMany(bars => bars.Cuts.Select(cut => (bars, cut))))
        {
            var (row, offcut) = (rows.Next, text.Measurable(cut.Offcut));
            rows.Row(
                WorkbookCell.Of(bars.Size.Name), WorkbookCell.Of(bars.Steel), WorkbookCell.Of(text.Measurable(bars.Stock), text.LengthFormat), WorkbookCell.Of(cut.Count, CellFormat.Whole),
                WorkbookCell.Of(OrderText.Marks(cut)), WorkbookCell.Of(offcut, text.LengthFormat), WorkbookCell.Reckoned(Invariant($"D{row}*F{row}"), cut.Count * offcut, text.LengthFormat));
            sums = (sums.Number + cut.Count, sums.Offcuts + (cut.Count * offcut));
        }

        rows.Total(
            WorkbookCell.Of(WorkbookWords.Total, CellRole.Total), WorkbookCell.Of(null, CellRole.Total), WorkbookCell.Of(null, CellRole.Total), rows.Sum(3, sums.Number, CellFormat.Whole),
            WorkbookCell.Of(null, CellRole.Total), WorkbookCell.Of(null, CellRole.Total), rows.Sum(6, sums.Offcuts, text.LengthFormat));
        return rows.Sheet("Bar stock", 14, 24, 12, 9, 60, 12, 18);
    }
}
