using IfcCourser.Cli.Tests.Support;

namespace IfcCourser.Cli.Tests;

/// <summary>What the command line says to those who write it wrong: status 2, one message, nothing on standard output.</summary>
public sealed class CommandLineTests
{
    [Theory]
    [InlineData("\"--opnings\" is not understood here. Did you mean --openings?", "layout", "m.ifc", "--opnings", "keep")]
    [InlineData("\"laiout\" is not understood here. Did you mean layout?", "laiout", "m.ifc")]
    [InlineData("MODEL", "layout")]
    [InlineData("--openings: \"shrink\" is not understood. Write one of keep, move, resize.", "layout", "m.ifc", "--openings", "shrink")]
    [InlineData("--fail-on: \"1\" is not understood. Write one of error, warning, note, none.", "check", "m.ifc", "--fail-on", "1")]
    [InlineData("--max-shift: the length \"50\" has no unit", "layout", "m.ifc", "--max-shift", "50")]
    [InlineData("--max-shift: the length is negative", "layout", "m.ifc", "--max-shift=-2 in")]
    [InlineData("--date: \"31.3.2026\" is no date", "layout", "m.ifc", "--date", "31.3.2026")]
    [InlineData("--date: \"2026-02-30T10:00:00\" is no date", "layout", "m.ifc", "--date", "2026-02-30T10:00:00")]
    [InlineData("us: this is a rule set, not a catalog. Give it with --rules.", "layout", "m.ifc", "--catalog", "us")]
    [InlineData("aac-mm: this is a catalog, not a rule set. Give it with --catalog.", "layout", "m.ifc", "--rules", "aac-mm")]
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

    [Theory]
    [InlineData("us", "--catalog", "this is a rule set, not a catalog")]
    [InlineData("block-in", "--rules", "this is a catalog, not a rule set")]
    public void A_file_of_the_other_kind_is_told_where_it_belongs(string set, string option, string expected)
    {
        using var folder = new TemporaryFolder();
        File.WriteAllText(folder.File("mine.toml"), CommandRun.Of("catalog", "show", set).Output);

        var run = CommandRun.Of("layout", "m.ifc", option, folder.File("mine.toml"));

        Assert.Equal(ExitStatus.Usage, run.Status);
        Assert.StartsWith($"error: {folder.File("mine.toml")}: {expected}", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Help_names_every_verb_of_this_version()
    {
        var run = CommandRun.Of("--help");

        Assert.Equal(ExitStatus.Done, run.Status);
        Assert.All(["layout", "check", "batch", "compare", "catalog"], verb => Assert.Contains($"  {verb}", run.Output, StringComparison.Ordinal));
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
