using System.CommandLine;
using IfcCourser.Cli.Commands;
using IfcCourser.Settings;

namespace IfcCourser.Cli;

/// <summary>The command line: verbs, options that all of them take, and how it ends when it can't be understood.</summary>
internal static class CommandLine
{
    private static readonly Option<bool> _quiet = new("--quiet", "-q") { Description = Messages.OptionQuiet, Recursive = true };

    private static readonly Option<bool> _verbose = new("--verbose", "-v") { Description = Messages.OptionVerbose, Recursive = true };

    private static readonly Option<bool> _noColour = new("--no-colour", "--no-color") { Description = Messages.OptionNoColour, Recursive = true };

    /// <summary>Every verb as it is written, subcommands after their own.</summary>
    public static IEnumerable<string> Verbs => Root(_ => throw new InvalidOperationException("Nothing runs here.")).Subcommands
        .SelectMany(verb => verb.Subcommands.Select(sub => $"{verb.Name} {sub.Name}").Prepend(verb.Name));

    /// <summary>Runs one command.</summary>
    /// <param name="arguments">Without the program's name.</param>
    /// <param name="terminal">Where words go.</param>
    public static ExitStatus Run(IReadOnlyList<string> arguments, Terminal terminal)
    {
        var parsed = Parsed(Root(Told), arguments);
        if (parsed.Errors.Count > 0)
        {
            return Misunderstood(parsed, terminal);
        }

        try
        {
            return (ExitStatus)parsed.Invoke(new InvocationConfiguration
            {
                Output = terminal.Output,
                Error = terminal.Error,
                EnableDefaultExceptionHandler = false,
                ProcessTerminationTimeout = null,
            });
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            terminal.Fail(Messages.Defect(e));
            return ExitStatus.Defect;
        }

        Terminal Told(ParseResult result) => terminal with
        {
            Quiet = result.GetValue(_quiet),
            Verbose = result.GetValue(_verbose),
            Colour = terminal.Colour && !result.GetValue(_noColour),
        };
    }

    /// <summary>Whether arguments are understood, without running them.</summary>
    public static bool Understands(IReadOnlyList<string> arguments) =>
        Parsed(Root(_ => throw new InvalidOperationException("Nothing runs here.")), arguments).Errors.Count == 0;

    private static ParseResult Parsed(RootCommand root, IReadOnlyList<string> arguments) =>
        root.Parse(arguments, new ParserConfiguration { ResponseFileTokenReplacer = null });

    private static RootCommand Root(Func<ParseResult, Terminal> terminal)
    {
        var root = new RootCommand(Messages.About)
        {
            _quiet, _verbose, _noColour,
            LayoutCommand.Create(terminal), CheckCommand.Create(terminal), SlabCommand.Create(terminal), BatchCommand.Create(terminal), CompareCommand.Create(terminal), CatalogCommand.Create(terminal),
            CompletionCommand.Create(terminal),
        };
        ExampleHelp.AddTo(root);
        return root;
    }

    /// <summary>Says the first thing that is wrong; what follows from it would only confuse.</summary>
    private static ExitStatus Misunderstood(ParseResult parsed, Terminal terminal)
    {
        var command = parsed.CommandResult.Command;
        var names = command.Options.SelectMany(option => option.Aliases.Append(option.Name))
            .Concat(command.Subcommands.Select(verb => verb.Name))
            .Order(StringComparer.Ordinal);
        terminal.Fail(parsed.UnmatchedTokens is [var token, ..]
            ? Messages.UnknownWord(token, NearestName.Of(token, names))
            : parsed.Errors[0].Message);
        terminal.Error.WriteLine(Messages.SeeHelp(command is RootCommand ? string.Empty : $"{command.Name} "));
        return ExitStatus.Usage;
    }
}
