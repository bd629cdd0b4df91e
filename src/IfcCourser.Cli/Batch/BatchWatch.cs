using IfcCourser.Findings;

namespace IfcCourser.Cli.Batch;

/// <summary>
/// Runs a batch, and again whenever a file that it reads changes. Files are looked at in turn, for shares of other machines tell nobody
/// of changes. It ends when it is killed, which a batch bears at any moment.
/// </summary>
/// <param name="settings">Reads them anew, with the files they name.</param>
internal sealed class BatchWatch(Func<Outcome<BatchSettings>> settings, Terminal terminal)
{
    private static readonly TimeSpan _interval = TimeSpan.FromSeconds(1);

    public ExitStatus Run(CancellationToken stop)
    {
        var status = ExitStatus.Done;
        var watched = new SortedDictionary<string, (long Length, DateTime Written)>(StringComparer.Ordinal);
        while (!stop.IsCancellationRequested)
        {
            // Taken before the run: what changes while it runs is seen after it.
            var read = settings();
            watched = read.IsOk ? Stamps(read.Value) : watched;
            status = read.IsOk ? new BatchRun(read.Value, terminal).Run() : terminal.End(read.Fault, ExitStatus.Usage);
            terminal.Note(Messages.Watching(read.Value?.Manifest ?? string.Empty));
            Wait(read.Value, watched, stop);
        }

        return status;
    }

    /// <summary>Until something has changed, and then nothing for an interval: a model is not written at once.</summary>
    private void Wait(BatchSettings? batch, SortedDictionary<string, (long Length, DateTime Written)> seen, CancellationToken stop)
    {
        var last = seen;
        while (!stop.WaitHandle.WaitOne(_interval))
        {
            var now = batch is null ? Stamps(last.Keys) : Stamps(batch);
            if (!now.SequenceEqual(seen) && now.SequenceEqual(last))
            {
                var changed = now.Except(seen).Concat(seen.Except(now)).Select(file => file.Key).Distinct(StringComparer.Ordinal).ToList();
                terminal.Note(Messages.Changed(changed[0], changed.Count - 1));
                return;
            }

            last = now;
        }
    }

    private static SortedDictionary<string, (long Length, DateTime Written)> Stamps(BatchSettings batch)
    {
        var lots = Manifest.Read(batch.Manifest).Value ?? [];
        var jobs = lots.Select(lot => lot.Job).Concat(batch.Files).OfType<string>();
        return Stamps(lots.SelectMany(lot => new[] { lot.Model, lot.Catalog, lot.Rules })
            .Concat(jobs.SelectMany(LotKey.JobFiles)).Concat(jobs).Append(batch.Manifest).OfType<string>());
    }

    /// <summary>Of files only: a name of a built-in set is none, and a folder counts by what lies in it.</summary>
    private static SortedDictionary<string, (long Length, DateTime Written)> Stamps(IEnumerable<string> paths)
    {
        var stamps = new SortedDictionary<string, (long, DateTime)>(StringComparer.Ordinal);
        foreach (var file in paths.Distinct(StringComparer.Ordinal).Select(path => new FileInfo(path)).Where(file => file.Exists))
        {
            stamps[file.FullName] = (file.Length, file.LastWriteTimeUtc);
        }

        return stamps;
    }
}
