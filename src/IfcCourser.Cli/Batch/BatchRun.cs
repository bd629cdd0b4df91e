using System.Collections.Concurrent;
using System.Text;
using IfcCourser.Cli.Commands;
using IfcCourser.Findings;
using IfcCourser.Output.Batches;
using IfcCourser.Output.Ordering;
using IfcCourser.Units;

namespace IfcCourser.Cli.Batch;

/// <summary>A batch, or a share of it, from the manifest to its tables.</summary>
internal sealed class BatchRun(BatchSettings settings, Terminal terminal)
{
    private const int MostFailures = 5;

    private readonly Dictionary<string, LotResult> _results = new(StringComparer.Ordinal);

    private readonly ConcurrentDictionary<int, (LotResult Result, TimeSpan Time)> _made = new();

    public ExitStatus Run()
    {
        var read = Manifest.Read(settings.Manifest);
        if (!read.IsOk)
        {
            return terminal.End(read.Fault, ExitStatus.Usage);
        }

        var planned = BatchPlan.Of(read.Value, settings);
        if (!planned.IsOk)
        {
            return terminal.End(planned.Fault, ExitStatus.Usage);
        }

        var opened = BatchFolder.Open(settings.Out, settings.Shard);
        if (!opened.IsOk)
        {
            return terminal.End(opened.Fault, ExitStatus.Unwritable);
        }

        using var folder = opened.Value;
        var works = settings.Shard.Of(planned.Value.Works);
        if (!settings.Collect)
        {
            Make(works, folder);
        }

        var lots = works.SelectMany(work => work.Lots).OrderBy(lot => lot.Number).Select(lot => (Lot: lot, Result: Result(lot, folder))).ToList();
        var batch = Summary(lots, folder);
        if (settings.Shard == Shard.Whole && Tables(batch, folder) is { } fault)
        {
            return terminal.End(fault, ExitStatus.Unwritable);
        }

        Print(batch, folder.Others(planned.Value.Lots.Select(lot => lot.Lot.Name)));
        return lots.Exists(lot => !lot.Result.IsDone || (lot.Lot.Settings.FailOn is { } least && lot.Result.Counts.AtLeast(least) > 0))
            ? ExitStatus.Findings
            : ExitStatus.Done;
    }

    /// <summary>As many plans at once as there are cores, so that memory does not grow with the batch.</summary>
    private void Make(List<LotWork> works, BatchFolder folder)
    {
        var open = works.Select(work => (Work: work, Lots: work.Lots.Count(lot => !IsDone(lot, folder)))).Where(work => work.Lots > 0).ToList();
        var (all, left) = (works.Sum(work => work.Lots.Length), open.Sum(work => work.Lots));
        terminal.Note(Messages.BatchBegins(all, open.Count, all - left));
        if (left == 0)
        {
            return;
        }

        var sizes = open.ToDictionary(work => work.Work.PlanKey, work => work.Work.Size / work.Work.Lots.Length, StringComparer.Ordinal);
        var progress = new BatchProgress(terminal, left, open.Sum(work => work.Work.Size));
        if (progress.IsLive)
        {
            LiveProgress.Around(terminal, progress, () => Make(open.ConvertAll(work => work.Work), sizes, progress, folder));
        }
        else
        {
            Make(open.ConvertAll(work => work.Work), sizes, progress, folder);
        }
    }

    private void Make(List<LotWork> open, Dictionary<string, long> sizes, BatchProgress progress, BatchFolder folder)
    {
        var queue = Partitioner.Create(open, EnumerablePartitionerOptions.NoBuffering);
        Parallel.ForEach(queue, new ParallelOptions { MaxDegreeOfParallelism = Environment.ProcessorCount }, work =>
            new LotMaker(folder, (lot, result, time) =>
            {
                _made[lot.Number] = (result, time);
                progress.Done(lot.Lot.Name, result.Reason, sizes[work.PlanKey]);
            }).Make(work));
    }

    private static bool IsDone(PlannedLot lot, BatchFolder folder) => folder.Recorded(lot.Lot.Name) is { IsDone: true } result && result.Key == lot.Key;

