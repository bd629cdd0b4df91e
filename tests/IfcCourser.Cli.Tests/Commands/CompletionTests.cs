using IfcCourser.Cli.Tests.Support;

namespace IfcCourser.Cli.Tests.Commands;

/// <summary>What shells are told when they ask for suggestions. tools/crosscheck/completion.py presses the key in real shells.</summary>
public sealed class CompletionTests
{
    [Theory]
    [InlineData("ifccourser lay", "layout")]
    [InlineData("ifccourser layout house.ifc --catalog aac-m", "aac-mm")]
    [InlineData("ifccourser check house.ifc --rules u", "us")]
    [InlineData("ifccourser layout house.ifc --formats js", "json")]
    [InlineData("ifccourser layout house.ifc --formats json,xl", "json,xlsx")]
    [InlineData("ifccourser slab layout.json --formats json,d", "json,dxf")]
    [InlineData("ifccourser layout house.ifc --sheet ARCH-E", "ARCH-E")]
    [InlineData("ifccourser catalog show octa", "octametric")]
    [InlineData("ifccourser layout house.ifc --openings re", "resize")]
    [InlineData("ifccourser completion f", "fish")]
    public void What_was_begun_is_completed(string line, string expected) =>
        Assert.Contains(expected, CommandRun.Of($"[suggest:{line.Length}]", line).Output.ReplaceLineEndings("\n").Split('\n'), StringComparer.Ordinal);

    [Fact]
    public void A_format_is_not_suggested_twice() =>
        Assert.DoesNotContain("json,json", CommandRun.Of("[suggest:47]", "ifccourser layout house.ifc --formats json,json").Output, StringComparison.Ordinal);

    [Theory]
    [InlineData("bash")]
    [InlineData("zsh")]
    [InlineData("fish")]
    [InlineData("powershell")]
    public void Every_shell_has_its_script(string shell)
    {
        var run = CommandRun.Of("completion", shell);
        Assert.Equal(ExitStatus.Done, run.Status);
        Assert.Contains("[suggest:", run.Output, StringComparison.Ordinal);
        Assert.Contains($"ifccourser completion {shell}", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Another_shell_is_told_which_there_are() =>
        Assert.Contains("bash, fish, powershell, zsh", CommandRun.Of("completion", "csh").Error, StringComparison.Ordinal);
}
