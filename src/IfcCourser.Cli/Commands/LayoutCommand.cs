using System.CommandLine;

namespace IfcCourser.Cli.Commands;

/// <summary><c>layout MODEL</c>: the main job.</summary>
internal static class LayoutCommand
{
    public static Command Create(Func<ParseResult, Terminal> terminal)
    {
        var options = new RunOptions(LayoutFiles.Formats, $"{Messages.OptionFormats(LayoutFiles.Formats)} {Messages.SheetsComeTogether}", failOn: "none");
        var command = new Command("layout", Messages.AboutLayout);
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

        var target = settings.Out ?? $"{Path.GetFileNameWithoutExtension(settings.Model)}-coursing";
        var opening = OutputFolder.Open(target, settings.Model);
        if (!opening.IsOk)
        {
            return terminal.End(opening.Fault, ExitStatus.Unwritable);
        }

        using var folder = opening.Value;
        terminal.Step(Messages.LayingOut);
        var layout = LayoutFiles.Add(folder, model.LayOut(), model, settings, terminal);
        if ((layout.Fault ?? folder.Commit()) is { } fault)
        {
            return terminal.End(fault, ExitStatus.Unwritable);
        }

        terminal.EndProgress();
        var summary = new RunSummary(layout.Value!, model) { Folder = target, Files = folder.Files, Leftovers = folder.Leftovers() };
        summary.Print(terminal, settings.Json);
        return summary.Status;
    }
}
