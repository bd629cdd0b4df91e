using System.Text.Json;
using IfcCourser.Slabs;

namespace IfcCourser.Output.Json;

/// <summary>Figures of slab.json beside standards' tolerances, mm.</summary>
internal static class ToleranceJson
{
    public static void Write(Utf8JsonWriter json, ToleranceCheck check)
    {
        json.WriteString("what", check.What);
        json.Member("value", check.Value);
        json.Member("limit", check.Limit);
        json.WriteBoolean("kept", check.IsKept);
        json.WriteString("source", check.Source);
    }
}
