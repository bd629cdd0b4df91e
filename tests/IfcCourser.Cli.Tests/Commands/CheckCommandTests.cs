using System.Text.Json.Nodes;
using IfcCourser.Cli.Tests.Support;

namespace IfcCourser.Cli.Tests.Commands;

/// <summary>Houses have openings on and off the module on purpose (see fixtures/README.md).</summary>
public sealed class CheckCommandTests
{
    [Theory]
    [InlineData(null, 1)]
    [InlineData("warning", 1)]
    [InlineData("note", 1)]
    [InlineData("none", 0)]
    public void The_status_follows_the_gravest_finding(string? failOn, int expected)
    {
        string[] option = failOn is null ? [] : ["--fail-on", failOn];
        Assert.Equal(expected, (int)CommandRun.Of(["check", Fixtures.House("sorrel"), "--openings", "keep", .. option]).Status);
    }

    [Fact]
    public void Each_opening_has_its_line()
    {
        using var folder = new TemporaryFolder();
        CommandRun.Of("layout", Fixtures.House("sorrel"), "--out", folder.Path, "--formats", "json");
        var openings = JsonNode.Parse(File.ReadAllText(folder.File("layout.json")))!["walls"]!.AsArray()
            .Where(wall => wall!["openings"] is not null)
            .Sum(wall => wall!["openings"]!.AsArray().Count);

        var run = CommandRun.Of("check", Fixtures.House("sorrel"));

        string[] states = [Messages.StateOn, Messages.StateCurable, Messages.StateOff, Messages.StateUncoursed];
        Assert.Equal(openings, run.Output.Split('\n').Count(line => states.Any(state => line.Contains("  " + state, StringComparison.Ordinal))));
        Assert.Contains("  " + Messages.StateOn, run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Verbose_says_of_every_wall_why_it_was_taken_or_not()
    {
        var run = CommandRun.Of("check", Fixtures.House("sorrel"), "--verbose");
        var lines = run.Error.Split(Environment.NewLine);
        var walls = JsonNode.Parse(CommandRun.Of("check", Fixtures.House("sorrel"), "--json").Output)!["walls"]!.GetValue<int>();

        Assert.Equal(walls, lines.Count(line => line.Contains(") is laid out: ", StringComparison.Ordinal) || line.Contains(") is not laid out, ", StringComparison.Ordinal)));
        Assert.Matches(
            "^Ground south \\(#\\d+\\) is laid out: layer 3 of 4, 240 mm thick; \"block\" in the layer \"Aerated concrete block 240\"\\.$",
            Assert.Single(lines, line => line.StartsWith("Ground south (", StringComparison.Ordinal)));
        var closet = Assert.Single(lines, line => line.StartsWith("Ground closet (", StringComparison.Ordinal) && line.Contains("is not laid out", StringComparison.Ordinal));
        Assert.Contains("no-masonry-layer", closet, StringComparison.Ordinal);
        Assert.Contains("\"metal stud\" in the layer \"Metal stud 75\" rules it out", closet, StringComparison.Ordinal);
    }

    [Fact]
    public void Verbose_tells_of_walls_that_were_not_asked_for_too()
    {
        var run = CommandRun.Of("check", Fixtures.House("sorrel"), "--verbose", "--only", "Ground south");
        Assert.Matches("Ground east \\(#\\d+\\) is not laid out, not-selected: .* Layer 3 of 4, 240 mm thick: \"block\" in", run.Error);
    }

    [Fact]
    public void Without_a_folder_nothing_is_written_and_with_one_the_findings_are()
    {
        using var folder = new TemporaryFolder();
        CommandRun.Of("check", Fixtures.House("yarrow"), "--out", folder.Path);

        Assert.Equal(["coordination/findings.csv", "coordination/findings.html"], folder.Files());
        Assert.StartsWith(
            "code,severity,wall,opening,storey,at_s,at_z,message,remedy\r\n", File.ReadAllText(folder.File("coordination", "findings.csv")), StringComparison.Ordinal);
    }
}
