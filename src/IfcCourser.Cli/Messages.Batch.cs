using System.Collections.Immutable;
using System.Globalization;
using IfcCourser.Findings;

namespace IfcCourser.Cli;

/// <content>What the subdivision says.</content>
internal static partial class Messages
{
    public const string AboutBatch = "Lay out many models or lots at once: repeats are laid out once, what is done is not done again, one failure is not the end.";

    public const string ArgumentManifest = "A CSV file with the columns lot, model and, where wanted, mirror, rotation, catalog, rules, job, phase; or a folder of models.";

    public const string OptionShard = "Only the K-th of N shares of the batch, for as many machines; balanced by the models' sizes.";

    public const string OptionCollect = "Lay out nothing: gather what shares have left in the folder into the files of the whole batch.";

    public const string OptionTimings = "Fill the seconds of batch.csv; else they stay empty, so that the same input gives the same bytes.";

    public const string OptionWatch = "Stay, and do again what changes: the manifest, models, catalogs, rules and job files. Ctrl+C ends it, at any moment.";

    public const string NotDone = "not laid out yet: run the batch, or the share that it belongs to, again";

    public static Fault ManifestNotRead(string path, Exception e) => new(
        path, null, null, $"the manifest can't be read: {e.Message.Split(" : '")[0].TrimEnd('.')}", "Name a CSV file or a folder of models.");

    public static Fault QuoteLeftOpen(string file, int line) => new(file, line, null, "a quote opens here and is never closed", "Close it, or double quotes within text.");

    public static Fault NoLots(string file) => new(file, null, null, "the manifest has no lots", "Write a row of column names and a row for each lot.");

    public static Fault NoModels(string folder) => new(folder, null, null, "no .ifc or .ifczip file is in this folder", "Name the folder that holds the models, or a manifest.");

    public static Fault UnknownColumn(string file, int line, string name, string? nearest, ImmutableArray<string> known) => new(
        file, line, null, $"\"{name}\" is no column of a manifest",
        $"{(nearest is null ? string.Empty : $"Did you mean {nearest}? ")}Columns are {string.Join(", ", known)}.");

    public static Fault ColumnTwice(string file, int line, string name) => new(file, line, null, $"the column {name} stands twice", "Leave one of them out.");

    public static Fault ColumnMissing(string file, int line, string name) => new(
        file, line, null, $"the column {name} is missing", "Begin the file with a row of column names, lot and model at least.");

    public static Fault CellsTooMany(string file, int line, int cells, int columns) => new(
        file, line, null, Invariant($"the row has {cells} cells, the head {columns}"), "Put text that holds commas in quotes.");

    public static Fault UnsafeLot(string file, int? line, string name) => new(
        file, line, null, name.Length == 0 ? "the lot has no name" : $"\"{name}\" can't be the name of a folder on every system",
        "Use letters, digits, spaces and - _ . + # only, at most 100, beginning with a letter or digit.");

    public static Fault LotTwice(string file, int line, string name, int first) => new(
        file, line, null, Invariant($"the lot \"{name}\" stands in line {first} already (case does not count)"), "Give each lot a name of its own.");

    public static Fault ModelsOfOneName(string file, string other) => new(
        file, null, null, $"this model and {other} would be one lot (case does not count)", "Rename one, or name the lots in a manifest.");

    public static Fault LotWithoutModel(string file, int line, string name) => new(file, line, null, $"the lot \"{name}\" names no model", "Write the path of its model, from the manifest's folder.");

    public static Fault BadMirror(string file, int line, string text) => new(file, line, null, $"mirror: \"{text}\" is not understood", "Write yes or no.");

    public static Fault BadRotation(string file, int line, string text) => new(
        file, line, null, $"rotation: \"{text}\" is no angle", "Write degrees, counter-clockwise, from -360 to 360, with a decimal point.");

    public static Fault ShardAndCollect() => new(
        "--shard, --collect", null, null, "the two can't be combined", "Run all shares, then collect them once.");

    public static Fault WatchAndCollect() => new(
        "--watch, --collect", null, null, "the two can't be combined", "Collect once all shares are done.");

    public static string Watching(string what) => $"watching {what}; Ctrl+C ends it";

    public static string Changed(string file, int others) => others == 0 ? $"changed: {file}" : Invariant($"changed: {file} and {others} more");

    public static Fault BadShard(string text) => new("--shard", null, null, $"\"{text}\" is no share", "Write K/N, such as 2/8: the second of eight.");

    public static Fault FolderInUse(string folder) => new(
        folder, null, null, "another run of this batch, or of this share of it, is writing here", "Wait for it to end, or choose another folder with --out.");

    public static string BatchBegins(int lots, int plans, int done) => Invariant(
        $"{lots} lots, {plans} to lay out{(done > 0 ? Invariant($", {done} done before") : string.Empty)}");

    public const string BatchTask = "lots";

    /// <param name="left">Null while nothing can be said of it.</param>
    public static string BatchProgress(int done, int lots, int failed, double perSecond, TimeSpan? left) => string.Create(
        CultureInfo.InvariantCulture,
        $"{done} of {lots} lots{(failed > 0 ? Invariant($", {failed} failed") : string.Empty)}, {perSecond:0.0} a second{(left is { } time ? $", {Minutes(time)} left" : string.Empty)}");

    public static string LotFailed(string lot, string reason) => $"lot {lot} failed: {reason}";

    public static string Lots(int lots, int failed, int reused) => Invariant($"lots: {lots}, done {lots - failed} ({reused} of them repeats), failed {failed}");

    public static string LotWalls(int walls, int coursed) => Invariant($"walls: {walls}, laid out {coursed}, not laid out {walls - coursed}");

    public static string LotBlocks(int pieces, int full, int cut, int cuts) => Invariant($"blocks: {pieces}, whole {full}, cut {cut}; saw cuts {cuts}");

    public static string MoreFailed(int count) => Invariant($"and {count} more lots failed; see batch.csv");

    public static string NotOfBatch(IReadOnlyList<string> lots) => Invariant(
        $"not of this batch, perhaps superseded: lots/{lots[0]}{(lots.Count > 1 ? Invariant($" and {lots.Count - 1} more") : string.Empty)}");

    private static string Minutes(TimeSpan time) => time.TotalHours >= 1
        ? Invariant($"{(int)time.TotalHours} h {time.Minutes} min")
        : Invariant($"{(int)time.TotalMinutes}:{time.Seconds:00}");
}
