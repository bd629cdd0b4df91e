using System.Globalization;
using System.Security.Cryptography;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
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

        Assert.Equal(ExitStatus.Done, run.Status);
        Assert.Contains(chosen, run.Output, StringComparison.Ordinal);
        var files = folder.Files();
        Assert.Contains("layout.json", files, StringComparer.Ordinal);
        Assert.Contains("coordination/findings.csv", files, StringComparer.Ordinal);
        Assert.Contains($"model/{house}.coursed.ifc", files, StringComparer.Ordinal);
        var coursed = Layout(folder)["walls"]!.AsArray().Count(wall => (string?)wall!["status"] == "coursed");
        Assert.True(coursed > 0);
        Assert.Contains($"walls/{house}.dxf", files, StringComparer.Ordinal);
        Assert.Contains($"walls/{house}.pdf", files, StringComparer.Ordinal);
        var drawn = files.Where(file => file.StartsWith("walls/W", StringComparison.Ordinal) && file.EndsWith(".svg", StringComparison.Ordinal)).SelectMany(WallsOf).ToList();
        Assert.Equal((coursed, coursed), (drawn.Count, drawn.Distinct().Count()));
        Assert.Equal(1, files.Count(file => file.StartsWith("walls/C", StringComparison.Ordinal)));
        Assert.Equal(4, files.Count(file => file.StartsWith("walls/P", StringComparison.Ordinal)));
        var hasBars = Layout(folder)["barSchedule"]!.AsArray().Count > 0;
        Assert.Equal(hasBars, files.Contains("order/bars.csv", StringComparer.Ordinal));
        var storeys = Layout(folder)["setOut"]!["storeys"]!.AsArray().Count;
        string[] others =
        [
            "coordination/findings.csv", "coordination/findings.html", "coordination/issues.bcf", "layout.json", $"model/{house}.coursed.ifc", "order/saw-list.csv", "order/staging.csv", "order/takeoff.csv",
            "order/takeoff.xlsx", "report.html", "set-out/readings.csv", $"walls/{house}.dxf", $"walls/{house}.pdf",
            .. hasBars ? ["order/bars.csv", "order/bar-stock.csv"] : Array.Empty<string>(),
            .. storeys > 0 ? [$"set-out/{house}.dxf", $"set-out/{house}.pdf", "set-out/points.csv"] : Array.Empty<string>(),
        ];
        Assert.Equal(others.Order(StringComparer.Ordinal), files.Where(file => !file.EndsWith(".svg", StringComparison.Ordinal)), StringComparer.Ordinal);
    }

    [Fact]
    public void A_parts_file_is_no_model_to_lay_out()
    {
        using var folder = new TemporaryFolder();
        CommandRun.Of("layout", Fixtures.House("teasel"), "--out", folder.Path, "--formats", "ifc", "--ifc-parts");
        using var second = new TemporaryFolder();
        var run = CommandRun.Of("layout", folder.File("model", "teasel.parts.ifc"), "--out", second.Path);

        Assert.Equal(ExitStatus.Unreadable, run.Status);
        Assert.Contains("teasel.parts.ifc: this is the parts file of an earlier run", run.Error, StringComparison.Ordinal);
        Assert.Empty(second.Files());
        Assert.Equal(ExitStatus.Done, CommandRun.Of("layout", folder.File("model", "teasel.coursed.ifc"), "--out", second.Path, "--formats", "json").Status);
    }

    [Fact]
    public void Every_wall_is_laid_out_or_listed_with_its_reason()
    {
        using var folder = new TemporaryFolder();
        CommandRun.Of("layout", Fixtures.House("sorrel"), "--out", folder.Path, "--formats", "json,csv", "--storey", "Upper*");
        var layout = Layout(folder);
        var left = layout["walls"]!.AsArray().Where(wall => (string?)wall!["reason"] == "not-selected").ToList();

        Assert.NotEmpty(left);
        Assert.All(layout["walls"]!.AsArray(), wall => Assert.Equal(
            (string?)wall!["storey"] is { } storey && storey.StartsWith("Upper", StringComparison.Ordinal), !left.Contains(wall)));
        Assert.DoesNotContain("not-selected", File.ReadAllText(folder.File("coordination", "findings.csv")), StringComparison.Ordinal);
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
        var run = CommandRun.Of("layout", Fixtures.House("teasel"), "--out", folder.Path, "--formats", "JSON", "--json", "--quiet");
        var summary = JsonNode.Parse(run.Output)!;
        var totals = Layout(folder)["totals"]!;

        Assert.All(["walls", "coursed", "skipped", "pieces", "cuts"], name => Assert.Equal((int)totals[name]!, (int)summary[name]!));
        Assert.Equal("[\"layout.json\"]", summary["files"]!.ToJsonString());
        Assert.Equal(0, (int)summary["exitStatus"]!);
    }

    /// <summary>Yarrow is in inches, whose rules ask for bars in both its storeys; sorrel in millimetres, whose rules ask for none.</summary>
    [Fact]
    public void Bars_are_set_out_on_a_sheet_a_storey_and_in_a_point_list_where_there_are_any()
    {
        using var folder = new TemporaryFolder();
        CommandRun.Of("layout", Fixtures.House("yarrow"), "--out", folder.File("with"), "--formats", "dxf,svg,csv");
        CommandRun.Of("layout", Fixtures.House("sorrel"), "--out", folder.File("without"), "--formats", "csv");
        Assert.Equal(
            "S01-Level-1.svg S02-Attic.svg points.csv readings.csv yarrow.dxf",
            string.Join(' ', Directory.GetFiles(folder.File("with", "set-out")).Select(Path.GetFileName).Order(StringComparer.Ordinal)));
        Assert.Equal(["readings.csv"], Directory.GetFiles(folder.File("without", "set-out")).Select(Path.GetFileName), StringComparer.Ordinal);
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

    [Theory]
    [InlineData("2031-12-24")]
    [InlineData("2031-12-24T18:30:00")]
    public void The_date_given_is_the_date_stamped(string date)
    {
        using var folder = new TemporaryFolder();
        CommandRun.Of("layout", Fixtures.House("teasel"), "--out", folder.Path, "--formats", "json", "--date", date);
        Assert.Equal(date, (string?)Layout(folder)["model"]!["date"]);
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
        Assert.StartsWith($"error: {folder.File("out")}: this is a file, not a folder", run.Error, StringComparison.Ordinal);
        Assert.Equal("mine", File.ReadAllText(folder.File("out")));
    }

    /// <summary>The file's date, paper and storey count where the command line says nothing; its catalog lies beside it.</summary>
    [Fact]
    public void A_job_file_holds_the_options_and_the_command_line_wins()
    {
        using var folder = new TemporaryFolder();
        File.WriteAllText(folder.File("mine.toml"), CommandRun.Of("catalog", "show", "aac-600").Output);
        File.WriteAllText(
            folder.File("job.toml"),
            "project = \"Plot 7\"\ncatalog = \"mine.toml\"\nwidth = \"any\"\ndate = \"2026-03-31\"\nstorey = [\"Upper*\"]\nsheet = \"A1\"\nformats = [\"json\", \"svg\"]\n");
        CommandRun.Of("layout", Fixtures.House("sorrel"), "--out", folder.File("file"), "--job", folder.File("job.toml"));
        CommandRun.Of("layout", Fixtures.House("sorrel"), "--out", folder.File("both"), "--job", folder.File("job.toml"), "--storey", "Ground*", "--sheet", "a2", "--catalog", "aac-mm");

        Assert.Equal("aac-600", (string?)Json(folder.File("file", "layout.json"))["catalog"]!["name"]);
        Assert.Equal("aac-mm", (string?)Json(folder.File("both", "layout.json"))["catalog"]!["name"]);
        var (file, both) = (Sheets(folder.File("file", "walls")), Sheets(folder.File("both", "walls")));
        Assert.Contains("W008-Upper-south.svg", file.Keys, StringComparer.Ordinal);
        Assert.DoesNotContain("W001-Ground-south.svg", file.Keys, StringComparer.Ordinal);
        Assert.Contains("W001-Ground-south.svg", both.Keys, StringComparer.Ordinal);
        Assert.All(file.Values, svg => Assert.All(["width=\"841mm\"", "Plot 7", "2026-03-31"], word => Assert.Contains(word, svg, StringComparison.Ordinal)));
        Assert.All(both.Values, svg => Assert.Contains("width=\"594mm\"", svg, StringComparison.Ordinal));
    }

    [Fact]
    public void Deliveries_and_packs_have_lists_of_their_own()
    {
        using var folder = new TemporaryFolder();
        File.WriteAllText(folder.File("job.toml"), "[[phase]]\nname = \"first\"\nstoreys = [\"Ground*\"]\n");
        CommandRun.Of("layout", Fixtures.House("sorrel"), "--out", folder.File("job"), "--job", folder.File("job.toml"), "--formats", "csv,json");
        CommandRun.Of("layout", Fixtures.House("sorrel"), "--out", folder.File("one"), "--job", folder.File("job.toml"), "--phases", "one", "--formats", "csv,json");

        var deliveries = Json(folder.File("job", "layout.json"))["takeoff"]!["deliveries"]!.AsArray();
        Assert.Equal(["first", "in no phase"], deliveries.Select(delivery => (string?)delivery!["phase"]), StringComparer.Ordinal);
        Assert.StartsWith("phase,item,description,", File.ReadAllText(folder.File("job", "order", "deliveries.csv")), StringComparison.Ordinal);
        Assert.False(File.Exists(folder.File("one", "order", "deliveries.csv")));
        Assert.Null(Json(folder.File("one", "layout.json"))["takeoff"]!["deliveries"]);
        var packs = Json(folder.File("one", "layout.json"))["takeoff"]!["lines"]!.AsArray().Where(line => (string?)line!["item"] == "pallet").Sum(line => (int)line!["packs"]!);
        Assert.Equal(packs, File.ReadLines(folder.File("one", "order", "staging.csv")).Count() - 1);
    }

    [Fact]
    public void A_phase_of_walls_that_are_not_there_is_answered_with_the_nearest_names()
    {
        using var folder = new TemporaryFolder();
        File.WriteAllText(folder.File("job.toml"), "[[phase]]\nname = \"first\"\nstoreys = [\"Grund floor\"]\n");
        var run = CommandRun.Of("layout", Fixtures.House("sorrel"), "--out", folder.File("out"), "--job", folder.File("job.toml"));

        Assert.Equal(ExitStatus.Usage, run.Status);
        Assert.Contains("\"Grund floor\" matches no wall's storey", run.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--sheet", "A9", "is no paper size")]
    [InlineData("--job", "missing.toml", "the file can't be read")]
    public void A_wrong_paper_or_job_file_is_a_wrong_command_line(string option, string value, string says)
    {
        var run = CommandRun.Of("layout", Fixtures.House("sorrel"), option, value);
        Assert.Equal(ExitStatus.Usage, run.Status);
        Assert.Contains(says, run.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("dxf")]
    [InlineData("SVG")]
    public void Either_sheet_format_writes_both(string format)
    {
        using var folder = new TemporaryFolder();
        CommandRun.Of("layout", Fixtures.House("teasel"), "--out", folder.Path, "--formats", format, "--dxf-per-sheet");
        var files = folder.Files();
        Assert.NotEmpty(files);
        Assert.Equal(files.Count(file => file.EndsWith(".dxf", StringComparison.Ordinal)), files.Count(file => file.EndsWith(".svg", StringComparison.Ordinal)));
        Assert.All(files, file => Assert.StartsWith("walls/", file, StringComparison.Ordinal));
    }

    [Fact]
    public void What_the_PDF_cannot_set_is_a_finding_where_a_PDF_is_written()
    {
        using var folder = new TemporaryFolder();
        var model = folder.File("house.ifc");
        File.WriteAllText(model, File.ReadAllText(Fixtures.House("sorrel")).Replace("'Ground south'", @"'S\X2\6F22\X0\'", StringComparison.Ordinal));
        CommandRun.Of("layout", model, "--out", folder.Path, "--formats", "json,csv,pdf");
        var finding = Assert.Single(Layout(folder)["findings"]!.AsArray(), finding => (string?)finding!["code"] == "glyph-missing");
        Assert.Contains("can't set \u6F22 (U+6F22), first on sheet C01", (string?)finding!["message"], StringComparison.Ordinal);
        Assert.Contains("glyph-missing", File.ReadAllText(folder.File("coordination", "findings.csv")), StringComparison.Ordinal);

        CommandRun.Of("layout", model, "--out", folder.Path, "--formats", "json");
        Assert.DoesNotContain(Layout(folder)["findings"]!.AsArray(), finding => (string?)finding!["code"] == "glyph-missing");
    }

    [Fact]
    public void A_model_that_was_written_by_a_run_keeps_its_name()
    {
        using var folder = new TemporaryFolder();
        var model = folder.File("house.coursed.ifc");
        File.Copy(Fixtures.House("teasel"), model);
        CommandRun.Of("layout", model, "--out", folder.File("out"), "--formats", "ifc");
        Assert.Equal(["house.coursed.ifc", "out/model/house.coursed.ifc"], folder.Files());
    }

    [Theory]
    [InlineData("EG Wset=3 m", "\"EG Wset\" matches no wall's", "Nearest: \"EG West\"")]
    [InlineData("EG West", "\"EG West\" names no wall and place", "North=12 ft")]
    [InlineData("EG West=far", "\"far\"", "Correct the value.")]
    public void A_joint_in_no_wall_or_at_no_place_is_refused(string given, string wrong, string remedy)
    {
        using var folder = new TemporaryFolder();
        var run = CommandRun.Of("layout", Fixtures.House("teasel"), "--out", folder.File("out"), "--movement-joint", given);

        Assert.Equal(ExitStatus.Usage, run.Status);
        Assert.StartsWith("error: --movement-joint: ", run.Error, StringComparison.Ordinal);
        Assert.Contains(wrong, run.Error, StringComparison.Ordinal);
        Assert.Contains(remedy, run.Error, StringComparison.Ordinal);
        Assert.Empty(folder.Files());
    }

    [Theory]
    [InlineData("--storey", "erdgeschosz", "Nearest: \"Erdgeschoß\"")]
    [InlineData("--only", "EG Wset", "Nearest: \"EG West\"")]
    [InlineData("--exclude", "*giebel nort*", "\"DG Giebel Nord\"")]
    public void A_filter_that_matches_no_wall_is_answered_with_the_nearest_names(string option, string pattern, string expected)
    {
        using var folder = new TemporaryFolder();
        var run = CommandRun.Of("layout", Fixtures.House("teasel"), "--out", folder.File("out"), option, pattern);

        Assert.Equal(ExitStatus.Usage, run.Status);
        Assert.StartsWith($"error: {option}: \"{pattern}\" matches no wall's", run.Error, StringComparison.Ordinal);
        Assert.Contains(expected, run.Error, StringComparison.Ordinal);
        Assert.Empty(folder.Files());
    }

    [Fact]
    public void Filters_that_leave_nothing_together_are_told_so()
    {
        var run = CommandRun.Of("check", Fixtures.House("teasel"), "--only", "EG West", "--exclude", "EG*");
        Assert.Equal(ExitStatus.Usage, run.Status);
        Assert.StartsWith("error: --only, --exclude, --storey: ", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_no_wall_is_masonry_the_summary_says_what_to_do_and_which_names_it_saw()
    {
        using var folder = new TemporaryFolder();
        File.WriteAllText(
            folder.File("timber.toml"), CommandRun.Of("catalog", "show", "aac-mm").Output + "\n[words]\nmasonry = [\"adobe\"]\nother = []\n");
        var run = CommandRun.Of("check", Fixtures.House("teasel"), "--catalog", folder.File("timber.toml"));

        var line = Assert.Single(run.Output.Split('\n'), line => line.StartsWith("no wall is laid out, mostly for no-masonry-layer", StringComparison.Ordinal));
        Assert.Contains("--walls all", line, StringComparison.Ordinal);
        Assert.Contains("Names seen: \"", line, StringComparison.Ordinal);
    }

    [Fact]
    public void Findings_are_counted_by_code_the_gravest_first_and_listed_with_their_walls()
    {
        var run = CommandRun.Of("check", Fixtures.House("teasel"), "--verbose");

        var counts = run.Output.Split('\n').SkipWhile(line => !line.StartsWith("findings:", StringComparison.Ordinal)).Skip(1).ToList();
        Assert.Contains(counts, line => line.StartsWith("  warning opening-moved: ", StringComparison.Ordinal));
        string[] grades = ["error", "warning", "note"];
        var order = counts.Where(line => line.StartsWith("  ", StringComparison.Ordinal)).Select(line => Array.IndexOf(grades, line.Trim().Split(' ')[0])).ToList();
        Assert.Equal(order.Order(), order);
        Assert.Matches(@"(?m)^EG Eingang [0-9A-Za-z_$]{22}: warning opening-moved: ", run.Error);
    }

    [Fact]
    public void Cautions_are_messages_not_results()
    {
        var run = CommandRun.Of("check", Fixtures.House("teasel"));
        Assert.Contains(Messages.Cautions, run.Error, StringComparison.Ordinal);
        Assert.DoesNotContain(Messages.Cautions, run.Output, StringComparison.Ordinal);
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

    [Fact]
    public void PartsAndMovedOpeningsAreFilesOfTheirOwn()
    {
        using var folder = new TemporaryFolder();
        var run = CommandRun.Of("layout", Fixtures.House("sorrel"), "--out", folder.Path, "--formats", "ifc", "--ifc-parts", "--apply-openings");
        Assert.Equal(ExitStatus.Done, run.Status);
        Assert.Equal(
            "sorrel.coursed.ifc sorrel.openings.csv sorrel.openings.ifc sorrel.parts.ifc",
            string.Join(' ', Directory.GetFiles(folder.File("model")).Select(Path.GetFileName).Order(StringComparer.Ordinal)));
        Assert.Contains("openings moved in the model: 1", run.Output, StringComparison.Ordinal);
        Assert.Equal(2, File.ReadAllLines(folder.File("model/sorrel.openings.csv")).Length);
    }

    [Fact]
    public void OpeningsThatAreKeptCantBeApplied()
    {
        var run = CommandRun.Of("layout", Fixtures.House("sorrel"), "--openings", "keep", "--apply-openings");
        Assert.Equal(ExitStatus.Usage, run.Status);
        Assert.Contains("--apply-openings", run.Error, StringComparison.Ordinal);
    }

    private static JsonNode Json(string path) => JsonNode.Parse(File.ReadAllText(path))!;

    private static Dictionary<string, string> Sheets(string folder) =>
        Directory.GetFiles(folder, "*.svg").ToDictionary(path => Path.GetFileName(path)!, File.ReadAllText, StringComparer.Ordinal);

    /// <summary>The numbers that a sheet's file name starts with: W001, W001_W002, or W003-W006 for a run of them.</summary>
    private static IEnumerable<int> WallsOf(string file) => Regex.Match(file, "^walls/((?:_?W[0-9]{3}(?:-W[0-9]{3})?)+)", RegexOptions.ExplicitCapture | RegexOptions.NonBacktracking).Value["walls/".Length..]
        .Split('_').SelectMany(part =>
        {
            var ends = part.Split('-').Select(end => int.Parse(end[1..], CultureInfo.InvariantCulture)).ToArray();
            return Enumerable.Range(ends[0], ends[^1] - ends[0] + 1);
        });
}
