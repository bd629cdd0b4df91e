using System.Collections.Immutable;
using System.Diagnostics;
using IfcCourser.Cli.Commands;
using IfcCourser.Findings;
using IfcCourser.Layouts;
using IfcCourser.Siting;

namespace IfcCourser.Cli.Batch;

/// <summary>Lays out the lots of one plan: the model is read once, each way it stands is written once, other lots share the files.</summary>
/// <param name="folder">Of the batch.</param>
/// <param name="done">Told of each lot as it is done or has failed, with the time it took.</param>
internal sealed class LotMaker(BatchFolder folder, Action<PlannedLot, LotResult, TimeSpan> done)
{
    /// <summary>Formats that speak of places in the model itself.</summary>
    private static readonly string[] _ofModel = ["ifc", "bcf"];

    // What a lot's files say is not said again.
    private static readonly Terminal _silent = new(TextWriter.Null, TextWriter.Null, ErrorIsTerminal: false) { Quiet = true };

    public void Make(LotWork work)
    {
        var sitings = work.Lots.GroupBy(lot => lot.Key, StringComparer.Ordinal).Select(same => same.ToImmutableArray()).ToList();
        var left = sitings.Where(same => !RepeatDone(same)).ToList();
        if (left.Count == 0)
        {
            return;
        }

        var began = Stopwatch.GetTimestamp();
        try
        {
            var opened = OpenedModel.Open(left[0][0].Settings);
            using var model = opened.Value;
            if ((opened.Fault ?? WallFilters.Fault(model!.Model.Walls, model.Settings)) is { } fault)
            {
                left.ForEach(same => Fail(same, fault, Stopwatch.GetElapsedTime(began)));
                return;
            }

            var layout = model!.LayOut();
            foreach (var same in left)
            {
                Write(same, layout, model, began);
                began = Stopwatch.GetTimestamp();
            }
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            left.ForEach(same => Fail(same, _ => Messages.Defect(e), Stopwatch.GetElapsedTime(began)));
        }
    }

    /// <summary>Whether one of lots with equal files is done; the others then get its files.</summary>
    private bool RepeatDone(ImmutableArray<PlannedLot> same)
    {
        var records = same.Select(lot => (Lot: lot, Result: folder.Recorded(lot.Lot.Name))).Where(lot => lot.Result is { IsDone: true } result && result.Key == lot.Lot.Key).ToList();
        if (records is not [var first, ..])
        {
            return false;
        }

        Repeat(first.Lot, first.Result!, same.Except(records.Select(record => record.Lot)));
        return true;
    }

    private void Write(ImmutableArray<PlannedLot> same, Layout layout, OpenedModel model, long began)
    {
        var first = same[0];
        try
        {
            var written = Write(first, SitedLayout.Of(layout, first.Lot.Siting), model);
            if (written.IsOk)
            {
                done(first, written.Value, Stopwatch.GetElapsedTime(began));
                Repeat(first, written.Value, same.Skip(1));
            }
            else
            {
                Fail(same, written.Fault, Stopwatch.GetElapsedTime(began));
            }
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            Fail(same, _ => Messages.Defect(e), Stopwatch.GetElapsedTime(began));
        }
    }

    private Outcome<LotResult> Write(PlannedLot lot, Layout layout, OpenedModel model)
    {
        var staged = OutputFolder.Open(folder.Stage(lot.Lot.Name), lot.Lot.Model);
        if (!staged.IsOk)
        {
            return staged.Fault;
        }

        Layout printed;
        using (var output = staged.Value)
        {
            // A model can't be mirrored in place, and one that stands otherwise than its lot would mislead.
            var settings = layout.Model.Siting == LotSiting.AsDrawn ? model.Settings : model.Settings with { Formats = model.Settings.Formats.Except(_ofModel) };
            var added = LayoutFiles.Add(output, layout, model, settings, _silent);
            if ((added.Fault ?? output.Commit()) is { } fault)
            {
                return fault;
            }

            printed = added.Value!;
        }

        var result = LotResult.Of(lot.Key, printed);
        return folder.Commit(lot.Lot.Name, result) is { } failed ? failed : result;
    }

    private void Repeat(PlannedLot made, LotResult result, IEnumerable<PlannedLot> others)
    {
        foreach (var lot in others)
        {
            var began = Stopwatch.GetTimestamp();
            var fault = folder.Repeat(made.Lot.Name, lot.Lot.Name, result);
            if (fault is null)
            {
                done(lot, result, Stopwatch.GetElapsedTime(began));
            }
            else
            {
                Fail([lot], fault, Stopwatch.GetElapsedTime(began));
            }
        }
    }

    /// <summary>The model is named as the manifest names it, wherever that lies.</summary>
    private void Fail(ImmutableArray<PlannedLot> lots, Fault fault, TimeSpan time) =>
        Fail(lots, lot => (fault.File == lot.Model ? fault with { File = lot.Plan } : fault).ToString(), time);

    /// <summary>A lot that failed keeps no files of earlier runs, which others would take for its own.</summary>
    private void Fail(ImmutableArray<PlannedLot> lots, Func<Lot, string> reason, TimeSpan time)
    {
        foreach (var lot in lots)
        {
            var result = LotResult.Failed(lot.Key, reason(lot.Lot));
            try
            {
                folder.Stage(lot.Lot.Name);
                folder.Commit(lot.Lot.Name, result);
            }
            catch (Exception e) when (OutputFolder.IsExpected(e))
            {
                // The row says that it failed; the next run finds nothing of it and tries again.
            }

            done(lot, result, time);
        }
    }
}
