using System.CommandLine;
using IfcCourser.Findings;
using IfcCourser.Output.Bcf;

namespace IfcCourser.Cli.Commands;

/// <summary>The options of the BCF file.</summary>
internal sealed class BcfOptions
{
    private const string Old = "2.1";
    private const string New = "3.0";
    private const string AsReturned = "as returned";

    private readonly Option<string> _version = ChoiceOption.Of("--bcf", Messages.OptionBcf, AsReturned, Old, New);

    private readonly Option<string?> _replies = new("--bcf-in") { HelpName = "FILE", Description = Messages.OptionBcfIn };

    public void AddTo(Command command)
    {
        command.Add(_version);
        command.Add(_replies);
    }

    public BcfVersion? Version(ParseResult parsed) => parsed.GetRequiredValue(_version) switch
    {
        Old => BcfVersion.V21,
        New => BcfVersion.V30,
        _ => null,
    };

    public Fault? Replies(ParseResult parsed, out BcfFile? replies)
    {
        var read = parsed.GetValue(_replies) is { } path ? BcfReader.Read(path) : null;
        replies = read?.Value;
        return read?.Fault;
    }
}
