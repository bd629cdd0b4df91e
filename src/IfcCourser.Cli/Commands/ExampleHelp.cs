using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;

namespace IfcCourser.Cli.Commands;

/// <summary>Help, and below it commands to start from.</summary>
internal sealed class ExampleHelp(HelpAction standard) : SynchronousCommandLineAction
{
    /// <summary>For every command.</summary>
    public static void AddTo(RootCommand root)
    {
        var help = root.Options.OfType<HelpOption>().Single();
        help.Action = new ExampleHelp((HelpAction)help.Action!);
    }

    /// <summary>Help is given however much of the command is missing.</summary>
    public override bool ClearsParseErrors => true;

    public override int Invoke(ParseResult parseResult)
    {
        var status = standard.Invoke(parseResult);
        var verb = string.Join(' ', parseResult.CommandResult.Command.Parents.OfType<Command>().Where(parent => parent is not RootCommand)
            .Append(parseResult.CommandResult.Command).Select(command => command is RootCommand ? string.Empty : command.Name));
        var output = parseResult.InvocationConfiguration.Output;
        output.WriteLine(Messages.Examples);
        foreach (var example in Messages.ExamplesOf(verb))
        {
            output.WriteLine($"  ifccourser {example}");
        }

        return status;
    }
}
