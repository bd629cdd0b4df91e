using System.CommandLine;
using IfcCourser.Findings;
using IfcCourser.Output.Json;
using IfcCourser.Runs;
using IfcCourser.Slabs;

namespace IfcCourser.Cli.Commands;

/// <summary><c>slab LAYOUT.json --readings CSV</c>: readings of a slab to a datum and the bed under each block.</summary>
internal static class SlabCommand
{
    public static Command Create(Func<ParseResult, Terminal> terminal)
    {
        var options = new SlabOptions();
        var command = new Command("slab", Messages.AboutSlab);
        options.AddTo(command);
        command.SetAction(parsed =>
        {
            var told = terminal(parsed);
            var settings = options.Read(parsed);
            return (int)(settings.IsOk ? Run(settings.Value, told) : told.End(settings.Fault, ExitStatus.Usage));
        });
        return command;
    }

    private static ExitStatus Run(SlabSettings settings, Terminal terminal)
    {
        terminal.Step(Messages.Reading);
        var layout = LayoutReader.Load(settings.Layout);
        if (!layout.IsOk)
        {
            return terminal.End(layout.Fault, ExitStatus.Unreadable);
        }

        var readings = ReadingsReader.Load(settings.Readings, settings.Units);
        if (!readings.IsOk)
        {
            return terminal.End(readings.Fault, ExitStatus.Unreadable);
        }

        if (settings.IsLevelled)
        {
            var course = LevelledCourse.Of(layout.Value, readings.Value, settings.Storey);
            return course.IsOk ? Write(course.Value, settings, terminal) : terminal.End(course.Fault, StatusOf(course.Fault));
        }

        var survey = BondAsBuilt.Of(layout.Value, readings.Value, settings.Storey, settings.Thickest, settings.Apply);
        return survey.IsOk ? Write(survey.Value, settings, terminal) : terminal.End(survey.Fault, StatusOf(survey.Fault));
    }

    /// <summary>A storey or bed that the options name wrongly is a wrong command line; all else is in the files.</summary>
    private static ExitStatus StatusOf(Fault fault) => fault.File.StartsWith("--", StringComparison.Ordinal) ? ExitStatus.Usage : ExitStatus.Unreadable;

    private static ExitStatus Write(SlabSurvey survey, SlabSettings settings, Terminal terminal) => Write(
        settings, terminal, folder => SlabFiles.Add(folder, survey, settings, terminal), files => SlabSummary.Print(survey, settings, files, terminal), survey.Findings);

    private static ExitStatus Write(LevelledCourse course, SlabSettings settings, Terminal terminal) => Write(
        settings, terminal, folder => SlabFiles.Add(folder, course, settings, terminal), files => SlabSummary.Print(course, settings, files, terminal), course.Findings);

    private static ExitStatus Write(
        SlabSettings settings, Terminal terminal, Func<OutputFolder, Fault?> write, Action<IReadOnlyList<string>> tell, IEnumerable<Finding> findings)
    {
        // Where the user names the folder, a layout.json in it may be replaced by the changed one.
        var opening = OutputFolder.Open(settings.Out, settings.MayReplace ? settings.Readings : settings.Layout);
        if (!opening.IsOk)
        {
            return terminal.End(opening.Fault, ExitStatus.Unwritable);
        }

        using var folder = opening.Value;
        if ((write(folder) ?? folder.Commit()) is { } fault)
        {
            return terminal.End(fault, ExitStatus.Unwritable);
        }

        terminal.EndProgress();
        tell(folder.Files);
        return settings.FailOn is { } gravest && findings.Any(finding => finding.Severity >= gravest) ? ExitStatus.Findings : ExitStatus.Done;
    }
}
