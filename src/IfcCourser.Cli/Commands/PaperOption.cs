using System.CommandLine;
using IfcCourser.Findings;
using IfcCourser.Output.Sheets;

namespace IfcCourser.Cli.Commands;

/// <summary><c>--sheet</c>: the paper of every sheet.</summary>
internal static class PaperOption
{
    public static Option<string?> Create() =>
        new Option<string?>("--sheet") { HelpName = "A4..A0|ANSI-A..E|ARCH-A..E", Description = Messages.OptionSheet }.WithPapers();

    /// <param name="name">As given on the command line or in a job file; null where it is left out.</param>
    public static Outcome<PaperChoice> Read(Option option, string? name) =>
        name is null ? new PaperChoice(null)
        : PaperSize.Named(name) is { } paper ? new PaperChoice(paper)
        : Messages.UnknownPaper(option.Name, name, PaperSize.All.Select(size => size.Name));
}
