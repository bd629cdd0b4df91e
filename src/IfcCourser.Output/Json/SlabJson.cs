using System.Text.Json;
using IfcCourser.Slabs;

namespace IfcCourser.Output.Json;

/// <summary>slab.json: the datum for the first course, the bed under each of its blocks, what may be done about highs and lows, bars as built.</summary>
/// <remarks>mm, m2, m3 and litres. datum: underside of the lowest first course in the heights of the readings.</remarks>
public static class SlabJson
{
    /// <summary>The word that the file has for a remedy.</summary>
    public static string NameOf(RemedyKind kind) => JsonNames.Of(kind);

    /// <summary>Writes UTF-8 with a line feed at the end; the same survey gives the same bytes.</summary>
    public static void Write(SlabSurvey survey, Stream stream)
    {
        using (var json = new Utf8JsonWriter(stream, LayoutJson.Options))
        {
            json.WriteStartObject();
            json.WriteString("schema", "ifccourser.slab/1");
            json.WriteString("stage", "slab");
            json.WriteString("storey", survey.Storey);
            json.Member("datum", survey.Datum);
            json.WriteString("heights", JsonNames.Of(survey.Readings.Heights));
            if (survey.Readings.Heights != ReadingHeights.Bench)
            {
                json.Member("raised", survey.Chosen.Raised);
            }

            json.Line("limits", line =>
            {
                line.Member("min", survey.Field.Limits.Min);
                line.Member("max", survey.Field.Limits.Max);
            });
            json.Line("bed", line => Bed(line, survey));
            json.Lines("remedies", survey.Remedies, Remedy);
            json.Lines("control", survey.Readings.Fit?.Residuals ?? [], (line, residual) =>
            {
                line.WriteString("point", residual.Point);
                line.Member("off", residual.Off);
            });
            json.Lines("readings", survey.Readings.Levels, (line, reading) => Reading(line, survey, reading));
            json.Lines("blocks", survey.Beds, Block);
            json.Lines("bars", survey.Bars, Bar);
            json.Lines("bonds", survey.BondChanges, Bond);
            json.Lines("tolerances", survey.Tolerances, ToleranceJson.Write);
            json.Lines("findings", survey.Findings, LayoutJson.Finding);
            json.WriteEndObject();
        }

        stream.WriteByte((byte)'\n');
    }

    private static void Bed(Utf8JsonWriter json, SlabSurvey survey)
    {
        json.Member("min", survey.Beds.Min(bed => bed.Least));
        json.Member("max", survey.Beds.Max(bed => bed.Most));
        json.Member("mean", survey.Field.Room(survey.Chosen.Raised) / survey.Field.Area);
        json.Member("volume", survey.Field.Mortar(survey.Chosen.Raised) / 1e9);
        json.Member("area", survey.Field.Area / 1e6);
    }

    private static void Remedy(Utf8JsonWriter json, SlabRemedy remedy)
    {
        json.WriteString("kind", JsonNames.Of(remedy.Kind));
        json.WriteBoolean("possible", remedy.IsPossible);
        json.Member("raised", remedy.Raised);
        json.Member("depth", remedy.Depth);
        json.Member("area", remedy.Area / 1e6);
        json.Member("litres", remedy.Volume / 1e6);
        json.Member("mortarLitres", remedy.Mortar / 1e6);
        json.WriteNumber("blocks", remedy.Blocks);
        json.Member("effort", remedy.Effort);
    }

    private static void Reading(Utf8JsonWriter json, SlabSurvey survey, PlacedReading reading)
    {
        json.WriteString("point", reading.Point);
        json.Member("at", reading.Plan);
        json.Member("height", reading.Height);
        json.Member("belowDatum", survey.Datum - reading.Height);
    }

    private static void Block(Utf8JsonWriter json, BlockBed bed)
    {
        json.WriteString("wall", bed.Block.Wall.Identity.GlobalId);
        json.WriteString("piece", bed.Block.Piece.Id);
        json.Member("bed", bed.Mean);
        json.Member("bedMin", bed.Least);
        json.Member("bedMax", bed.Most);
        if (bed.High > 0)
        {
            json.Member("takeOff", bed.High);
        }

        if (bed.Low > 0)
        {
            json.Member("fill", bed.Low);
        }

        if (bed.IsOutside)
        {
            json.WriteBoolean("beyondReadings", true);
        }
    }

    private static void Bond(Utf8JsonWriter json, BondChange change)
    {
        json.WriteString("wall", change.After.Identity.GlobalId);
        json.WriteStartArray("cores");
        foreach (var core in change.Bars)
        {
            json.WriteStringValue(core);
        }

        json.WriteEndArray();
        json.WriteNumber("cutsPlanned", change.Before.Quantities.PartUnits);
        json.WriteNumber("cuts", change.After.Quantities.PartUnits);
    }

    private static void Bar(Utf8JsonWriter json, BarAsBuilt bar)
    {
        json.WriteString("point", bar.Bar.Point);
        json.WriteString("wall", bar.Wall.Identity.GlobalId);
        json.WriteString("core", bar.Core.Id);
        json.Member("along", bar.Along);
        json.Member("across", bar.Across);
        json.Member("play", bar.Core.PlayMinus, bar.Core.PlayPlus);
        json.WriteString("status", Messages.Of(bar.Where));
        json.WriteString("answer", JsonNames.Of(bar.Answer));
    }
}
