using IfcCourser.Catalogs;
using IfcCourser.Cli.Tests.Support;
using IfcCourser.Rules;

namespace IfcCourser.Cli.Tests.Commands;

public sealed class CatalogCommandTests
{
    [Fact]
    public void The_list_names_every_built_in_set()
    {
        var run = CommandRun.Of("catalog", "list");

        Assert.Equal(ExitStatus.Done, run.Status);
        Assert.All(
            [.. BuiltInCatalogs.Names, .. BuiltInRuleSets.Names],
            name => Assert.Contains(run.Output.Split('\n'), line => line.StartsWith($"  {name} ", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("aac-mm", "catalog aac-mm is valid")]
    [InlineData("block-in", "catalog block-in is valid")]
    [InlineData("de", "rule set de is valid")]
    public void What_show_prints_is_a_file_that_verify_accepts(string name, string expected)
    {
        using var folder = new TemporaryFolder();
        var file = folder.File("mine.toml");
        File.WriteAllText(file, CommandRun.Of("catalog", "show", name).Output);

        var run = CommandRun.Of("catalog", "verify", file);

        Assert.Equal(ExitStatus.Done, run.Status);
        Assert.Contains(expected, run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_wrong_value_is_named_with_file_and_line()
    {
        using var folder = new TemporaryFolder();
        var file = folder.File("mine.toml");
        var text = CommandRun.Of("catalog", "show", "aac-mm").Output;
        var line = 1 + text.Split('\n').ToList().FindIndex(l => l.StartsWith("kerf", StringComparison.Ordinal));
        File.WriteAllText(file, text.Replace("kerf = \"2 mm\"", "kerf = \"2\"", StringComparison.Ordinal));

        var run = CommandRun.Of("catalog", "verify", file);

        Assert.Equal(ExitStatus.Usage, run.Status);
        Assert.StartsWith($"error: {file}:{line}: cutting.kerf: the length \"2\" has no unit", run.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("aac-mm", "[unit]", "[unti]", "Did you mean \"unit\"?")]
    [InlineData("us", "[bond]", "[bnod]", "Did you mean \"bond\"?")]
    [InlineData("us", "name = ", "nmae = ", "Did you mean \"name\"?")]
    [InlineData("us", "name = ", "least-piece = \"1 in\"\nname = ", "Did you mean \"bond.least-piece\"?")]
    [InlineData("aac-mm", "name = ", "widhts = []\nname = ", "Did you mean \"unit.widths\"?")]
    public void A_key_that_is_not_known_is_answered_with_the_nearest(string set, string right, string wrong, string expected)
    {
        using var folder = new TemporaryFolder();
        var text = CommandRun.Of("catalog", "show", set).Output;
        File.WriteAllText(folder.File("mine.toml"), text.Replace(right, wrong, StringComparison.Ordinal));

        var run = CommandRun.Of("catalog", "verify", folder.File("mine.toml"));

        Assert.Equal(ExitStatus.Usage, run.Status);
        Assert.Contains(expected, run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_name_that_is_no_set_is_answered_with_the_nearest()
    {
        var run = CommandRun.Of("catalog", "show", "octometric");

        Assert.Equal(ExitStatus.Usage, run.Status);
        Assert.Contains("Did you mean \"octametric\"?", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void IdsFilesOfACatalogAreWritten()
    {
        using var folder = new TemporaryFolder();
        var run = CommandRun.Of("catalog", "ids", "octametric", "--out", folder.Path);
        Assert.Equal(ExitStatus.Done, run.Status);
        Assert.Contains("IfcCourser_Coursing", File.ReadAllText(folder.File("coursed-model.ids")), StringComparison.Ordinal);
        Assert.Contains("Qto_WallBaseQuantities", File.ReadAllText(folder.File("model-for-octametric.ids")), StringComparison.Ordinal);
    }
}
