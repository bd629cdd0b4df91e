using System.Collections.Immutable;
using IfcCourser.Comparing;
using IfcCourser.Findings;
using IfcCourser.Layouts;
using IfcCourser.Output.IfcWriteBack;
using IfcCourser.Output.IfcWriteBack.Openings;
using IfcCourser.Output.IfcWriteBack.Parts;
using IfcCourser.Output.Json;
using IfcCourser.Output.Ordering;
using IfcCourser.Output.Tables;
using IfcCourser.Takeoff;

namespace IfcCourser.Cli.Commands;

/// <summary>The files of the layout command.</summary>
internal static class LayoutFiles
{
    private const string Json = "json";
    public const string Dxf = "dxf";
    public const string Svg = "svg";
    public const string Pdf = "pdf";
    private const string Ifc = "ifc";
    private const string Csv = "csv";
    private const string Xlsx = "xlsx";
    private const string Html = "html";
    private const string Coursed = ".coursed";

    public static ImmutableArray<string> Formats => [Json, Dxf, Svg, Pdf, Ifc, Csv, Xlsx, Html, IssuesFile.Format];

    /// <summary>Writes the formats asked for; the layout with what printing it found, or the first fault.</summary>
    public static Outcome<Layout> Add(OutputFolder folder, Layout layout, OpenedModel model, RunSettings settings, Terminal terminal)
    {
        layout = Orders.With(layout, settings.Offcuts, DeliveryPhases.Of(layout, settings.Phases));
        var issue = settings.Since is { } older ? Reissue.Of(older, layout) : null;
        layout = issue?.Layout ?? layout;

        // First, so that what can't be printed is in the lists of findings that the others write.
        var printed = settings.Formats.Overlaps([Dxf, Svg, Pdf]) ? new DrawingFiles(folder, layout, new DrawingChoice(settings.Formats, new PaperChoice(settings.Paper), settings.DxfPerSheet, issue), ModelName(layout)).Add(terminal) : layout;
        return printed.IsOk && AddOthers(folder, printed.Value, model, settings, terminal) is { } fault ? fault : printed;
    }

    private static Fault? AddOthers(OutputFolder folder, Layout layout, OpenedModel model, RunSettings settings, Terminal terminal)
    {
        (string[] Formats, Func<Fault?> Write)[] writers =
        [
            ([Json], () => folder.Add("layout.json", stream => LayoutJson.Write(layout, stream))),
            ([Csv], () => folder.Add("coordination/findings.csv", stream => FindingsCsv.Write(layout, stream))),
            ([Csv], () => layout.BarSchedule.IsEmpty ? null : folder.Add("order/bars.csv", stream => BarsCsv.Write(layout, stream))),
            ([Csv], () => layout.BarSchedule.IsEmpty ? null : folder.Add("order/bar-stock.csv", stream => BarStockCsv.Write(layout, stream))),
            ([Csv], () => folder.Add("order/takeoff.csv", stream => TakeoffCsv.Write(layout, stream))),
            ([Csv], () => layout.Order!.Deliveries.IsEmpty ? null : folder.Add("order/deliveries.csv", stream => DeliveriesCsv.Write(layout, stream))),
            ([Csv], () => layout.Order!.Staging.IsEmpty ? null : folder.Add("order/staging.csv", stream => StagingCsv.Write(layout, stream))),
            ([Csv], () => folder.Add("order/saw-list.csv", stream => SawListCsv.Write(layout, stream))),
            ([Xlsx], () => folder.Add("order/takeoff.xlsx", stream => TakeoffWorkbook.Write(layout, stream))),
            ([Csv], () => layout.SetOut.Storeys.IsEmpty ? null : folder.Add("set-out/points.csv", stream => PointsCsv.Write(layout, stream))),
            ([Html], () => PageFiles.Findings(folder, layout, settings) ?? PageFiles.Report(folder, layout, settings)),
            ([IssuesFile.Format], () => IssuesFile.Add(folder, layout, settings, terminal)),
            ([Csv], () => layout.ShootingList.IsEmpty ? null : folder.Add("set-out/readings.csv", stream => ReadingsCsv.Write(layout, stream))),
            ([Ifc], () => CoursedModel(folder, layout, model, terminal)),
            ([Ifc], () => settings.IfcParts ? folder.Add($"model/{ModelName(layout)}.parts.ifc", stream => IfcParts.Write(model.Model, layout, stream)) : null),
            ([Ifc], () => settings.ApplyOpenings ? MovedOpenings(folder, layout, model) : null),
        ];
        return writers.Where(writer => settings.Formats.Overlaps(writer.Formats))
            .Select(writer => writer.Write())
            .FirstOrDefault(fault => fault is not null);
    }

    private static Fault? CoursedModel(OutputFolder folder, Layout layout, OpenedModel model, Terminal terminal)
    {
        terminal.Step(Messages.WritingModel);
        return folder.Add($"model/{ModelName(layout)}{Coursed}.ifc", stream => IfcWriteBack.Write(model.Model, layout, stream));
    }

    private static Fault? MovedOpenings(OutputFolder folder, Layout layout, OpenedModel model)
    {
        var name = $"model/{ModelName(layout)}.openings";
        return folder.Add($"{name}.ifc", stream => IfcMovedOpenings.Write(model.Model, layout, stream))
            ?? folder.Add($"{name}.csv", stream => OpeningChangesCsv.Write(OpeningChange.Of(model.Model, layout), stream));
    }

    /// <summary>The model's file name without its extension, whether coursed before or not.</summary>
    public static string ModelName(Layout layout)
    {
        var name = Path.GetFileNameWithoutExtension(layout.Model.File);
        return name.EndsWith(Coursed, StringComparison.OrdinalIgnoreCase) ? name[..^Coursed.Length] : name;
    }
}
