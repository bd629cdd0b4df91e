using System.Collections.Immutable;
using IfcCourser.Findings;
using IfcCourser.Layouts;
using IfcCourser.Output.Dxf;
using IfcCourser.Output.Json;
using IfcCourser.Output.Pdf;
using IfcCourser.Output.Sheets;
using IfcCourser.Output.Svg;
using IfcCourser.Output.Tables;
using IfcCourser.Slabs;
using IfcCourser.Takeoff;

namespace IfcCourser.Cli.Commands;

/// <summary>The files of the slab command.</summary>
internal static class SlabFiles
{
    public static ImmutableArray<string> Formats => ["json", "dxf", "svg", "pdf", "csv"];

    /// <summary>Writes the formats asked for; the first fault, or null.</summary>
    public static Fault? Add(OutputFolder folder, SlabSurvey survey, SlabSettings settings, Terminal terminal)
    {
        (string[] Formats, Func<Fault?> Write)[] writers =
        [
            (["json"], () => folder.Add("slab.json", stream => SlabJson.Write(survey, stream))),
            (["csv"], () => folder.Add("set-out/slab-bed.csv", stream => SlabBedCsv.Write(survey, stream))),
            (["csv"], () => survey.Bars.IsEmpty ? null : folder.Add("set-out/bars-as-built.csv", stream => BarsAsBuiltCsv.Write(survey, stream))),
            (["csv"], () => survey.Bars.All(bar => bar.Answer != BarAnswer.Left) ? null : folder.Add("set-out/bars-left.csv", stream => BarsLeftCsv.Write(survey, stream))),
            (["dxf", "svg", "pdf"], () => Sheets(
                folder, survey.Layout, [("slab-levels", SlabLevelSheet.Compose(survey)), ("slab-first-course", SlabCourseSheet.Compose(survey))], "slab", settings, terminal)),
            (["json"], () => settings.Apply ? Applied(folder, survey, settings, terminal) : null),
        ];
        return writers.Where(writer => settings.Formats.Overlaps(writer.Formats)).Select(writer => writer.Write()).FirstOrDefault(fault => fault is not null);
    }

    /// <summary>The files of the second stage; the first fault, or null.</summary>
    public static Fault? Add(OutputFolder folder, LevelledCourse course, SlabSettings settings, Terminal terminal) =>
        (settings.Formats.Contains("json") ? folder.Add("slab.json", stream => LevelledJson.Write(course, stream)) : null)
        ?? (settings.Formats.Contains("csv") ? folder.Add("set-out/first-course-levels.csv", stream => LevelledCsv.Write(course, stream)) : null)
        ?? Sheets(folder, course.Layout, [("first-course-levels", SlabLevelledSheet.Compose(course))], "first-course-levels", settings, terminal);

    /// <summary>The layout with datum and beds, and the sheets of its walls.</summary>
    private static Fault? Applied(OutputFolder folder, SlabSurvey survey, SlabSettings settings, Terminal terminal)
    {
        var applied = AppliedSurvey.Of(survey, SlabJson.NameOf(survey.Chosen.Kind));
        var layout = applied.Order is { } order ? Orders.With(applied, order.Saw.Reuse, order.Phases) : applied;
        return folder.Add("layout.json", stream => LayoutJson.Write(layout, stream))
            ?? (settings.Formats.Overlaps([LayoutFiles.Dxf, LayoutFiles.Svg, LayoutFiles.Pdf])
                ? new DrawingFiles(folder, layout, new DrawingChoice(settings.Formats, new PaperChoice(null), DxfPerSheet: false), LayoutFiles.ModelName(layout)).Add(terminal).Fault
                : null);
    }

    private static Fault? Sheets(OutputFolder folder, Layout layout, (string Name, Sheet Sheet)[] sheets, string pdf, SlabSettings settings, Terminal terminal)
    {
        foreach (var (name, sheet) in settings.Formats.Overlaps(["dxf", "svg"]) ? sheets : [])
        {
            var fault = folder.Add($"set-out/{name}.dxf", stream => DxfWriter.Write([sheet], stream)) ?? folder.Add($"set-out/{name}.svg", stream => SvgWriter.Write(sheet, stream));
            if (fault is not null)
            {
                return fault;
            }
        }

        if (!settings.Formats.Contains("pdf"))
        {
            return null;
        }

        var about = new PdfSet(layout.Model.ProjectName ?? layout.Model.File, Author: null, layout.Model.Date);
        var missing = new List<MissingGlyph>();
        var printed = folder.Add($"set-out/{pdf}.pdf", stream => missing.AddRange(PdfWriter.Write(about, sheets.Select(sheet => new PdfPage(sheet.Sheet, Section: null)), stream)));
        if (missing.Count > 0)
        {
            terminal.Note(Messages.GlyphsMissing(missing));
        }

        return printed;
    }
}
