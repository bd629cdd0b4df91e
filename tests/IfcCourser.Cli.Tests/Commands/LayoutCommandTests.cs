using System.Globalization;
using System.Security.Cryptography;
using System.Text.Json.Nodes;
using IfcCourser.Cli.Tests.Support;

namespace IfcCourser.Cli.Tests.Commands;

public sealed class LayoutCommandTests
{
    [Theory]
    [InlineData("sorrel", "catalog aac-mm, rules eu")]
    [InlineData("teasel", "catalog aac-mm, rules eu")]
    [InlineData("yarrow", "catalog aac-in, rules us")]
    public void A_house_becomes_a_layout_sheets_and_a_model(string house, string chosen)
    {
        using var folder = new TemporaryFolder();
        var run = CommandRun.Of("layout", Fixtures.House(house), "--out", folder.Path);

        Assert.Equal((ExitStatus.Done, string.Empty), (run.Status, run.Error));
        Assert.Contains(chosen, run.Output, StringComparison.Ordinal);
        var files = folder.Files();
        Assert.Contains("layout.json", files, StringComparer.Ordinal);
        Assert.Contains("coordination/findings.csv", files, StringComparer.Ordinal);
        Assert.Contains($"model/{house}.coursed.ifc", files, StringComparer.Ordinal);
        var coursed = Layout(folder)["walls"]!.AsArray().Count(wall => (string?)wall!["status"] == "coursed");
        Assert.True(coursed > 0);
        Assert.Equal(coursed, files.Count(file => file.StartsWith("walls/", StringComparison.Ordinal) && file.EndsWith(".dxf", StringComparison.Ordinal)));
        Assert.Equal(coursed, files.Count(file => file.EndsWith(".svg", StringComparison.Ordinal)));
        Assert.Equal(files.Length, coursed + coursed + 3);
    }

    [Fact]
    public void Every_wall_is_laid_out_or_listed_with_its_reason()
    {
        using var folder = new TemporaryFolder();
        CommandRun.Of("layout", Fixtures.House("sorrel"), "--out", folder.Path, "--formats", "json", "--storey", "nowhere");
        var layout = Layout(folder);

        Assert.NotEmpty(layout["walls"]!.AsArray());
        Assert.All(layout["walls"]!.AsArray(), wall => Assert.Equal(("skipped", "not-selected"), ((string?)wall!["status"], (string?)wall["reason"])));
        Assert.Equal((int)layout["totals"]!["walls"]!, layout["walls"]!.AsArray().Count);
    }

    /// <summary>Whatever the culture and however the folder is called: the same bytes.</summary>
    [Fact]
    public void The_same_model_gives_the_same_bytes()
    {
        using var first = new TemporaryFolder();
        using var second = new TemporaryFolder();
        CommandRun.Of("layout", Fixtures.House("yarrow"), "--out", first.Path);
        InCulture("ar-SA", () => CommandRun.Of("layout", Fixtures.House("yarrow"), "--out", second.Path));

        Assert.Equal(first.Files(), second.Files());
        Assert.All(first.Files(), file => Assert.Equal(Hash(first.File(file)), Hash(second.File(file))));
    }

    [Fact]
    public void The_model_is_left_as_it_was_also_where_results_would_take_its_place()
    {
        using var folder = new TemporaryFolder();
        Directory.CreateDirectory(folder.File("model"));
        var model = folder.File("model", "house.coursed.ifc");
        File.Copy(Fixtures.House("sorrel"), model);
        var link = folder.File("house.ifc");
        File.CreateSymbolicLink(link, model);
        var before = Hash(model);

        var run = CommandRun.Of("layout", link, "--out", folder.Path, "--formats", "ifc");

        Assert.Equal(ExitStatus.Unwritable, run.Status);
        Assert.Contains("would overwrite the model", run.Error, StringComparison.Ordinal);
        Assert.Equal(before, Hash(model));
    }

