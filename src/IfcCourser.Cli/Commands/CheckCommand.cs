using System.Collections.Immutable;
using System.CommandLine;
using IfcCourser.Findings;
using IfcCourser.Output.Coordination;
using IfcCourser.Output.Tables;

namespace IfcCourser.Cli.Commands;

/// <summary><c>check MODEL</c>: are the openings on the module, what cures those that are not, and what it costs to keep them.</summary>
internal static class CheckCommand
{
    private const string Csv = "csv";
    private const string Json = "json";
    private const string Html = "html";
    private static readonly ImmutableArray<string> _formats = [Csv, Json, Html, IssuesFile.Format];

    public static Command Create(Func<ParseResult, Terminal> terminal)
    {
        var options = new RunOptions(_formats, Messages.OptionFormats(_formats), failOn: "warning");
        var more = new CheckOptions();
        var command = new Command("check", Messages.AboutCheck);
        options.AddTo(command);
        more.AddTo(command);
        command.SetAction(parsed =>
        {
            var told = terminal(parsed);
            var settings = options.Read(parsed);
            return (int)(settings.IsOk ? Run(settings.Value, more.Read(parsed), told) : told.End(settings.Fault, ExitStatus.Usage));
        });
        return command;
    }

    private static ExitStatus Run(RunSettings settings, CheckSettings asked, Terminal terminal)
    {
        var accepted = asked.Baseline is { } path ? Baseline.Read(path) : null;
        if (accepted?.Fault is { } unread)
        {
            return terminal.End(unread, ExitStatus.Usage);
        }

        terminal.Step(Messages.Reading);
        var opened = OpenedModel.Open(settings);
        if (!opened.IsOk)
        {
            return terminal.End(opened.Fault, ExitStatus.Unreadable);
        }

        using var model = opened.Value;
        if (WallFilters.Fault(model.Model.Walls, settings) is { } filtered)
        {
            return terminal.End(filtered, ExitStatus.Usage);
        }

        terminal.Step(Messages.LayingOut);
        var report = CheckReport.Of(model.LayOutWithCosts(), accepted?.Value);
        var written = WriteFolder(settings, report, terminal);
        if ((written.Fault ?? WriteFiles(settings, asked, report)) is { } fault)
        {
            return terminal.End(fault, ExitStatus.Unwritable);
        }

        terminal.EndProgress();
        var summary = new RunSummary(report.Layout, model) { Folder = settings.Out, Files = written.Value!, Report = report };
        if (!settings.Json)
        {
            OpeningTable.Print(report, terminal);
        }

        summary.Print(terminal, settings.Json);
        return summary.Status;
    }

    /// <summary>The files written; none where no folder is named.</summary>
    private static Outcome<List<string>> WriteFolder(RunSettings settings, CheckReport report, Terminal terminal)
    {
        if (settings.Out is null)
        {
            return new List<string>();
        }

        var opening = OutputFolder.Open(settings.Out, settings.Model);
        if (!opening.IsOk)
        {
            return opening.Fault;
        }

        using var folder = opening.Value;
        (string Format, Func<Fault?> Write)[] writers =
        [
            (Csv, () => folder.Add("coordination/findings.csv", stream => FindingsCsv.Write(report.Layout, stream))),
            (Json, () => folder.Add("coordination/findings.json", stream => FindingsJson.Write(report, stream))),
            (Html, () => PageFiles.Findings(folder, report.Layout, settings)),
            (IssuesFile.Format, () => IssuesFile.Add(folder, report.Layout, settings, terminal)),
        ];
        var fault = writers.Where(writer => settings.Formats.Contains(writer.Format)).Select(writer => writer.Write()).FirstOrDefault(fault => fault is not null) ?? folder.Commit();
        return fault is null ? folder.Files.ToList() : fault;
    }

    private static Fault? WriteFiles(RunSettings settings, CheckSettings asked, CheckReport report)
    {
        (string? Path, Action<Stream> Write)[] files =
        [
            (asked.WriteBaseline, stream => Baseline.Of(report.Layout).Write(stream)),
            (asked.JUnit, stream => JUnitXml.Write(report, settings.FailOn, stream)),
        ];
        return files.Where(file => file.Path is not null).Select(file => OutputFile.Write(file.Path!, settings.Model, file.Write)).FirstOrDefault(fault => fault is not null);
    }
}
