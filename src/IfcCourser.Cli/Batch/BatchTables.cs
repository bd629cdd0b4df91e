using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using IfcCourser.Output.Ordering;
using IfcCourser.Output.Tables;

namespace IfcCourser.Cli.Batch;

/// <summary>The files of a batch as a whole. They hold what was decided, not when: the same input gives the same bytes.</summary>
internal static class BatchTables
{
    private const string Columns = "lot,model,status,reason,walls,coursed,pieces,full_units,part_units,findings,reused,seconds";

    private static readonly JsonWriterOptions _options = new()
    {
        Indented = true,
        IndentSize = 1,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>batch.csv: a row for each lot in the order of the manifest.</summary>
    /// <param name="withTimes">Whether seconds are filled.</param>
    public static string Csv(IEnumerable<LotRow> rows, bool withTimes)
    {
        var text = new StringBuilder(Columns).Append('\n');
        foreach (var row in rows)
        {
            var (lot, counts) = (row.Lot.Lot, row.Result.Counts);
            text.Append(CultureInfo.InvariantCulture, $"{CsvCell.Of(lot.Name)},{CsvCell.Of(lot.Plan)},{(row.Result.IsDone ? "done" : "failed")},{CsvCell.Of(row.Result.Reason)},");
            text.Append(CultureInfo.InvariantCulture, $"{counts.Walls},{counts.Coursed},{counts.Pieces},{counts.FullUnits},{counts.PartUnits},{counts.Findings},");
            text.Append(CultureInfo.InvariantCulture, $"{(row.IsReused ? "yes" : "no")},{(withTimes ? row.Time?.TotalSeconds : null):0.000}\n");
        }

        return text.ToString();
    }

    /// <summary>order.csv: what each delivery phase takes, packs rounded once for all its lots.</summary>
    public static string Order(IReadOnlyList<LotRow> rows) => CombinedOrderCsv.Of(
        rows.GroupBy(row => row.Lot.Lot.Phase, StringComparer.Ordinal).Select(phase => (phase.Key, CombinedOrder.Of(phase.Select(row => row.Result.Order)))));

    /// <summary>totals.json: all lots together, then each delivery phase and each plan, in the order of the manifest, and what failed.</summary>
    public static string Totals(IReadOnlyList<LotRow> rows)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, _options))
        {
            json.WriteStartObject();
            LotSum.Of(rows).Write(json);
            json.WriteStartArray("phases");
            foreach (var phase in rows.GroupBy(row => row.Lot.Lot.Phase, StringComparer.Ordinal))
            {
                json.WriteStartObject();
                json.WriteString("phase", phase.Key);
                LotSum.Of(phase).Write(json);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteStartArray("plans");
            foreach (var plan in rows.GroupBy(row => (row.Lot.Lot.Plan, row.Lot.Lot.Siting.IsMirrored)))
            {
                json.WriteStartObject();
                json.WriteString("model", plan.Key.Plan);
                json.WriteBoolean("mirrored", plan.Key.IsMirrored);
                LotSum.Of(plan).Write(json);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteStartArray("failures");
            foreach (var row in rows.Where(row => !row.Result.IsDone))
            {
                json.WriteStartObject();
                json.WriteString("lot", row.Lot.Lot.Name);
                json.WriteString("reason", row.Result.Reason);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray()) + "\n";
    }
}
