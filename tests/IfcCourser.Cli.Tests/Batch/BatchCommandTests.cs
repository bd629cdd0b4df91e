using System.Text.Json.Nodes;
using IfcCourser.Cli.Tests.Support;

namespace IfcCourser.Cli.Tests.Batch;

/// <summary>Whole batches over small models.</summary>
public sealed class BatchCommandTests : IDisposable
{
    private const string Head = "lot,model,mirror,rotation,phase\n";

    private readonly TemporaryFolder _folder = new();

    public BatchCommandTests()
    {
        foreach (var name in (string[])["corner-butted", "tee-on-face", "cross"])
        {
            File.Copy(Path.Combine(Path.GetDirectoryName(Fixtures.House("sorrel"))!, "..", "junctions", $"{name}.ifc"), _folder.File($"{name}.ifc"));
        }

        File.Copy(Fixtures.Bad("cut-off.ifc"), _folder.File("broken.ifc"));
    }

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_lot_has_the_files_that_layout_writes_and_one_failure_is_a_row()
    {
        Manifest("1,corner-butted.ifc,,,A\n2,broken.ifc,,,A\n3,tee-on-face.ifc,,,B\n4,corner-butted.ifc,,,B\n5,missing.ifc,,,B\n");

        var run = Batch();

        Assert.Equal(ExitStatus.Findings, run.Status);
        foreach (var (lot, model) in ((string, string)[])[("1", "corner-butted"), ("3", "tee-on-face"), ("4", "corner-butted")])
        {
            Assert.Equal(ExitStatus.Done, CommandRun.Of("layout", _folder.File($"{model}.ifc"), "--out", _folder.File("alone", lot)).Status);
            Assert.Equal(Contents(Path.Combine("alone", lot)), Contents(Path.Combine("out", "lots", lot), except: "result.json"));
        }

        var rows = File.ReadAllLines(_folder.File("out", "batch.csv"));
        Assert.Equal("lot,model,status,reason,walls,coursed,pieces,full_units,part_units,findings,reused,seconds", rows[0]);
        Assert.StartsWith("2,broken.ifc,failed,broken.ifc:40 #32: the file is cut off", rows[2], StringComparison.Ordinal);
        Assert.StartsWith("5,missing.ifc,failed,missing.ifc: ", rows[5], StringComparison.Ordinal);
        Assert.Equal(["no", "no", "no", "yes", "no"], rows[1..].Select(row => row.Split(',')[^2]), StringComparer.Ordinal);
        Assert.Equal(["result.json"], Contents(Path.Combine("out", "lots", "2")).Keys, StringComparer.Ordinal);
    }

    [Fact]
    public void The_order_of_a_phase_adds_its_lots_and_rounds_pallets_once()
    {
        Manifest("1,corner-butted.ifc,,,A\n2,corner-butted.ifc,yes,,A\n3,corner-butted.ifc,,,A\n4,corner-butted.ifc,,,B\n5,broken.ifc,,,B\n");
        Batch("--formats", "json");
        var lines = JsonNode.Parse(File.ReadAllText(_folder.File("out", "lots", "1", "layout.json")))!["takeoff"]!["lines"]!.AsArray();
        var units = lines.Where(line => (string?)line!["item"] is "full-unit" or "cut-unit" or "unit-waste").Sum(line => (double)line!["gross"]!);
        var content = (double)Assert.Single(lines, line => (string?)line!["item"] == "pallet")!["packContent"]!;

        var rows = File.ReadAllLines(_folder.File("out", "order.csv"));
        Assert.Equal("phase,catalog,item,description,width,width_unit,unit,net,waste,gross,packs", rows[0]);
        int Pallets(string phase) => int.Parse(Assert.Single(rows, row => row.StartsWith($"{phase},aac-mm,pallet,", StringComparison.Ordinal)).Split(',')[^1], System.Globalization.CultureInfo.InvariantCulture);
        Assert.Equal((int)Math.Ceiling(units * 3 / content), Pallets("A"));
        Assert.Equal((int)Math.Ceiling(units / content), Pallets("B"));
        Assert.NotEqual(3 * Pallets("B"), Pallets("A"));
    }

