using System.Text.Json.Serialization;
using IfcCourser.Rules;

namespace IfcCourser.Output.Json;

/// <summary>What <see cref="SettingsJson"/> writes and reads, as the compiler sees it.</summary>
[JsonSourceGenerationOptions(
    GenerationMode = JsonSourceGenerationMode.Metadata, PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, IgnoreReadOnlyProperties = true, IncludeFields = true,
    RespectNullableAnnotations = true)]
[JsonSerializable(typeof(LayoutRules))]
internal sealed partial class SettingsContext : JsonSerializerContext;
