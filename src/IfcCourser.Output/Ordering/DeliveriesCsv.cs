using System.Globalization;
using System.Text;
using IfcCourser.Layouts;
using IfcCourser.Output.Json;
using IfcCourser.Output.Tables;

namespace IfcCourser.Output.Ordering;

/// <summary>deliveries.csv: what comes in each delivery, packs rounded once for each; columns as in <see cref="TakeoffCsv"/> (RFC 4180, UTF-8).</summary>
public static class DeliveriesCsv
{
    /// <param name="layout">With an order of several deliveries.</param>
    public static void Write(Layout layout, Stream stream)
    {
        var text = new OrderText(layout.Rules);
        using var writer = new StreamWriter(stream, new UTF8Encoding(false), leaveOpen: true) { NewLine = "\r\n" };
        writer.WriteLine("phase,item,description,width,unit,net,waste,gross,packs,left_over");
        foreach (var (delivery, line) in layout.Order!.Deliveries.SelectMany(delivery => delivery.Lines.Select(line => (delivery, line))))
        {
            string? Amount(double? amount) => amount is { } value ? CsvNumber.Of(text.Amount(line.Key, value), text.Decimals(line.Key)) : null;
            writer.WriteLine(string.Join(',', ((string?[])
            [
                delivery.Phase.Name, JsonNames.Of(line.Key.Item), text.Plain(line), line.Key.Width is { } width ? CsvNumber.Of(text.Number(width), 4) : null, text.Unit(line.Key),
                Amount(line.Net), line.Net is null ? null : Amount(line.Waste), Amount(line.Gross), line.Packs?.Count.ToString(CultureInfo.InvariantCulture), Amount(line.Packs?.LeftOver),
            ]).Select(CsvCell.Of)));
        }
    }
}