    /// <summary>Two lots whose job file delivers wall by wall, one of them in a phase of the manifest, and one that comes whole in a phase of a delivery's name.</summary>
    [Fact]
    public void Deliveries_of_job_files_are_ordered_together_by_their_name()
    {
        CommandRun.Of("layout", _folder.File("corner-butted.ifc"), "--formats", "json", "--out", _folder.File("alone"));
        var wall = (string)JsonNode.Parse(File.ReadAllText(_folder.File("alone", "layout.json")))!["walls"]![0]!["globalId"]!;
        File.WriteAllText(_folder.File("two.toml"), $"[[phase]]\nname = \"first\"\nwalls = [\"{wall}\"]\n[[phase]]\nname = \"second\"\nwalls = [\"*\"]\n");
        File.WriteAllText(_folder.File("lots.csv"), "lot,model,job,phase\n1,corner-butted.ifc,two.toml,\n2,corner-butted.ifc,two.toml,\n3,corner-butted.ifc,two.toml,A\n4,corner-butted.ifc,,first\n");
        Batch("--formats", "json");

        var deliveries = JsonNode.Parse(File.ReadAllText(_folder.File("out", "lots", "1", "layout.json")))!["takeoff"]!["deliveries"]!.AsArray();
        double Units(JsonNode lines) => lines.AsArray().Where(line => (string?)line!["item"] is "full-unit" or "cut-unit").Sum(line => (double)line!["net"]!);
        var (first, second) = (Units(deliveries[0]!["lines"]!), Units(deliveries[1]!["lines"]!));
        var whole = Units(JsonNode.Parse(File.ReadAllText(_folder.File("out", "lots", "4", "layout.json")))!["takeoff"]!["lines"]!);
        // Between quotes stands text with commas of its own.
        var rows = File.ReadAllLines(_folder.File("out", "order.csv")).Skip(1)
            .Select(row => string.Concat(row.Split('"').Select((part, i) => i % 2 == 1 ? part.Replace(",", string.Empty, StringComparison.Ordinal) : part)).Split(',')).ToList();
        Assert.Equal(["first", "second", "A first", "A second"], rows.Select(row => row[0]).Distinct(StringComparer.Ordinal), StringComparer.Ordinal);
        double Ordered(string phase) => rows.Where(row => row[0] == phase && row[2] is "full-unit" or "cut-unit")
            .Sum(row => double.Parse(row[^4], System.Globalization.CultureInfo.InvariantCulture));
        Assert.True(first > 0 && second > 0);
        Assert.Equal(((2 * first) + whole, 2 * second, first, second), (Ordered("first"), Ordered("second"), Ordered("A first"), Ordered("A second")));
        Assert.All(rows.Where(row => row[2] == "pallet"), row => Assert.Equal("mm", row[5]));
    }

    /// <summary>The bar is drawn in place and wiped out; failures stay.</summary>
    [Fact]
    public void Who_watches_a_terminal_sees_a_bar_and_others_lines()
    {
        Manifest("1,corner-butted.ifc,,,\n2,broken.ifc,,,\n3,tee-on-face.ifc,,,\n");
        var watched = CommandRun.Of(errorIsTerminal: true, "batch", _folder.File("lots.csv"), "--out", _folder.File("watched"), "--formats", "json").Error;
        var plain = CommandRun.Of(errorIsTerminal: true, "batch", _folder.File("lots.csv"), "--out", _folder.File("plain"), "--formats", "json", "--no-colour").Error;
        var piped = Batch("--formats", "json").Error;

        Assert.Matches("\\d%.*3 of 3 lots", watched);
        Assert.Contains("\u001b[2K", watched, StringComparison.Ordinal);
        Assert.Contains("lot 2 failed: ", watched, StringComparison.Ordinal);
        Assert.Matches("\u001b\\[[0-9;]+m", watched);
        Assert.DoesNotMatch("\u001b\\[[0-9;]+m", plain);
        Assert.Contains("3 of 3 lots, 1 failed", piped, StringComparison.Ordinal);
        Assert.DoesNotContain('\u001b', piped);
    }

