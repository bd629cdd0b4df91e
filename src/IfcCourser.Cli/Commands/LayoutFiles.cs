using System.Collections.Immutable;
using IfcCourser.Findings;
using IfcCourser.Layouts;
using IfcCourser.Output.IfcWriteBack;
using IfcCourser.Output.Json;
using IfcCourser.Output.Tables;

namespace IfcCourser.Cli.Commands;

/// <summary>The files of the layout command.</summary>
internal static class LayoutFiles
{
    private const string Json = "json";
    private const string Ifc = "ifc";
    private const string Csv = "csv";

    public static ImmutableArray<string> Formats => [Json, Ifc, Csv];

    /// <summary>Writes the formats asked for; null, or the first fault.</summary>
    public static Fault? Add(OutputFolder folder, Layout layout, OpenedModel model, RunSettings settings, Terminal terminal)
    {
        (string Format, Func<Fault?> Write)[] writers =
        [
            (Json, () => folder.Add("layout.json", stream => LayoutJson.Write(layout, stream))),
            (Csv, () => folder.Add("coordination/findings.csv", stream => FindingsCsv.Write(layout, stream))),
            (Ifc, () => CoursedModel(folder, layout, model, terminal)),
        ];
        return writers.Where(writer => settings.Formats.Contains(writer.Format))
            .Select(writer => writer.Write())
            .FirstOrDefault(fault => fault is not null);
    }

    private static Fault? CoursedModel(OutputFolder folder, Layout layout, OpenedModel model, Terminal terminal)
    {
        terminal.Step(Messages.WritingModel);
        var name = $"model/{Path.GetFileNameWithoutExtension(layout.Model.File)}.coursed.ifc";
        return folder.Add(name, stream => IfcWriteBack.Write(model.Model, layout, stream));
    }
}
