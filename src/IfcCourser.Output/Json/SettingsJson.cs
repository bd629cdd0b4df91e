using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using IfcCourser.Catalogs;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Output.Json;

/// <summary>
/// The whole catalog and rule set of a layout, property by property as the records have them, so that what is made from a layout that was read
/// back needs no other file.
/// </summary>
internal static class SettingsJson
{
    private const string Name = "settings";

    private static readonly JsonSerializerOptions _options = new(SettingsContext.Default.Options)
    {
        Converters =
        {
            new LengthConverter(), new MeasureConverter(), new BarSizeConverter(), Names<LintelKind>(), Names<CoredUnits>(), Names<HeightAim>(), Names<BarListForm>(), Names<LayerNames>(), Names<BarKind>(),
            Names<BeamedTops>(), Names<BarLengths>(), Names<MembraneStoreys>(), Names<BeamedWalls>(), Names<JointedWalls>(), Names<Certainty>(), Names<TeeBuild>(), Names<StoreyStart>(),
            Names<VoidMeaning>(), Names<Datum>(), Names<OpeningPolicy>(), Names<UnitSystem>(),
        },
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        TypeInfoResolver = SettingsContext.Default.WithAddedModifier(RequireAll),
    };

    private static readonly JsonTypeInfo<LayoutRules> _rules = (JsonTypeInfo<LayoutRules>)_options.GetTypeInfo(typeof(LayoutRules));

    public static void Write(Utf8JsonWriter json, LayoutRules rules)
    {
        json.WritePropertyName(Name);
        json.WriteRawValue(JsonSerializer.SerializeToUtf8Bytes(rules, _rules), skipInputValidation: true);
    }

    /// <summary>The rules; null, and a note, where a member is missing or not what it should be.</summary>
    public static LayoutRules? Read(JsonPlace root)
    {
        var place = root[Name];
        if (place.Element().ValueKind is not JsonValueKind.Object)
        {
            place.Note("is not an object");
            return null;
        }

        try
        {
            var rules = place.Element().Deserialize(_rules)!;
            if (Unsound(rules.Catalog) is { } member)
            {
                place.Note($"has no sound value of catalog.{member}");
            }

            return rules;
        }
        catch (JsonException e)
        {
            place.Note($"can't be read at {e.Path ?? "$"}: a member is missing there, or is not what it should be");
            return null;
        }
    }

    private static string? Unsound(Catalog catalog) => (catalog.UnitLength, catalog.UnitHeight, catalog.Module, catalog.CutGrid) switch
    {
        var (length, _, _, _) when length <= Length.Zero => "unitLength",
        var (_, height, _, _) when height <= Length.Zero => "unitHeight",
        var (_, _, module, _) when module <= Length.Zero => "module",
        var (_, _, _, grid) when grid <= Length.Zero => "cutGrid",
        _ when !IsSound(catalog.HeadJoint) => "headJoint",
        _ when !IsSound(catalog.BedJoint) => "bedJoint",
        _ when !IsSound(catalog.LevellingBed) => "levellingBed",
        _ when catalog.Ordering.Staging is { IsSound: false } => "ordering.staging",
        _ => null,
    };

    private static bool IsSound(LengthRange range) => range.Min >= Length.Zero && range.Min <= range.Nominal && range.Nominal <= range.Max;

    /// <summary>The names of an enumeration: one converter for all of them would make code as it runs, which a program compiled ahead of time can't.</summary>
    private static JsonStringEnumConverter<T> Names<T>()
        where T : struct, Enum => new(JsonNamingPolicy.KebabCaseLower, allowIntegerValues: false);

    // A value that is left out would else be zero.
    private static void RequireAll(JsonTypeInfo type)
    {
        foreach (var property in type.Properties.Where(property => property.Set is not null))
        {
            property.IsRequired = true;
        }
    }

    private sealed class LengthConverter : JsonConverter<Length>
    {
        public override Length Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            reader.TokenType is JsonTokenType.Number && reader.TryGetDecimal(out var mm) && JsonValues.FromMm(mm) is { } length
                ? length
                : throw new JsonException();

        public override void Write(Utf8JsonWriter writer, Length value, JsonSerializerOptions options) => writer.Value(value);
    }

    /// <summary>Numbers that are no lengths, masses and shares: none is so large or so small that sums of it run over.</summary>
    private sealed class MeasureConverter : JsonConverter<double>
    {
        private const double Largest = 1e9;
        private const double Smallest = 1e-9;

        public override double Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            reader.TokenType is JsonTokenType.Number && reader.TryGetDouble(out var number) && (number == 0 || Math.Abs(number) is >= Smallest and <= Largest)
                ? number
                : throw new JsonException();

        public override void Write(Utf8JsonWriter writer, double value, JsonSerializerOptions options) => writer.WriteNumberValue(value);
    }

    private sealed class BarSizeConverter : JsonConverter<BarSize>
    {
        public override BarSize Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            reader.TokenType is JsonTokenType.String && BarSizes.Find(reader.GetString()!) is { } size ? size : throw new JsonException();

        public override void Write(Utf8JsonWriter writer, BarSize value, JsonSerializerOptions options) => writer.WriteStringValue(value.Name);
    }
}
