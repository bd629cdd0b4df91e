using IfcCourser.Cli.Tests.Support;

namespace IfcCourser.Cli.Tests;

/// <summary>What the command line says to those who write it wrong: status 2, one message, nothing on standard output.</summary>
public sealed class CommandLineTests
{
    [Theory]
    [InlineData("\"--opnings\" is not understood here. Did you mean --openings?", "layout", "m.ifc", "--opnings", "keep")]
    [InlineData("\"laiout\" is not understood here. Did you mean layout?", "laiout", "m.ifc")]
    [InlineData("MODEL", "layout")]
    [InlineData("resize", "layout", "m.ifc", "--openings", "shrink")]
    [InlineData("--max-shift: the length \"50\" has no unit", "layout", "m.ifc", "--max-shift", "50")]
    [InlineData("--max-shift: the length is negative", "layout", "m.ifc", "--max-shift=-2 in")]
    [InlineData("--date: \"31.3.2026\" is no date", "layout", "m.ifc", "--date", "31.3.2026")]
    [InlineData("--formats: \"dwg\" is no format", "layout", "m.ifc", "--formats", "json,dwg")]
    [InlineData("acc-mm: this is neither a built-in catalog nor a .toml file. Did you mean \"aac-mm\"?", "layout", "m.ifc", "--catalog", "acc-mm")]
    [InlineData("none.toml: the file can't be read", "check", "m.ifc", "--rules", "none.toml")]
    public void A_wrong_command_line_is_answered_with_what_to_write(string expected, params string[] arguments)
    {
        var run = CommandRun.Of(arguments);

        Assert.Equal(ExitStatus.Usage, run.Status);
        Assert.Contains(expected, run.Error, StringComparison.Ordinal);
        Assert.Equal(1, run.Error.Split('\n').Count(line => line.StartsWith(Messages.ErrorPrefix, StringComparison.Ordinal)));
        Assert.Empty(run.Output);
    }

    [Fact]
    public void Help_names_every_verb_of_this_version()
    {
        var run = CommandRun.Of("--help");

        Assert.Equal(ExitStatus.Done, run.Status);
        Assert.All(["layout", "check", "catalog"], verb => Assert.Contains($"  {verb}", run.Output, StringComparison.Ordinal));
    }

    [Fact]
    public void A_colour_is_for_terminals_that_want_it()
    {
        const string Red = "\u001b[31m";
        string[] wrong = ["layout", "nowhere.ifc"];

        Assert.Contains(Red, CommandRun.Of(errorIsTerminal: true, wrong).Error, StringComparison.Ordinal);
        Assert.DoesNotContain(Red, CommandRun.Of(errorIsTerminal: true, [.. wrong, "--no-colour"]).Error, StringComparison.Ordinal);
        Assert.DoesNotContain('\u001b', CommandRun.Of(wrong).Error);
    }
}