    /// <summary>What became of a lot in this run or before; equal lots have one result between them, so that memory does not grow with repeats.</summary>
    private LotResult Result(PlannedLot lot, BatchFolder folder)
    {
        var result = _made.TryGetValue(lot.Number, out var made) ? made.Result
            : folder.Recorded(lot.Lot.Name) is { } recorded && recorded.Key == lot.Key ? recorded
            : LotResult.Failed(lot.Key, Messages.NotDone);
        return !result.IsDone ? result
            : _results.TryGetValue(lot.Key, out var known) ? known
            : _results[lot.Key] = result;
    }

    private BatchSummary Summary(List<(PlannedLot Lot, LotResult Result)> lots, BatchFolder folder) => new(
        Path.GetFileNameWithoutExtension(Path.TrimEndingDirectorySeparator(settings.Manifest)),
        lots.Select(lot => lot.Result.Date).Max(StringComparer.Ordinal) ?? string.Empty,
        lots.Select(lot => lot.Result).FirstOrDefault(result => result.IsDone)?.Units ?? UnitSystem.Metric,
        [
            .. lots.Select(lot => new LotSummary(
                lot.Lot.Lot.Name, lot.Lot.Lot.Plan, lot.Lot.Lot.Siting, lot.Lot.Lot.Phase, lot.Result.Reason, lot.Lot.IsRepeat && lot.Result.IsDone,
                lot.Result.IsDone && folder.Has(lot.Lot.Lot.Name, PageFiles.ReportName),
                _made.TryGetValue(lot.Lot.Number, out var made) ? made.Time : null, lot.Result.Counts, lot.Result.Findings, lot.Result.Order)),
        ]);

    private Fault? Tables(BatchSummary batch, BatchFolder folder)
    {
        (string Name, Action<Stream> Write)[] files =
        [
            ("batch.csv", stream => Text(stream, BatchCsv.Of(batch, settings.Timings))), ("totals.json", stream => Text(stream, BatchTotals.Of(batch))),
            ("order.csv", stream => Text(stream, CombinedOrderCsv.Of(batch.Orders))), ("batch.html", stream => BatchPage.Write(batch, stream)), ("batch.xlsx", stream => BatchWorkbook.Write(batch, stream)),
        ];
        return files.Select(file => folder.Write(file.Name, file.Write)).FirstOrDefault(fault => fault is not null);

        static void Text(Stream stream, string text) => stream.Write(Encoding.UTF8.GetBytes(text));
    }

    private void Print(BatchSummary batch, List<string> others)
    {
        if (settings.Run.Json)
        {
            terminal.Data(BatchTotals.Of(batch).TrimEnd());
            return;
        }

        var sum = batch.All;
        terminal.Result(Messages.Lots(sum.Lots, sum.Failed, sum.Reused));
        terminal.Result(Messages.LotWalls(sum.Counts.Walls, sum.Counts.Coursed));
        terminal.Result(Messages.LotBlocks(sum.Counts.Pieces, sum.Counts.FullUnits, sum.Counts.PartUnits, sum.Counts.Cuts));
        terminal.Result(Messages.FindingCounts(sum.Counts.Errors, sum.Counts.Warnings, sum.Counts.Notes));
        var failed = batch.Failures.ToList();
        foreach (var lot in failed.Take(MostFailures))
        {
            terminal.Result(Messages.LotFailed(lot.Name, lot.Reason!));
        }

        if (failed.Count > MostFailures)
        {
            terminal.Result(Messages.MoreFailed(failed.Count - MostFailures));
        }

        terminal.Result(Messages.Written(settings.Out));
        terminal.Result(Messages.WrittenFile(settings.Shard == Shard.Whole ? "batch.html, batch.xlsx, batch.csv, totals.json, order.csv, lots/" : "lots/"));
        if (others.Count > 0)
        {
            terminal.Result(Messages.NotOfBatch(others));
        }

        terminal.Note(Messages.Cautions);
    }
}