    [Fact]
    public void The_summary_as_json_is_one_object_that_says_what_the_text_says()
    {
        using var folder = new TemporaryFolder();
        var run = CommandRun.Of("layout", Fixtures.House("teasel"), "--out", folder.Path, "--formats", "json", "--json", "--quiet");
        var summary = JsonNode.Parse(run.Output)!;
        var totals = Layout(folder)["totals"]!;

        Assert.All(["walls", "coursed", "skipped", "pieces", "cuts"], name => Assert.Equal((int)totals[name]!, (int)summary[name]!));
        Assert.Equal("[\"layout.json\"]", summary["files"]!.ToJsonString());
        Assert.Equal(0, (int)summary["exitStatus"]!);
    }

    [Fact]
    public void Quiet_says_nothing()
    {
        using var folder = new TemporaryFolder();
        var run = CommandRun.Of(errorIsTerminal: true, "layout", Fixtures.House("teasel"), "--out", folder.Path, "--formats", "json", "--quiet");
        Assert.Equal((ExitStatus.Done, string.Empty, string.Empty), (run.Status, run.Output, run.Error));
    }

    [Fact]
    public void Progress_is_shown_to_those_who_watch()
    {
        using var folder = new TemporaryFolder();
        var run = CommandRun.Of(errorIsTerminal: true, "layout", Fixtures.House("teasel"), "--out", folder.Path, "--formats", "json");
        Assert.Contains(Messages.LayingOut, run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void The_date_given_is_the_date_stamped()
    {
        using var folder = new TemporaryFolder();
        CommandRun.Of("layout", Fixtures.House("teasel"), "--out", folder.Path, "--formats", "json", "--date", "2031-12-24");
        Assert.Equal("2031-12-24", (string?)Layout(folder)["model"]!["date"]);
    }

    /// <summary>Each is a model somebody will give us one day.</summary>
    [Theory]
    [InlineData("empty.ifc")]
    [InlineData("not-step.ifc")]
    [InlineData("cut-off.ifc")]
    [InlineData("wrong-schema.ifc")]
    [InlineData("no-model.ifczip")]
    [InlineData("two-models.ifczip")]
    [InlineData("no-such-file.ifc")]
    [InlineData("")]
    public void A_model_that_cannot_be_read_is_said_in_one_message(string file)
    {
        using var folder = new TemporaryFolder();
        var run = CommandRun.Of("layout", Fixtures.Bad(file), "--out", folder.File("out"));

        Assert.Equal(ExitStatus.Unreadable, run.Status);
        Assert.StartsWith($"error: {Fixtures.Bad(file)}", run.Error, StringComparison.Ordinal);
        Assert.Single(run.Error.TrimEnd().Split('\n'));
        Assert.Empty(run.Output);
        Assert.Empty(folder.Files());
        Assert.False(Directory.Exists(folder.File("out")));
    }

    [Fact]
    public void A_wall_whose_shape_is_missing_is_listed_not_lost()
    {
        using var folder = new TemporaryFolder();
        var run = CommandRun.Of("layout", Fixtures.Bad("missing-id.ifc"), "--out", folder.Path, "--formats", "json");

        Assert.Equal(ExitStatus.Done, run.Status);
        Assert.All(Layout(folder)["walls"]!.AsArray(), wall => Assert.Equal("skipped", (string?)wall!["status"]));
        Assert.NotEmpty(Layout(folder)["walls"]!.AsArray());
    }

    [Fact]
    public void A_file_in_the_place_of_the_folder_is_said_before_any_work()
    {
        using var folder = new TemporaryFolder();
        File.WriteAllText(folder.File("out"), "mine");
        var run = CommandRun.Of("layout", Fixtures.House("teasel"), "--out", folder.File("out"));

        Assert.Equal(ExitStatus.Unwritable, run.Status);
        Assert.StartsWith($"error: {folder.File("out")}: this can't be written", run.Error, StringComparison.Ordinal);
        Assert.Equal("mine", File.ReadAllText(folder.File("out")));
    }

    private static JsonNode Layout(TemporaryFolder folder) => JsonNode.Parse(File.ReadAllText(folder.File("layout.json")))!;

    private static string Hash(string file) => Convert.ToHexString(SHA256.HashData(File.ReadAllBytes(file)));

    private static void InCulture(string name, Action action)
    {
        var before = CultureInfo.CurrentCulture;
        CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(name);
        try
        {
            action();
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
