using System.Text.Json.Nodes;
using IfcCourser.Cli.Tests.Support;

namespace IfcCourser.Cli.Tests.Commands;

public sealed class SlabCommandTests
{
    [Fact]
    public void Readings_become_a_datum_sheets_and_a_changed_layout_and_the_input_stays()
    {
        using var folder = new TemporaryFolder();
        var layout = LaidOut(folder);
        var before = File.ReadAllBytes(layout);
        var run = CommandRun.Of("slab", layout, "--readings", Fixtures.Survey("yarrow-slab.csv"), "--out", folder.File("slab"), "--apply", "--formats", "json,csv,dxf,svg");

        Assert.Equal(ExitStatus.Done, run.Status);
        Assert.Equal(before, File.ReadAllBytes(layout));
        var slab = JsonNode.Parse(File.ReadAllText(folder.File("slab", "slab.json")))!;
        Assert.Equal((double)slab["bed"]!["min"]!, slab["blocks"]!.AsArray().Min(block => (double)block!["bedMin"]!), 1e-6);
        Assert.Equal(4, slab["control"]!.AsArray().Count);
        Assert.All(["set-out/slab-bed.csv", "set-out/bars-as-built.csv", "set-out/slab-levels.dxf", "set-out/slab-first-course.svg"], file => Assert.True(File.Exists(folder.File("slab", file))));

        var changed = JsonNode.Parse(File.ReadAllText(folder.File("slab", "layout.json")))!;
        Assert.Equal((double)slab["datum"]!, (double)Assert.Single(changed["slabLevels"]!.AsArray())!["datum"]!, 1e-6);
        var beds = changed["walls"]!.AsArray().Where(wall => wall!["courses"] is not null).SelectMany(wall => wall!["courses"]![0]!["pieces"]!.AsArray()).Count(piece => piece!["bed"] is not null);
        Assert.Equal(slab["blocks"]!.AsArray().Count, beds);
        Assert.Equal(ExitStatus.Done, CommandRun.Of("slab", folder.File("slab", "layout.json"), "--readings", Fixtures.Survey("yarrow-slab.csv"), "--out", folder.File("again"), "--formats", "json").Status);
        var again = JsonNode.Parse(File.ReadAllText(folder.File("again", "slab.json")))!;
        Assert.All(["datum", "bed", "blocks", "readings"], member => Assert.Equal(slab[member]!.ToJsonString(), again[member]!.ToJsonString()));
    }

    [Fact]
    public void Bars_as_built_are_laid_around_or_listed()
    {
        using var folder = new TemporaryFolder();
        var layout = LaidOut(folder);
        var run = CommandRun.Of("slab", layout, "--readings", Fixtures.Survey("yarrow-slab.csv"), "--out", folder.File("slab"), "--apply", "--formats", "json,csv");
        var slab = JsonNode.Parse(File.ReadAllText(folder.File("slab", "slab.json")))!;
        var answers = slab["bars"]!.AsArray().ToLookup(bar => (string)bar!["answer"]!, bar => (string)bar!["point"]!, StringComparer.Ordinal);
        Assert.Equal(["2"], answers["bond-moves"], StringComparer.Ordinal);
        Assert.Equal(["4", "6"], answers["left"], StringComparer.Ordinal);
        Assert.Equal(["4", "6"], File.ReadAllLines(folder.File("slab", "set-out", "bars-left.csv")).Skip(1).Select(row => row.Split(',')[0]), StringComparer.Ordinal);
        Assert.Contains("left to the engineer and the building official 2", run.Output, StringComparison.Ordinal);

        // The readings of the changed layout ask for no other bond.
        Assert.Equal(ExitStatus.Done, CommandRun.Of("slab", folder.File("slab", "layout.json"), "--readings", Fixtures.Survey("yarrow-slab.csv"), "--out", folder.File("again"), "--formats", "json").Status);
        var again = JsonNode.Parse(File.ReadAllText(folder.File("again", "slab.json")))!;
        Assert.Empty(again["bonds"]!.AsArray());
        Assert.Equal(["4", "6"], again["bars"]!.AsArray().Where(bar => (string)bar!["answer"]! == "left").Select(bar => (string)bar!["point"]!), StringComparer.Ordinal);
    }

