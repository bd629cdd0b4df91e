using IfcCourser.Layouts;
using IfcCourser.Output.Workbooks;
using IfcCourser.Units;
using static System.FormattableString;

namespace IfcCourser.Output.Ordering;

/// <summary>The bars of the schedule by mark; lengths in mm or inches.</summary>
internal static class BarSheet
{
    public static WorkbookSheet Of(Layout layout, OrderText text)
    {
        var rows = new SheetRows();
        rows.Title("Bars", "Sizes and shapes follow the rule set: an engineer confirms them. A, B and R as the bar list form of the rules has them, outside to outside.");
        var (length, mass) = (text.LengthUnit, text.MassUnit);
        rows.Header(
            ("Mark", CellFormat.Text), ("Size", CellFormat.Text), ("Steel", CellFormat.Text), ("Shape", CellFormat.Text), ($"A ({length})", CellFormat.Plain), ($"B ({length})", CellFormat.Plain), ($"R ({length})", CellFormat.Plain),
            ("Number", CellFormat.Plain), ($"Length ({length})", CellFormat.Plain), ($"Total length ({length})", CellFormat.Plain), ($"Mass each ({mass})", CellFormat.Plain), ($"Mass ({mass})", CellFormat.Plain));
        var sums = (Number: 0.0, Length: 0.0, Mass: 0.0);
        foreach (var bar in Bars(layout))
        {
            var row = rows.Next;
            var (own, each) = (text.Measurable(bar.Length), Math.Round(text.Mass(bar.MassEach), 3));
            WorkbookCell Dimension(Length? value) => WorkbookCell.Of(value is { } given && given > Length.Zero ? text.Measurable(given) : null, text.LengthFormat);
            rows.Row(
                WorkbookCell.Of(bar.Mark), WorkbookCell.Of(bar.Size), WorkbookCell.Of(bar.Steel), WorkbookCell.Of(bar.Shape), Dimension(bar.A), Dimension(bar.B), Dimension(bar.Radius),
                WorkbookCell.Of(bar.Number, CellFormat.Whole), Dimension(bar.Length), WorkbookCell.Reckoned(Invariant($"H{row}*I{row}"), bar.Number * own, text.LengthFormat),
                WorkbookCell.Of(each, CellFormat.TwoDecimals), WorkbookCell.Reckoned(Invariant($"H{row}*K{row}"), bar.Number * each, CellFormat.TwoDecimals));
            sums = (sums.Number + bar.Number, sums.Length + (bar.Number * own), sums.Mass + (bar.Number * each));
        }

        rows.Total(
        [
            WorkbookCell.Of(WorkbookWords.Total, CellRole.Total), .. Enumerable.Repeat(WorkbookCell.Of(null, CellRole.Total), 6),
            rows.Sum(7, sums.Number, CellFormat.Whole), WorkbookCell.Of(null, CellRole.Total), rows.Sum(9, sums.Length, text.LengthFormat), WorkbookCell.Of(null, CellRole.Total),
            rows.Sum(11, sums.Mass, CellFormat.TwoDecimals),
        ]);
        return rows.Sheet("Bars", 8, 14, 22, 26, 10, 10, 9, 9, 11, 13, 11, 11);
    }

    private static IEnumerable<Bar> Bars(Layout layout) => layout.BarSchedule.GroupBy(row => row.Mark, StringComparer.Ordinal)
        .Select(mark => mark.First() with { Number = mark.Sum(row => row.Number) })
        .Select(row => new Bar(row.Mark, row.Size.Name, row.Steel, row.Shape, row.A, row.B, row.Radius, row.Number, row.Length, row.Size.Mass(row.Length)));

    /// <param name="Length">Of one.</param>
    /// <param name="MassEach">kg.</param>
    private sealed record Bar(string Mark, string Size, string Steel, string Shape, Length? A, Length? B, Length? Radius, int Number, Length Length, double MassEach);
}