    [Fact]
    public void Totals_are_the_sums_of_the_lots()
    {
        Manifest("1,corner-butted.ifc,,,A\n2,broken.ifc,,,A\n3,tee-on-face.ifc,,,B\n4,corner-butted.ifc,yes,,B\n");
        Batch("--formats", "json");
        var totals = JsonNode.Parse(File.ReadAllText(_folder.File("out", "totals.json")))!;
        var lots = ((string[])["1", "3", "4"]).ToDictionary(
            lot => lot, lot => JsonNode.Parse(File.ReadAllText(_folder.File("out", "lots", lot, "layout.json")))!["totals"]!, StringComparer.Ordinal);

        foreach (var name in (string[])["walls", "coursed", "pieces", "fullUnits", "partUnits", "cuts"])
        {
            int Of(string lot) => (int)lots[lot][name]!;
            Assert.Equal(Of("1") + Of("3") + Of("4"), (int)totals[name]!);
            Assert.Equal([Of("1"), Of("3") + Of("4")], totals["phases"]!.AsArray().Select(phase => (int)phase![name]!));
            Assert.Equal([Of("1"), 0, Of("3"), Of("4")], totals["plans"]!.AsArray().Select(plan => (int)plan![name]!));
        }

        Assert.Equal((4, 1), ((int)totals["lots"]!, (int)totals["failed"]!));
        Assert.Equal("2", (string?)totals["failures"]!.AsArray().Single()!["lot"]);
    }