    [Fact]
    public void The_second_stage_names_blocks_to_sand_and_to_lay_again()
    {
        using var folder = new TemporaryFolder();
        var run = CommandRun.Of("slab", LaidOut(folder), "--readings", Fixtures.Survey("yarrow-first-course.csv"), "--out", folder.File("top"), "--stage", "levelled");
        Assert.Equal(ExitStatus.Done, run.Status);
        var works = JsonNode.Parse(File.ReadAllText(folder.File("top", "slab.json")))!["blocks"]!.AsArray().Select(block => (string?)block!["work"]).ToHashSet(StringComparer.Ordinal);
        Assert.Superset(new HashSet<string?>(StringComparer.Ordinal) { "right", "sand", "relay" }, works);
        Assert.All(["first-course-levels.svg", "first-course-levels.dxf", "first-course-levels.pdf", "first-course-levels.csv"], file => Assert.True(File.Exists(folder.File("top", "set-out", file))));
    }

    [Fact]
    public void The_second_stage_as_json_counts_what_is_to_do()
    {
        using var folder = new TemporaryFolder();
        var run = CommandRun.Of("slab", LaidOut(folder), "--readings", Fixtures.Survey("yarrow-first-course.csv"), "--out", folder.File("top"), "--stage", "levelled", "--json", "--formats", "json");
        var (told, written) = (JsonNode.Parse(run.Output)!, JsonNode.Parse(File.ReadAllText(folder.File("top", "slab.json")))!["blocks"]!.AsArray());

        Assert.Equal("levelled", (string?)told["stage"]);
        Assert.Equal(written.Count, (int)told["blocks"]!);
        Assert.Equal(written.Count(block => (string?)block!["work"] == "sand"), (int)told["sand"]!);
        Assert.Equal(written.Count(block => (string?)block!["work"] == "relay"), (int)told["relay"]!);
    }

    [Theory]
    [InlineData("--storey", "Lvl 1")]
    [InlineData("--bed-max", "1/16 in")]
    public void A_wrong_storey_or_bed_is_a_wrong_command_line(string option, string value)
    {
        using var folder = new TemporaryFolder();
        var run = CommandRun.Of("slab", LaidOut(folder), "--readings", Fixtures.Survey("yarrow-slab.csv"), "--out", folder.File("slab"), option, value);

        Assert.Equal((ExitStatus.Usage, string.Empty), (run.Status, run.Output));
        Assert.Contains(option, run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void What_can_t_be_read_ends_with_status_3_and_one_line()
    {
        using var folder = new TemporaryFolder();
        var layout = LaidOut(folder);
        File.WriteAllText(folder.File("wrong.csv"), "x,y,z\n1,2,3\n");
        foreach (var arguments in (string[][])[["slab", layout, "--readings", folder.File("wrong.csv")], ["slab", folder.File("wrong.csv"), "--readings", folder.File("wrong.csv")], ["slab", layout, "--readings", folder.File("none.csv")]])
        {
            var run = CommandRun.Of([.. arguments, "--out", folder.File("out")]);
            Assert.Equal((ExitStatus.Unreadable, string.Empty), (run.Status, run.Output));
            Assert.Single(run.Error.TrimEnd().Split('\n'));
        }

        Assert.False(Directory.Exists(folder.File("out")));
    }

    private static string LaidOut(TemporaryFolder folder)
    {
        CommandRun.Of("layout", Fixtures.House("yarrow"), "--out", folder.File("laid"), "--formats", "json", "--quiet");
        return folder.File("laid", "layout.json");
    }
}
