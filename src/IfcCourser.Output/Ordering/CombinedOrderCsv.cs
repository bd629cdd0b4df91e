using System.Globalization;
using System.Text;
using IfcCourser.Output.Json;
using IfcCourser.Output.Tables;

namespace IfcCourser.Output.Ordering;

/// <summary>order.csv of a batch: what each delivery phase takes, as takeoff.csv has it for a lot (RFC 4180, UTF-8).</summary>
public static class CombinedOrderCsv
{
    /// <param name="phases">Name of each phase and its combined order.</param>
    public static string Of(IEnumerable<(string Phase, ImmutableArray<PlainOrderLine> Lines)> phases)
    {
        var text = new StringBuilder("phase,catalog,item,description,width,width_unit,unit,net,waste,gross,packs\n");
        foreach (var (phase, line) in phases.SelectMany(phase => phase.Lines.Select(line => (phase.Phase, line))))
        {
            text.AppendJoin(',', ((string?[])
            [
                phase, line.Catalog, JsonNames.Of(line.Item), line.What, Number(line.Width), line.WidthUnit, line.Unit, Number(line.Net), line.Net is null ? null : Number(line.Waste), Number(line.Gross),
                line.Packs?.ToString(CultureInfo.InvariantCulture),
            ]).Select(CsvCell.Of)).Append('\n');
        }

        return text.ToString();
    }

    private static string? Number(double? value) => value is { } number ? (Math.Round(number, 4) + 0.0).ToString("0.####", CultureInfo.InvariantCulture) : null;
}
