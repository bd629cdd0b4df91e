using System.Text;
using System.Text.Json;
using IfcCourser.Findings;
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
        if (settings.Json)
        {
            terminal.Data(Json(course, settings, files));
            terminal.Note(Messages.SlabCautions);
            return;
        }

        var units = course.Layout.Rules.Catalog.Units;
        var lines = new[] { Messages.LevelledCourse(course), Messages.LevelledLevel(course, units) }
            .Concat(course.Tolerances.Select(check => Messages.Tolerance(check, units))).Concat(course.Findings.Select(Messages.SlabFinding)).Append(Messages.Written(settings.Out)).Concat(files.Select(Messages.WrittenFile));
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

        foreach (var check in survey.Tolerances)
        {
            yield return Messages.Tolerance(check, units);
        }

        if (!survey.Bars.IsEmpty)
        {
            yield return Messages.BarsAsBuilt(survey);
            foreach (var bar in survey.Bars.Where(bar => bar.Answer == BarAnswer.Left))
            {
                yield return Messages.BarLeft(bar, units);
            }

            if (!settings.Apply && survey.Bars.Any(bar => bar.Answer is BarAnswer.CoreMoves or BarAnswer.BondMoves))
            {
                yield return Messages.ApplyForBars;
            }
        }

        foreach (var finding in survey.Findings.Where(finding => finding.Code != FindingCodes.BarOutOfPlace).GroupBy(finding => finding.Code).OrderByDescending(code => code.Key.Severity))
        {
            yield return finding.Count() == 1 ? Messages.SlabFinding(finding.First()) : Messages.FindingCount(finding.Key.Severity, finding.Key, finding.Count());
        }

        yield return Messages.Written(settings.Out);
        foreach (var file in files)
        {
            yield return Messages.WrittenFile(file);
        }
    }

    private static string Json(SlabSurvey survey, SlabSettings settings, IReadOnlyList<string> files) => Json(
        settings, survey.Storey, survey.Datum, survey.Readings.Levels.Length, files, json =>
        {
            json.WriteString("remedy", survey.Chosen.Kind.ToString());
            json.WriteNumber("blocks", survey.Beds.Length);
            json.WriteNumber("outOfRange", survey.Beds.Count(bed => bed.High > 0 || bed.Low > 0));
            json.WriteNumber("bars", survey.Bars.Length);
            json.WriteNumber("barsOut", survey.Bars.Count(bar => bar.Where != BarPlace.Inside));
            json.WriteNumber("barsInNewBond", survey.Bars.Count(bar => bar.Answer == BarAnswer.BondMoves));
            json.WriteNumber("barsLeft", survey.Bars.Count(bar => bar.Answer == BarAnswer.Left));
        });

    private static string Json(LevelledCourse course, SlabSettings settings, IReadOnlyList<string> files) => Json(
        settings, course.Storey, course.Level, course.Readings.Levels.Length, files, json =>
        {
            json.WriteNumber("blocks", course.Blocks.Length);
            json.WriteNumber("notRead", course.Blocks.Count(block => block.Work == LevelWork.NotRead));
            json.WriteNumber("sand", course.Blocks.Count(block => block.Work == LevelWork.Sand));
            json.WriteNumber("relay", course.Blocks.Count(block => block.Work == LevelWork.Relay));
        });

    /// <summary>What both stages say, around what is the stage's own.</summary>
    private static string Json(SlabSettings settings, string? storey, double datum, int readings, IReadOnlyList<string> files, Action<Utf8JsonWriter> own)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream))
        {
            json.WriteStartObject();
            json.WriteString("layout", settings.Layout);
            json.WriteString("stage", settings.IsLevelled ? "levelled" : "slab");
            json.WriteString("storey", storey);
            json.WriteNumber("datum", Math.Round(datum, 3));
            json.WriteNumber("readings", readings);
            own(json);
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
