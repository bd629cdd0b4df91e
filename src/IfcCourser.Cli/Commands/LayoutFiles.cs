using System.Collections.Immutable;
using IfcCourser.Findings;
using IfcCourser.Layouts;
using IfcCourser.Output.Json;
using IfcCourser.Output.Tables;

namespace IfcCourser.Cli.Commands;

/// <summary>The files of the layout command.</summary>
internal static class LayoutFiles
{
    private const string Json = "json";
    private const string Csv = "csv";

    public static ImmutableArray<string> Formats => [Json, Csv];

    /// <summary>Writes the formats asked for; null, or the first fault.</summary>
    public static Fault? Add(OutputFolder folder, Layout layout, RunSettings settings)
    {
        (string Format, Func<Fault?> Write)[] writers =
        [
            (Json, () => folder.Add("layout.json", stream => LayoutJson.Write(layout, stream))),
            (Csv, () => folder.Add("coordination/findings.csv", stream => FindingsCsv.Write(layout, stream))),
        ];
        return writers.Where(writer => settings.Formats.Contains(writer.Format))
            .Select(writer => writer.Write())
            .FirstOrDefault(fault => fault is not null);
    }
}
