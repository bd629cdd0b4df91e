using System.Globalization;
using System.Text;
using IfcCourser.Output.Tables;

namespace IfcCourser.Output.Batches;

/// <summary>batch.csv: a row for each lot in the order of the manifest (RFC 4180, UTF-8).</summary>
public static class BatchCsv
{
    private const string Columns = "lot,model,status,reason,walls,coursed,pieces,full_units,part_units,findings,reused,seconds";

    /// <param name="withTimes">Whether seconds are filled: with them the same input does not give the same bytes.</param>
    public static string Of(BatchSummary batch, bool withTimes)
    {
        var text = new StringBuilder(Columns).Append('\n');
        foreach (var lot in batch.Lots)
        {
            var counts = lot.Counts;
            text.Append(CultureInfo.InvariantCulture, $"{CsvCell.Of(lot.Name)},{CsvCell.Of(lot.Plan)},{(lot.IsDone ? "done" : "failed")},{CsvCell.Of(lot.Reason)},");
            text.Append(CultureInfo.InvariantCulture, $"{counts.Walls},{counts.Coursed},{counts.Pieces},{counts.FullUnits},{counts.PartUnits},{counts.Findings},");
            text.Append(CultureInfo.InvariantCulture, $"{(lot.IsReused ? "yes" : "no")},{(withTimes ? lot.Time?.TotalSeconds : null):0.000}\n");
        }

        return text.ToString();
    }
}
