using System.Globalization;
using System.Text;
using IfcCourser.Layouts;
using IfcCourser.Output.Json;
using IfcCourser.Output.Tables;

namespace IfcCourser.Output.Ordering;

/// <summary>
/// takeoff.csv: what is to be ordered for the job (RFC 4180, UTF-8). Widths in mm or inches and amounts in the unit named, as the set's units are; rows of
/// pieces add up: whole units, units to saw, waste. Cells of what is not known are empty, and the description says so.
/// </summary>
public static class TakeoffCsv
{
    /// <param name="layout">With its order.</param>
    public static void Write(Layout layout, Stream stream)
    {
        var (order, text) = (layout.Order!, new OrderText(layout.Rules));
        using var writer = new StreamWriter(stream, new UTF8Encoding(false), leaveOpen: true) { NewLine = "\r\n" };
        writer.WriteLine("item,description,width,unit,net,waste,gross,packs");
        foreach (var line in order.Lines)
        {
            string? Amount(double? amount) => amount is { } value ? CsvNumber.Of(text.Amount(line.Key, value), text.Decimals(line.Key)) : null;
            writer.WriteLine(string.Join(',', ((string?[])
            [
                JsonNames.Of(line.Key.Item), text.Description(line, order), line.Key.Width is { } width ? CsvNumber.Of(text.Number(width), 4) : null, text.Unit(line.Key),
                Amount(line.Net), line.Net is null ? null : Amount(line.Waste), Amount(line.Gross), line.Packs?.Count.ToString(CultureInfo.InvariantCulture),
            ]).Select(CsvCell.Of)));
        }
    }
}
