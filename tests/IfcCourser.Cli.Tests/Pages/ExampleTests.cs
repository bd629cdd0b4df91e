using System.Text.RegularExpressions;
using IfcCourser.Cli.Tests.Support;

namespace IfcCourser.Cli.Tests.Pages;

/// <summary>What people copy to start from works: the example job files, the commands that the tutorial and README show. tools/crosscheck/tutorial.py runs the tutorial.</summary>
public sealed partial class ExampleTests
{
    public static TheoryData<string> JobFiles => [.. Directory.EnumerateFiles(Fixtures.InRepository("fixtures/jobs"), "*.toml").Select(file => Path.GetFileName(file)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(JobFiles))]
    public void A_house_is_laid_out_by_each_job_file(string file)
    {
        using var folder = new TemporaryFolder();
        var run = CommandRun.Of("layout", Fixtures.House("sorrel"), "--job", Fixtures.InRepository($"fixtures/jobs/{file}"), "--formats", "json", "--out", folder.Path);
        Assert.Equal(ExitStatus.Done, run.Status);
        Assert.Equal(["layout.json"], folder.Files());
    }

    [Fact]
    public void Every_verb_has_an_example_of_its_own_in_its_help() => Assert.All(CommandLine.Verbs.Except(["catalog"], StringComparer.Ordinal), verb =>
    {
        var examples = Messages.ExamplesOf(verb);
        Assert.NotEmpty(examples);
        Assert.All(examples, example => Assert.StartsWith(verb + (verb == "catalog list" ? string.Empty : " "), example, StringComparison.Ordinal));
        Assert.All(examples, example => Assert.True(CommandLine.Understands(example.Split(' ')), example));
        Assert.All(examples, example => Assert.Contains($"  ifccourser {example}\n", CommandRun.Of([.. verb.Split(' '), "--help"]).Output.ReplaceLineEndings("\n"), StringComparison.Ordinal));
    });

    [Theory]
    [InlineData("fixtures/tutorial/README.md", 12)]
    [InlineData("README.md", 2)]
    public void Every_command_shown_is_one_that_the_program_understands(string page, int atLeast)
    {
        var commands = Command().Matches(File.ReadAllText(Fixtures.InRepository(page))).Select(match => match.Groups["arguments"].Value.Trim()).ToList();
        Assert.True(commands.Count >= atLeast, $"{commands.Count} commands found");
        Assert.All(commands, arguments => Assert.True(CommandLine.Understands(arguments.Split(' ')), arguments));
        Assert.All(
            commands.SelectMany(arguments => arguments.Split(' ')).Where(word => word.StartsWith("fixtures/", StringComparison.Ordinal)),
            file => Assert.True(File.Exists(Fixtures.InRepository(file)), file));
    }

    [GeneratedRegex(@"^(?:ifccourser|dotnet run --project src/IfcCourser\.Cli --) (?<arguments>[^#\n]*)", RegexOptions.Multiline, 10_000)]
    private static partial Regex Command();
}