    [Fact]
    public void A_second_run_does_what_is_missing_or_changed_and_no_more()
    {
        Manifest("1,corner-butted.ifc,,,\n2,tee-on-face.ifc,,,\n3,cross.ifc,,,\n4,cross.ifc,,,\n");
        Batch();
        var whole = Contents("out");
        var times = Times();

        Assert.Contains("4 lots, 0 to lay out, 4 done before", Batch().Error, StringComparison.Ordinal);
        Assert.Equal(times, Times());

        // As a run leaves it that was killed while it wrote lots 1 and 4.
        File.Delete(_folder.File("out", "lots", "1", "result.json"));
        Directory.Delete(_folder.File("out", "lots", "4"), recursive: true);
        Directory.CreateDirectory(_folder.File("out", ".ifccourser-batch", "1-of-1", "4"));
        File.WriteAllText(_folder.File("out", ".ifccourser-batch", "1-of-1", "4", "layout.json"), "{");
        File.Delete(_folder.File("out", "batch.csv"));
        Assert.Contains("4 lots, 2 to lay out, 2 done before", Batch().Error, StringComparison.Ordinal);
        Assert.Equal(whole, Contents("out"));
        Assert.Equal((times["2"], times["3"]), (Times()["2"], Times()["3"]));

        File.Copy(_folder.File("tee-on-face.ifc"), _folder.File("cross.ifc"), overwrite: true);
        Assert.Contains("4 lots, 1 to lay out, 2 done before", Batch().Error, StringComparison.Ordinal);
        Assert.NotEqual(whole, Contents("out"));
        Assert.Contains("4 lots, 3 to lay out", Batch("--openings", "keep").Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Shares_collected_are_one_run()
    {
        Manifest("1,corner-butted.ifc,,,A\n2,tee-on-face.ifc,,,A\n3,cross.ifc,,,A\n4,corner-butted.ifc,,,B\n5,broken.ifc,,,B\n6,cross.ifc,yes,,B\n");
        Batch();

        foreach (var share in (string[])["3/3", "1/3", "2/3"])
        {
            Run("shares", "--shard", share);
        }

        Assert.False(File.Exists(_folder.File("shares", "batch.csv")));
        Run("shares", "--collect");
        Assert.Equal(Contents("out"), Contents("shares"));
    }

    [Fact]
    public void Collecting_names_the_lots_that_no_share_has_done()
    {
        Manifest("1,corner-butted.ifc,,,\n2,tee-on-face.ifc,,,\n");
        Batch("--formats", "json", "--shard", "1/2");

        var run = Batch("--formats", "json", "--collect");

        Assert.Equal(ExitStatus.Findings, run.Status);
        Assert.Single(File.ReadAllLines(_folder.File("out", "batch.csv")), row => row.Contains("failed,\"not laid out yet: ", StringComparison.Ordinal));
    }

    [Fact]
    public void A_mirrored_lot_has_no_model_and_says_so()
    {
        Manifest("1,cross.ifc,,,\n2,cross.ifc,yes,90,\n3,cross.ifc,1,-270,\n");

        Assert.Equal(ExitStatus.Done, Batch().Status);

        var layout = JsonNode.Parse(File.ReadAllText(_folder.File("out", "lots", "2", "layout.json")))!;
        Assert.Equal("{\"mirrored\":true,\"rotation\":90}", layout["model"]!["siting"]!.ToJsonString());
        Assert.Contains(layout["findings"]!.AsArray(), finding => (string?)finding!["code"] == "plan-sited");
        Assert.False(Directory.Exists(_folder.File("out", "lots", "2", "model")));
        Assert.True(Directory.Exists(_folder.File("out", "lots", "1", "model")));
        Assert.Equal(Contents("out/lots/2"), Contents("out/lots/3"));
        Assert.EndsWith(",yes,", File.ReadAllLines(_folder.File("out", "batch.csv"))[3], StringComparison.Ordinal);
    }

    [Fact]
    public void A_lot_is_laid_out_by_its_job_file_and_again_when_that_changes()
    {
        File.WriteAllText(_folder.File("keep.toml"), "openings = \"keep\"\nproject = \"Larkmoor Rise\"\n");
        File.WriteAllText(_folder.File("lots.csv"), "lot,model,job\n1,cross.ifc,keep.toml\n2,cross.ifc,\n");
        Batch("--formats", "json");

        Assert.Equal("Larkmoor Rise", (string?)JsonNode.Parse(File.ReadAllText(_folder.File("out", "lots", "1", "layout.json")))!["job"]!["project"]);
        Assert.Null(JsonNode.Parse(File.ReadAllText(_folder.File("out", "lots", "2", "layout.json")))!["job"]);
        CommandRun.Of("layout", _folder.File("cross.ifc"), "--job", _folder.File("keep.toml"), "--formats", "json", "--out", _folder.File("alone"));
        Assert.Equal(Contents("alone")["layout.json"], Contents("out/lots/1")["layout.json"]);

        File.AppendAllText(_folder.File("keep.toml"), "client = \"Nobody\"\n");
        Assert.Contains("2 lots, 1 to lay out, 1 done before", Batch("--formats", "json").Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_catalog_that_a_job_file_names_is_part_of_what_decides()
    {
        File.WriteAllText(_folder.File("own.toml"), File.ReadAllText(Fixtures.InRepository("src/IfcCourser/Catalogs/Data/aac-mm.toml")));
        File.WriteAllText(_folder.File("job.toml"), "catalog = \"own.toml\"\n");
        Manifest("1,cross.ifc,,,\n");
        Batch("--formats", "json", "--job", _folder.File("job.toml"));

        Assert.Contains("0 to lay out", Batch("--formats", "json", "--job", _folder.File("job.toml")).Error, StringComparison.Ordinal);
        File.AppendAllText(_folder.File("own.toml"), "# a remark\n");
        Assert.Contains("1 to lay out", Batch("--formats", "json", "--job", _folder.File("job.toml")).Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_job_file_that_can_not_be_read_is_told_before_anything_is_laid_out()
    {
        File.WriteAllText(_folder.File("lots.csv"), "lot,model,job\n1,cross.ifc,none.toml\n");

        var run = Batch();

        Assert.Equal(ExitStatus.Usage, run.Status);
        Assert.Contains("none.toml", run.Error, StringComparison.Ordinal);
        Assert.Contains("(lot 1)", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Files_that_lots_share_can_only_be_read()
    {
        Manifest("1,cross.ifc,,,\n2,cross.ifc,,,\n3,tee-on-face.ifc,,,\n");
        Batch("--formats", "json");

        bool IsReadOnly(string lot) => File.GetAttributes(_folder.File("out", "lots", lot, "layout.json")).HasFlag(FileAttributes.ReadOnly);
        Assert.Equal([true, true, false], ((string[])["1", "2", "3"]).Select(IsReadOnly));
        File.WriteAllText(_folder.File("tee-on-face.ifc"), File.ReadAllText(_folder.File("cross.ifc")));
        File.WriteAllText(_folder.File("cross.ifc"), File.ReadAllText(_folder.File("corner-butted.ifc")));
        Assert.Contains("3 lots, 2 to lay out", Batch("--formats", "json").Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Watching_does_again_what_changes()
    {
        Directory.CreateDirectory(_folder.File("models"));
        File.Copy(_folder.File("cross.ifc"), _folder.File("models", "a.ifc"));
        File.Copy(_folder.File("tee-on-face.ifc"), _folder.File("models", "b.ifc"));
        using var stop = new CancellationTokenSource();
        var watch = new Thread(() => CommandLine.Run(["batch", _folder.File("models"), "--watch", "--formats", "json", "--out", _folder.File("out")], new Terminal(TextWriter.Null, TextWriter.Null, ErrorIsTerminal: false) { Stop = stop.Token }))
        {
            IsBackground = true, // where this test fails, the others still come to an end
        };
        watch.Start();

        Until(() => Row("a") is { } row && row.Contains(",done,", StringComparison.Ordinal));
        var (first, other) = (File.ReadAllText(_folder.File("out", "lots", "a", "result.json")), Times()["b"]);
        File.Copy(_folder.File("corner-butted.ifc"), _folder.File("models", "a.ifc"), overwrite: true);
        File.SetLastWriteTimeUtc(_folder.File("models", "a.ifc"), DateTime.UnixEpoch);
        Until(() => Read("out", "lots", "a", "result.json") is { } now && now != first);
        stop.Cancel();
        watch.Join();

        Assert.Equal(other, Times()["b"]);

        string? Row(string lot) => Read("out", "batch.csv") is { } table ? Array.Find(table.Split('\n'), row => row.StartsWith(lot, StringComparison.Ordinal)) : null;

        // A lot's folder is replaced whole: between two looks it can be away.
        string? Read(params string[] names)
        {
            try
            {
                return File.ReadAllText(_folder.File(names));
            }
            catch (IOException)
            {
                return null;
            }
        }
    }

    /// <summary>Minutes, for all other tests may run beside this one.</summary>
    private static void Until(Func<bool> holds) => Assert.True(SpinWait.SpinUntil(holds, TimeSpan.FromMinutes(5)), "what was waited for has not come within five minutes");

    [Fact]
    public void A_catalog_that_no_one_knows_is_told_before_anything_is_laid_out()
    {
        File.WriteAllText(_folder.File("lots.csv"), "lot,model,catalog\n1,cross.ifc,\n2,cross.ifc,acc-mm\n");

        var run = Batch();

        Assert.Equal(ExitStatus.Usage, run.Status);
        Assert.Contains("acc-mm: this is neither a built-in catalog nor a .toml file (lot 2). Did you mean \"aac-mm\"?", run.Error, StringComparison.Ordinal);
        Assert.False(Directory.Exists(_folder.File("out")));
    }

    [Fact]
    public void Two_runs_of_one_share_do_not_write_at_once()
    {
        Manifest("1,cross.ifc,,,\n");
        using var held = IfcCourser.Cli.Batch.BatchFolder.Open(_folder.File("out"), IfcCourser.Cli.Batch.Shard.Whole).Value!;

        var run = Batch();

        Assert.Equal(ExitStatus.Unwritable, run.Status);
        Assert.Contains("is writing here", run.Error, StringComparison.Ordinal);
    }

    private void Manifest(string rows) => File.WriteAllText(_folder.File("lots.csv"), Head + rows);

    private CommandRun Batch(params string[] options) => Run("out", options);

    private CommandRun Run(string folder, params string[] options) => CommandRun.Of(["batch", _folder.File("lots.csv"), "--out", _folder.File(folder), .. options]);

    private Dictionary<string, string> Contents(string folder, string? except = null) =>
        _folder.Files().Where(file => file.StartsWith(folder.Replace('\\', '/') + "/", StringComparison.Ordinal) && Path.GetFileName(file) != except)
            .ToDictionary(file => file[(folder.Length + 1)..], file => Convert.ToHexString(File.ReadAllBytes(_folder.File(file))), StringComparer.Ordinal);

    /// <summary>When each lot's folder was last changed: a folder that is replaced is a new one.</summary>
    private Dictionary<string, DateTime> Times() => Directory.EnumerateDirectories(_folder.File("out", "lots"))
        .ToDictionary(lot => Path.GetFileName(lot)!, Directory.GetLastWriteTimeUtc, StringComparer.Ordinal);
}
