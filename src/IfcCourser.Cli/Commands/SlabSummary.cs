using System.Text;
using System.Text.Json;
using IfcCourser.Slabs;

namespace IfcCourser.Cli.Commands;

/// <summary>What a run of slab came to, as text or as one JSON object.</summary>
internal static class SlabSummary
{
    public static void Print(SlabSurvey survey, SlabSettings settings, IReadOnlyList<string> files, Terminal terminal)
    {
        if (settings.Json)
        {
            terminal.Data(Json(survey, settings, files));
        }
        else
        {
            foreach (var line in Lines(survey, settings, files))
            {
                terminal.Result(line);
            }
        }

        terminal.Note(Messages.SlabCautions);
    }

    public static void Print(LevelledCourse course, SlabSettings settings, IReadOnlyList<string> files, Terminal terminal)
    {
        var units = course.Layout.Rules.Catalog.Units;
        var lines = new[] { Messages.LevelledCourse(course), Messages.LevelledLevel(course, units) }
            .Concat(course.Findings.Select(Messages.SlabFinding)).Append(Messages.Written(settings.Out)).Concat(files.Select(Messages.WrittenFile));
        foreach (var line in lines)
        {
            terminal.Result(line);
        }

        terminal.Note(Messages.SlabCautions);
    }

    private static IEnumerable<string> Lines(SlabSurvey survey, SlabSettings settings, IReadOnlyList<string> files)
    {
        var units = survey.Layout.Rules.Catalog.Units;
        yield return Messages.SlabReadings(survey);
        foreach (var residual in survey.Readings.Fit?.Residuals ?? [])
        {
            yield return Messages.ControlResidual(residual, units);
        }

        yield return Messages.SlabDatum(survey, units);
        yield return Messages.SlabBed(survey, units);
        foreach (var remedy in survey.Remedies)
        {
            yield return Messages.SlabRemedy(remedy, remedy == survey.Chosen, units);
        }

        if (!survey.Bars.IsEmpty)
        {
            yield return Messages.BarsAsBuilt(survey.Bars.Length, survey.Bars.Count(bar => bar.Where != BarPlace.Inside));
        }

        foreach (var finding in survey.Findings.GroupBy(finding => finding.Code).OrderByDescending(code => code.Key.Severity))
        {
            yield return finding.Count() == 1 ? Messages.SlabFinding(finding.First()) : Messages.FindingCount(finding.Key.Severity, finding.Key, finding.Count());
        }

        yield return Messages.Written(settings.Out);
        foreach (var file in files)
        {
            yield return Messages.WrittenFile(file);
        }
    }

    private static string Json(SlabSurvey survey, SlabSettings settings, IReadOnlyList<string> files)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream))
        {
            json.WriteStartObject();
            json.WriteString("layout", settings.Layout);
            json.WriteString("storey", survey.Storey);
            json.WriteNumber("datum", Math.Round(survey.Datum, 3));
            json.WriteString("remedy", survey.Chosen.Kind.ToString());
            json.WriteNumber("readings", survey.Readings.Levels.Length);
            json.WriteNumber("blocks", survey.Beds.Length);
            json.WriteNumber("outOfRange", survey.Beds.Count(bed => bed.High > 0 || bed.Low > 0));
            json.WriteNumber("bars", survey.Bars.Length);
            json.WriteNumber("barsOut", survey.Bars.Count(bar => bar.Where != BarPlace.Inside));
            json.WriteString("out", settings.Out);
            json.WriteStartArray("files");
            foreach (var file in files)
            {
                json.WriteStringValue(file);
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray());
    }
}
