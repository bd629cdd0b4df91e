using System.Collections.Immutable;
using System.CommandLine;
using IfcCourser.Findings;
using IfcCourser.Layouts;
using IfcCourser.Output.Tables;

namespace IfcCourser.Cli.Commands;

/// <summary><c>check MODEL</c>: are the openings on the module.</summary>
internal static class CheckCommand
{
    private const string Csv = "csv";
    private const string Html = "html";
    private static readonly ImmutableArray<string> _formats = [Csv, Html];

    public static Command Create(Func<ParseResult, Terminal> terminal)
    {
        var options = new RunOptions(_formats, Messages.OptionFormats(_formats), failOn: "warning");
        var command = new Command("check", Messages.AboutCheck);
        options.AddTo(command);
        command.SetAction(parsed =>
        {
            var told = terminal(parsed);
            var settings = options.Read(parsed);
            return (int)(settings.IsOk ? Run(settings.Value, told) : told.End(settings.Fault, ExitStatus.Usage));
        });
        return command;
    }

    private static ExitStatus Run(RunSettings settings, Terminal terminal)
    {
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
        var layout = model.LayOut();
        if (settings.Out is not null && Write(settings, layout) is { } fault)
        {
            return terminal.End(fault, ExitStatus.Unwritable);
        }

        terminal.EndProgress();
        var summary = new RunSummary(layout, model) { Folder = settings.Out };
        if (!settings.Json)
        {
            OpeningTable.Print(layout, terminal);
        }

        summary.Print(terminal, settings.Json);
        return summary.Status;
    }

    private static Fault? Write(RunSettings settings, Layout layout)
    {
        var opening = OutputFolder.Open(settings.Out!, settings.Model);
        if (!opening.IsOk)
        {
            return opening.Fault;
        }

        using var folder = opening.Value;
        return (settings.Formats.Contains(Csv) ? folder.Add("coordination/findings.csv", stream => FindingsCsv.Write(layout, stream)) : null)
            ?? (settings.Formats.Contains(Html) ? PageFiles.Findings(folder, layout, settings) : null)
            ?? folder.Commit();
    }
}
