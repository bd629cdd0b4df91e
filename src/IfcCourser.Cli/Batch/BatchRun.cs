using System.Collections.Concurrent;
using IfcCourser.Findings;

namespace IfcCourser.Cli.Batch;

/// <summary>A batch, or a share of it, from the manifest to its tables.</summary>
internal sealed class BatchRun(BatchSettings settings, Terminal terminal)
{
    private const int MostFailures = 5;

    private readonly ConcurrentDictionary<int, (LotResult Result, TimeSpan Time)> _made = new();

    public ExitStatus Run()
    {
        var lots = Manifest.Read(settings.Manifest);
        if (!lots.IsOk)
        {
            return terminal.End(lots.Fault, ExitStatus.Usage);
        }

        var planned = BatchPlan.Of(lots.Value, settings);
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

        var rows = works.SelectMany(work => work.Lots).OrderBy(lot => lot.Number).Select(lot => Row(lot, folder)).ToList();
        if (settings.Shard == Shard.Whole && Tables(rows, folder) is { } fault)
        {
            return terminal.End(fault, ExitStatus.Unwritable);
        }

        Print(rows, folder.Others(planned.Value.Lots.Select(lot => lot.Lot.Name)));
        return rows.Exists(row => !row.Result.IsDone) || (settings.Run.FailOn is { } least && rows.Exists(row => row.Result.Counts.AtLeast(least) > 0))
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
        var queue = Partitioner.Create(open, EnumerablePartitionerOptions.NoBuffering);
        Parallel.ForEach(queue, new ParallelOptions { MaxDegreeOfParallelism = Environment.ProcessorCount }, work =>
            new LotMaker(folder, (lot, result, time) =>
            {
                _made[lot.Number] = (result, time);
                progress.Done(lot.Lot.Name, result.Reason, sizes[work.Work.PlanKey]);
            }).Make(work.Work));
        terminal.EndProgress();
    }

    private static bool IsDone(PlannedLot lot, BatchFolder folder) => folder.Recorded(lot.Lot.Name) is { IsDone: true } result && result.Key == lot.Key;

    private LotRow Row(PlannedLot lot, BatchFolder folder) =>
        _made.TryGetValue(lot.Number, out var made) ? new LotRow(lot, made.Result, made.Time)
        : folder.Recorded(lot.Lot.Name) is { } result && result.Key == lot.Key ? new LotRow(lot, result, null)
        : new LotRow(lot, new LotResult(lot.Key, Messages.NotDone, LotCounts.None, []), null);

    private Fault? Tables(List<LotRow> rows, BatchFolder folder) =>
        folder.Write("batch.csv", BatchTables.Csv(rows, settings.Timings)) ?? folder.Write("totals.json", BatchTables.Totals(rows)) ?? folder.Write("order.csv", BatchTables.Order(rows));

    private void Print(List<LotRow> rows, List<string> others)
    {
        if (settings.Run.Json)
        {
            terminal.Data(BatchTables.Totals(rows).TrimEnd());
            return;
        }

        var sum = LotSum.Of(rows);
        terminal.Result(Messages.Lots(sum.Lots, sum.Failed, sum.Reused));
        terminal.Result(Messages.LotWalls(sum.Counts.Walls, sum.Counts.Coursed));
        terminal.Result(Messages.LotBlocks(sum.Counts.Pieces, sum.Counts.FullUnits, sum.Counts.PartUnits, sum.Counts.Cuts));
        terminal.Result(Messages.FindingCounts(sum.Counts.Errors, sum.Counts.Warnings, sum.Counts.Notes));
        var failed = rows.Where(row => !row.Result.IsDone).ToList();
        foreach (var row in failed.Take(MostFailures))
        {
            terminal.Result(Messages.LotFailed(row.Lot.Lot.Name, row.Result.Reason!));
        }

        if (failed.Count > MostFailures)
        {
            terminal.Result(Messages.MoreFailed(failed.Count - MostFailures));
        }

        terminal.Result(Messages.Written(settings.Out));
        terminal.Result(Messages.WrittenFile(settings.Shard == Shard.Whole ? "batch.csv, totals.json, order.csv, lots/" : "lots/"));
        if (others.Count > 0)
        {
            terminal.Result(Messages.NotOfBatch(others));
        }

        terminal.Note(Messages.Cautions);
    }
}
