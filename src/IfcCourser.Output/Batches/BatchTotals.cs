using System.Text;
using System.Text.Json;
using IfcCourser.Output.Json;

namespace IfcCourser.Output.Batches;

/// <summary>totals.json: all lots together, then each delivery phase and each plan, in the order of the manifest, findings by code, and what failed.</summary>
public static class BatchTotals
{
    public static string Of(BatchSummary batch)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, LayoutJson.Options))
        {
            json.WriteStartObject();
            Sum(json, batch.All);
            Objects(json, "phases", batch.Phases, phase =>
            {
                json.WriteString("phase", phase.Phase);
                Sum(json, phase.Sum);
            });
            Objects(json, "plans", batch.Plans, plan =>
            {
                json.WriteString("model", plan.Plan);
                json.WriteBoolean("mirrored", plan.IsMirrored);
                Sum(json, plan.Sum);
            });
            Objects(json, "findings", batch.Findings, found =>
            {
                json.WriteString("code", found.Found.Code);
                json.WriteString("severity", JsonNames.Of(found.Found.Severity));
                json.WriteNumber("count", found.Found.Count);
                json.WriteNumber("lots", found.Lots);
            });
            Objects(json, "failures", batch.Failures, lot =>
            {
                json.WriteString("lot", lot.Name);
                json.WriteString("reason", lot.Reason);
            });
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray()) + "\n";
    }

    private static void Objects<T>(Utf8JsonWriter json, string name, IEnumerable<T> items, Action<T> members)
    {
        json.WriteStartArray(name);
        foreach (var item in items)
        {
            json.WriteStartObject();
            members(item);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Sum(Utf8JsonWriter json, LotSum sum)
    {
        var counts = sum.Counts;
        foreach (var (name, value) in ((string, int)[])
            [
                ("lots", sum.Lots), ("failed", sum.Failed), ("reused", sum.Reused), ("walls", counts.Walls), ("coursed", counts.Coursed), ("skipped", counts.Walls - counts.Coursed),
                ("pieces", counts.Pieces), ("fullUnits", counts.FullUnits), ("partUnits", counts.PartUnits), ("cuts", counts.Cuts), ("cores", counts.Cores), ("lintels", counts.Lintels),
                ("errors", counts.Errors), ("warnings", counts.Warnings), ("notes", counts.Notes),
            ])
        {
            json.WriteNumber(name, value);
        }
    }
}
