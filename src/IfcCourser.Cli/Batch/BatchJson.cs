using System.Text.Json;
using System.Text.Json.Serialization;

namespace IfcCourser.Cli.Batch;

/// <summary>The JSON of a lot's result.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, WriteIndented = true, UseStringEnumConverter = true, NewLine = "\n", IndentSize = 1)]
[JsonSerializable(typeof(LotResult))]
internal sealed partial class BatchJson : JsonSerializerContext
{
    public static string Of(LotResult result) => JsonSerializer.Serialize(result, Default.LotResult) + "\n";
}
