using System.Collections.Immutable;
using IfcCourser.Findings;
using IfcCourser.Layouts;
using IfcCourser.Output.Page;
using IfcCourser.Units;

namespace IfcCourser.Cli.Commands;

/// <summary>The pages for people who have nothing but a browser.</summary>
internal static class PageFiles
{
    public const string ReportName = "report.html";

    public static Fault? Report(OutputFolder folder, Layout layout, RunSettings settings) =>
        folder.Add(ReportName, stream => ReportPage.Write(layout, PageKind.Report, Options(layout, settings), stream));

    public static Fault? Findings(OutputFolder folder, Layout layout, RunSettings settings) =>
        folder.Add("coordination/findings.html", stream => ReportPage.Write(layout, PageKind.Findings, Options(layout, settings), stream));

    /// <summary>Which walls were asked for; what the layout's rules say stands on the page already.</summary>
    private static ImmutableArray<GivenOption> Options(Layout layout, RunSettings settings)
    {
        var selection = settings.Selection;
        var units = layout.Rules.Catalog.Units;
        (string Name, IEnumerable<string> Values)[] options =
        [
            ("--walls", [selection.Walls.ToString().ToLowerInvariant()]),
            ("--width", [selection.Width.ToString().ToLowerInvariant()]),
            ("--only", selection.Only),
            ("--exclude", selection.Exclude),
            ("--storey", selection.Storeys),
            (GivenJoint.Option, settings.MovementJoints.Select(joint => $"{joint.Wall}={LengthText.WithUnit(joint.At, units)}")),
        ];
        return [.. options.SelectMany(option => option.Values.Select(value => new GivenOption(option.Name, value)))];
    }
}
