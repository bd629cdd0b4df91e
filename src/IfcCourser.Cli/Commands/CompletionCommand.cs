using System.Collections.Immutable;
using System.CommandLine;

namespace IfcCourser.Cli.Commands;

/// <summary><c>completion SHELL</c>: the script that has a shell complete commands. It asks the program itself for suggestions, with a directive of the command line's parser.</summary>
internal static class CompletionCommand
{
    /// <summary>Shells and the endings of their scripts.</summary>
    private static readonly ImmutableSortedDictionary<string, string> _shells = ImmutableSortedDictionary.CreateRange(
        StringComparer.OrdinalIgnoreCase,
        [KeyValuePair.Create("bash", "bash"), KeyValuePair.Create("zsh", "zsh"), KeyValuePair.Create("fish", "fish"), KeyValuePair.Create("powershell", "ps1")]);

    public static Command Create(Func<ParseResult, Terminal> terminal)
    {
        var shell = new Argument<string>("SHELL") { Description = Messages.ArgumentShell(_shells.Keys) };
        shell.CompletionSources.Add([.. _shells.Keys]);
        shell.Validators.Add(given =>
        {
            if (given.Tokens is [{ Value: var value }] && !_shells.ContainsKey(value))
            {
                given.AddError(Messages.UnknownChoice("SHELL", value, _shells.Keys));
            }
        });
        var command = new Command("completion", Messages.AboutCompletion) { shell };
        command.SetAction(parsed =>
        {
            terminal(parsed).Data(Script(parsed.GetRequiredValue(shell)));
            return (int)ExitStatus.Done;
        });
        return command;
    }

    private static string Script(string shell)
    {
        using var stream = typeof(CompletionCommand).Assembly.GetManifestResourceStream($"completion.{_shells[shell]}")!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd().TrimEnd();
    }
}
