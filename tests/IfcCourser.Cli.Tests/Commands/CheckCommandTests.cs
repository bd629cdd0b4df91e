using System.Text.Json.Nodes;
using System.Xml.Linq;
using IfcCourser.Cli.Tests.Support;
using IfcCourser.Layouts;

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

        var states = Enum.GetValues<ModuleState>().Select(Messages.State).ToArray();
        Assert.Equal(openings, run.Output.Split('\n').Count(line => states.Any(state => line.Contains("  " + state, StringComparison.Ordinal))));
        Assert.Contains("  " + Messages.StateOn, run.Output, StringComparison.Ordinal);
    }

    /// <summary>What scripts and people read on the narrowest terminal; names and codes are never cut off.</summary>
    [Theory]
    [InlineData("sorrel")]
    [InlineData("teasel")]
    [InlineData("yarrow")]
    public void The_table_fits_into_80_columns(string house)
    {
        var run = CommandRun.Of("check", Fixtures.House(house));
        var table = run.Output.Split(Environment.NewLine).TakeWhile(line => !line.StartsWith(house + ".ifc", StringComparison.Ordinal)).ToList();
        Assert.True(table.Count > 20, $"{table.Count} lines");
        Assert.DoesNotContain(table, line => line.Length > 80 || line.EndsWith(' '));
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
        var run = CommandRun.Of("check", Fixtures.House("yarrow"), "--out", folder.Path);

        Assert.Contains("  coordination/findings.csv", run.Output, StringComparison.Ordinal);
        Assert.Equal(["coordination/findings.csv", "coordination/findings.html", "coordination/findings.json", "coordination/issues.bcf"], folder.Files());
        Assert.StartsWith(
            "code,severity,wall,opening,storey,at_s,at_z,message,remedy,move_left,move_right,cut_pieces,short_pieces,short_laps\r\n", File.ReadAllText(folder.File("coordination", "findings.csv")), StringComparison.Ordinal);
    }

    /// <summary>Accepted findings fail no more; one that is taken out of the file again does.</summary>
    [Fact]
    public void What_a_baseline_holds_is_accepted_and_only_new_findings_fail()
    {
        using var folder = new TemporaryFolder();
        var file = folder.File("accepted.json");
        Assert.Equal(ExitStatus.Findings, CommandRun.Of("check", Fixtures.House("sorrel"), "--openings", "keep", "--write-baseline", file).Status);

        var same = CommandRun.Of("check", Fixtures.House("sorrel"), "--openings", "keep", "--baseline", file, "--fail-on", "note");
        Assert.Equal(ExitStatus.Done, same.Status);
        Assert.Contains("new: 0", same.Output, StringComparison.Ordinal);
        Assert.Contains("(opening-off-module)", same.Output, StringComparison.Ordinal);

        var baseline = JsonNode.Parse(File.ReadAllText(file))!;
        var accepted = baseline["accepted"]!.AsArray();
        Assert.Equal(accepted.Count, File.ReadAllLines(file).Count(line => line.StartsWith("  {\"project\":", StringComparison.Ordinal)));
        accepted.Remove(accepted.Single(entry => entry!["code"]!.GetValue<string>() == "opening-off-module"));
        File.WriteAllText(file, baseline.ToJsonString());
        var fewer = CommandRun.Of("check", Fixtures.House("sorrel"), "--openings", "keep", "--baseline", file);
        Assert.Equal(ExitStatus.Findings, fewer.Status);
        Assert.Contains("new: 1", fewer.Output, StringComparison.Ordinal);
        Assert.Single(fewer.Output.Split('\n'), line => line.StartsWith("  warning ", StringComparison.Ordinal) || line.StartsWith("  note ", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("{", ":1: this is no JSON. Write it anew with --write-baseline.")]
    [InlineData("{\"schema\": \"other\"}", ": this is no baseline of accepted findings.")]
    [InlineData("{\"schema\": \"ifccourser.baseline/1\", \"accepted\": [{\"wall\": \"W\"}]}", ": entry 1 under \"accepted\" has no code")]
    [InlineData("{\"schema\": \"ifccourser.baseline/1\", \"accepted\": [{\"code\": \"c\", \"count\": -1}]}", "a count that is no whole number")]
    public void A_baseline_that_is_none_is_told(string text, string told)
    {
        using var folder = new TemporaryFolder();
        File.WriteAllText(folder.File("accepted.json"), text);
        var run = CommandRun.Of("check", Fixtures.House("sorrel"), "--baseline", folder.File("accepted.json"));
        Assert.Equal(ExitStatus.Usage, run.Status);
        Assert.Contains(told, run.Error, StringComparison.Ordinal);
        Assert.Equal(ExitStatus.Usage, CommandRun.Of("check", Fixtures.House("sorrel"), "--baseline", folder.File("none.json")).Status);
    }

    /// <summary>A case for each wall and each opening; those that make the run fail are failures.</summary>
    [Fact]
    public void Test_results_have_a_case_for_each_wall_and_opening()
    {
        using var folder = new TemporaryFolder();
        var run = CommandRun.Of("check", Fixtures.House("sorrel"), "--openings", "keep", "--junit", folder.File("results.xml"), "--json");
        var check = JsonNode.Parse(run.Output)!["check"]!;
        var cases = XDocument.Load(folder.File("results.xml")).Descendants("testcase").ToList();

        var walls = check["checked"]!.AsArray();
        Assert.Equal(1 + walls.Count + walls.Sum(wall => wall!["openings"]!.AsArray().Count) + check["notCoursed"]!.AsArray().Count, cases.Count);
        var failed = Assert.Single(cases, one => one.Element("failure") is not null);
        Assert.StartsWith("Kitchen window ", failed.Attribute("name")!.Value, StringComparison.Ordinal);
        Assert.Equal("opening-off-module", failed.Element("failure")!.Attribute("type")!.Value);
        Assert.Equal("1", XDocument.Load(folder.File("results.xml")).Root!.Attribute("failures")!.Value);
    }

    /// <summary>The kitchen window is drawn at 3960 to 5460 (tools/FixtureMaker, Sorrel); left jambs belong on 125 k - 1, the nearest is 3999, 39 further on.</summary>
    [Fact]
    public void Json_tells_state_ways_cure_and_cost_of_each_opening()
    {
        using var folder = new TemporaryFolder();
        var run = CommandRun.Of("check", Fixtures.House("sorrel"), "--openings", "keep", "--out", folder.Path, "--json");
        var written = JsonNode.Parse(File.ReadAllText(folder.File("coordination", "findings.json")))!;
        var kitchen = written["checked"]!.AsArray().SelectMany(wall => wall!["openings"]!.AsArray()).Single(opening => opening!["name"]?.GetValue<string>() == "Kitchen window")!;

        Assert.Equal("curable", kitchen["state"]!.GetValue<string>());
        Assert.Equal(39, kitchen["moveLeft"]!.GetValue<double>());
        Assert.NotNull(kitchen["costOfKeeping"]);
        Assert.True(JsonNode.DeepEquals(written["checked"], JsonNode.Parse(run.Output)!["check"]!["checked"]));
    }
}
