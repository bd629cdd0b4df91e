using System.Globalization;
using System.Text;
using IfcCourser.Layouts;
using IfcCourser.Output.Ordering;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Output.Tables;

/// <summary>
/// bar-stock.csv: from which stock lengths bars are cut, alike ones in one row, what is left of each, and how many bars of the length are needed at least
/// as far as was proven (RFC 4180, UTF-8). Lengths in mm or inches as the bar list has them.
/// </summary>
public static class BarStockCsv
{
    /// <param name="layout">With its order.</param>
    public static void Write(Layout layout, Stream stream)
    {
        var isInch = layout.Rules.BarListForm == BarListForm.Aci315;
        using var writer = new StreamWriter(stream, new UTF8Encoding(false), leaveOpen: true) { NewLine = "\r\n" };
        writer.WriteLine("size,steel,stock,number,cut_into,offcut,unit,bars_of_stock,least");
        foreach (var (bars, cut) in layout.Order!.Bars.SelectMany(bars => bars.Cuts.Select(cut => (bars, cut))))
        {
            writer.WriteLine(string.Join(',', ((string?[])
            [
                bars.Size.Name, bars.Steel, Text(bars.Stock), Number(cut.Count), OrderText.Marks(cut), Text(cut.Offcut), isInch ? "in" : "mm", Number(bars.Count), Number(bars.Least),
            ]).Select(CsvCell.Of)));
        }

        string Text(Length length) => (isInch ? length.Inches : length.Mm).ToString("0.####", CultureInfo.InvariantCulture);

        string Number(int count) => count.ToString(CultureInfo.InvariantCulture);
    }
}
