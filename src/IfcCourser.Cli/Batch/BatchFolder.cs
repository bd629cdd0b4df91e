using System.Text.Json;
using IfcCourser.Findings;

namespace IfcCourser.Cli.Batch;

/// <summary>
/// The folder of a batch. A lot's files are written to a folder of this share beside the lots and moved in by one renaming, the
/// result last among them: a lot that has a result has all its files, whenever the run was killed.
/// </summary>
internal sealed class BatchFolder : IDisposable
{
    private readonly string _lots;
    private readonly string _staging;
    private readonly FileStream _lock;
    private readonly bool _isWhole;
    private readonly Lock _moving = new();
    private readonly IDisposable _stopped;

    private BatchFolder(string folder, string staging, FileStream held, bool isWhole)
    {
        _isWhole = isWhole;
        Folder = folder;
        _lots = Path.Combine(folder, "lots");
        _staging = staging;
        _lock = held;
        _stopped = Interruption.Undo(Stop);
    }

    public string Folder { get; }

    /// <summary>Makes the folder where it is missing and clears what a killed run of the same share left half done.</summary>
    public static Outcome<BatchFolder> Open(string folder, Shard shard)
    {
        if (File.Exists(folder))
        {
            return Messages.FileNotFolder(folder);
        }

        var staging = Path.Combine(folder, ".ifccourser-batch", shard.ToString());
        FileStream? held = null;
        try
        {
            Directory.CreateDirectory(Path.Combine(folder, "lots"));
            Directory.CreateDirectory(Path.GetDirectoryName(staging)!);
            held = new FileStream($"{staging}.lock", FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
            Remove(staging);
            Directory.CreateDirectory(staging);
            return new BatchFolder(folder, staging, held, shard == Shard.Whole);
        }
        catch (Exception e) when (OutputFolder.IsExpected(e))
        {
            var isHeld = held is null && File.Exists($"{staging}.lock");
            held?.Dispose();
            return isHeld ? Messages.FolderInUse(folder) : Messages.NotWritable(folder, e);
        }
    }

    /// <summary>What became of a lot, in this run or an earlier one; null where nothing whole is there.</summary>
    public LotResult? Recorded(string lot)
    {
        try
        {
            return JsonSerializer.Deserialize(File.ReadAllText(Path.Combine(_lots, lot, LotResult.File)), BatchJson.Default.LotResult);
        }
        catch (Exception e) when (OutputFolder.IsExpected(e) || e is JsonException)
        {
            return null;
        }
    }

    /// <summary>An empty folder for a lot's files.</summary>
    public string Stage(string lot)
    {
        var folder = Path.Combine(_staging, lot);
        Remove(folder);
        Directory.CreateDirectory(folder);
        return folder;
    }

    /// <summary>Puts the staged files of a lot in place of any that it had, with its result.</summary>
    public Fault? Commit(string lot, LotResult result)
    {
        var (staged, place, old) = (Path.Combine(_staging, lot), Path.Combine(_lots, lot), Path.Combine(_staging, $"{lot}.old"));
        return Try(place, () =>
        {
            File.WriteAllText(Path.Combine(staged, LotResult.File), BatchJson.Of(result));
            lock (_moving)
            {
                if (Directory.Exists(place))
                {
                    Remove(old);
                    Directory.Move(place, old);
                }

                Directory.Move(staged, place);
            }

            Remove(old);
        });
    }

    /// <summary>Gives a lot the files of another that is done.</summary>
    public Fault? Repeat(string done, string lot, LotResult result) => Try(Path.Combine(_lots, lot), () =>
    {
        var (from, to) = (Path.Combine(_lots, done), Stage(lot));
        foreach (var folder in Directory.EnumerateDirectories(from, "*", SearchOption.AllDirectories))
        {
            Directory.CreateDirectory(Path.Combine(to, Path.GetRelativePath(from, folder)));
        }

        foreach (var file in Directory.EnumerateFiles(from, "*", SearchOption.AllDirectories).Where(file => Path.GetRelativePath(from, file) != LotResult.File))
        {
            HardLink.OrCopy(file, Path.Combine(to, Path.GetRelativePath(from, file)));
        }
    }) ?? Commit(lot, result);

    /// <summary>Whether a file is among those of a lot.</summary>
    public bool Has(string lot, string file) => File.Exists(Path.Combine(_lots, lot, file));

    /// <summary>Writes a file of the batch as a whole.</summary>
    public Fault? Write(string name, Action<Stream> write) => Try(Path.Combine(Folder, name), () =>
    {
        using (var stream = new FileStream(Path.Combine(_staging, name), FileMode.Create, FileAccess.Write))
        {
            write(stream);
        }

        File.Move(Path.Combine(_staging, name), Path.Combine(Folder, name), overwrite: true);
    });

    /// <summary>Lots of an earlier manifest.</summary>
    public List<string> Others(IEnumerable<string> lots)
    {
        var known = lots.ToHashSet(StringComparer.OrdinalIgnoreCase);
        return [.. Directory.EnumerateDirectories(_lots).Select(folder => Path.GetFileName(folder)!).Where(name => !known.Contains(name)).Order(StringComparer.Ordinal)];
    }

    public void Dispose()
    {
        _stopped.Dispose();
        Clear();
        _lock.Dispose();
    }

    /// <summary>No lot is moved in after this.</summary>
    private void Stop()
    {
        _moving.Enter();
        Clear();
    }

    private void Clear() => Try(_staging, () =>
    {
        Remove(_staging);
        File.Delete($"{_staging}.lock");
        _lock.Dispose();
        if (_isWhole)
        {
            // Of several shares none knows whether it is the last; collecting them removes the folder.
            Directory.Delete(Path.GetDirectoryName(_staging)!);
        }
    });

    private static Fault? Try(string place, Action write)
    {
        try
        {
            write();
            return null;
        }
        catch (Exception e) when (OutputFolder.IsExpected(e))
        {
            return Messages.NotWritable(place, e);
        }
    }

    private static void Remove(string folder)
    {
        if (!Directory.Exists(folder))
        {
            return;
        }

        if (OperatingSystem.IsWindows())
        {
            // Which does not delete what can only be read.
            foreach (var file in Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories))
            {
                File.SetAttributes(file, FileAttributes.Normal);
            }
        }

        Directory.Delete(folder, recursive: true);
    }
}
