using System.Text.Json;
using IfcCourser.Catalogs;
using IfcCourser.Rules;

namespace IfcCourser.Output.Json;

/// <summary>The catalog and the rules a layout was made with.</summary>
internal static class SetsJson
{
    public static void Catalog(Utf8JsonWriter json, Catalog catalog) => json.Line("catalog", line =>
    {
        line.WriteString("name", catalog.Name);
        line.Member("unitLength", catalog.UnitLength);
        line.Member("unitHeight", catalog.UnitHeight);
        line.Member("partLengths", catalog.PartLengths.AsSpan());
        line.Member("otherHeights", catalog.OtherHeights.AsSpan());
        line.Member("widths", [.. catalog.Widths.Select(width => width.Actual)]);
        line.Member("headJoint", catalog.HeadJoint.Nominal);
        line.Member("headJointMin", catalog.HeadJoint.Min);
        line.Member("headJointMax", catalog.HeadJoint.Max);
        line.Member("bedJoint", catalog.BedJoint.Nominal);
        line.Member("bedMin", catalog.LevellingBed.Min);
        line.Member("bedMax", catalog.LevellingBed.Max);
        line.Member("bedNominal", catalog.LevellingBed.Nominal);
    });

    public static void Rules(Utf8JsonWriter json, LayoutRules rules) => json.Line("rules", line =>
    {
        line.WriteString("name", rules.Set.Name);
        line.Member("minOverlap", rules.MinOverlap);
        line.Member("minPiece", rules.MinPiece);
        line.Member("coreClearance", rules.CoreClearance);
        line.Member("module", rules.Module);
        line.Member("moduleTolerance", rules.ModuleTolerance);
        line.Member("maxShift", rules.MaxShift);
        line.WriteString("openings", JsonNames.Of(rules.Openings));
        if (rules.Set.Bars is { } bars)
        {
            line.WriteStartObject("bars");
            Bars(line, bars);
            line.WriteEndObject();
        }
    });

    private static void Bars(Utf8JsonWriter line, BarRule bars)
    {
        line.Member("spacing", bars.LargestSpacing);
        line.WriteString("size", bars.Designation);
        line.WriteString("steel", bars.Steel);
        line.Member("lap", bars.Lap);
        line.Member("groutLift", bars.GroutLift);
        line.WriteStartArray("sources");
        foreach (var source in bars.Sources)
        {
            line.WriteStartObject();
            line.Member("keys", source.Keys);
            line.WriteString("standard", source.Standard);
            line.WriteString("clause", source.Clause);
            line.WriteString("certainty", JsonNames.Of(source.Certainty));
            line.WriteEndObject();
        }

        line.WriteEndArray();
    }
}
