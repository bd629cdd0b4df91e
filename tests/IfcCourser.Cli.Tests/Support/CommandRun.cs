namespace IfcCourser.Cli.Tests.Support;

/// <summary>One command run in this process: its exit status and what it said.</summary>
internal sealed record CommandRun(ExitStatus Status, string Output, string Error)
{
    /// <param name="arguments">The command line without the program's name.</param>
    public static CommandRun Of(params string[] arguments) => Of(errorIsTerminal: false, arguments);

    public static CommandRun Of(bool errorIsTerminal, params string[] arguments)
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        var status = CommandLine.Run(arguments, new Terminal(output, error, errorIsTerminal) { Colour = true });
        return new CommandRun(status, output.ToString(), error.ToString());
    }
}
