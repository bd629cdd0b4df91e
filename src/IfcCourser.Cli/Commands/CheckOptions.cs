using System.CommandLine;

namespace IfcCourser.Cli.Commands;

/// <summary>The options that only check takes.</summary>
internal sealed class CheckOptions
{
    private readonly Option<string?> _baseline = new("--baseline") { HelpName = "FILE", Description = Messages.OptionBaseline };

    private readonly Option<string?> _writeBaseline = new("--write-baseline") { HelpName = "FILE", Description = Messages.OptionWriteBaseline };

    private readonly Option<string?> _junit = new("--junit") { HelpName = "FILE", Description = Messages.OptionJUnit };

    public void AddTo(Command command)
    {
        command.Add(_baseline);
        command.Add(_writeBaseline);
        command.Add(_junit);
    }

    public CheckSettings Read(ParseResult parsed) => new(parsed.GetValue(_baseline), parsed.GetValue(_writeBaseline), parsed.GetValue(_junit));
}
