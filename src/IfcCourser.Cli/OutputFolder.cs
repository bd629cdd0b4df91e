using IfcCourser.Findings;

namespace IfcCourser.Cli;

/// <summary>
/// The folder a run writes to. Files are first written to a folder of this run inside it and moved in, each whole, when
/// all are there; a run that fails or is interrupted removes its own and leaves the rest as it was.
/// </summary>
internal sealed class OutputFolder : IDisposable
{
    private readonly string _folder;
    private readonly string _staging;
    private readonly string _input;
    private readonly string _real;
    private readonly bool _isNew;
    private readonly List<string> _files = [];
    private readonly Lock _writing = new();
    private readonly FileStream _held;
    private readonly IDisposable _stopped;

    private OutputFolder(string folder, string staging, FileStream held, string input, bool isNew)
    {
        _folder = folder;
        _staging = staging;
        _held = held;
        _input = RealPath.Of(input);
        _real = RealPath.Of(folder);
        _isNew = isNew;
        _stopped = Interruption.Undo(Stop);
    }

    /// <summary>Paths of the files added, relative to the folder, in the order they were added.</summary>
    public IReadOnlyList<string> Files => _files;

    /// <summary>Files of the kinds written, in the subfolders written to, that this run did not write: an earlier run's, most likely.</summary>
    public IReadOnlyList<string> Leftovers()
    {
        var written = _files.ToHashSet(StringComparer.Ordinal);
        return
        [
            .. _files.Select(file => (Folder: Path.GetDirectoryName(file)!, Extension: Path.GetExtension(file)))
                .Where(kind => kind.Folder.Length > 0)
                .Distinct()
                .SelectMany(kind => Directory.EnumerateFiles(Path.Combine(_folder, kind.Folder), "*" + kind.Extension)
                    .Select(file => $"{kind.Folder}/{Path.GetFileName(file)}"))
                .Where(file => !written.Contains(file))
                .Order(StringComparer.Ordinal),
        ];
    }

    /// <summary>Makes the folder where it is missing; a fault where it can't be made, is a file, or another run writes to it.</summary>
    /// <param name="folder">Path as the user gave it.</param>
    /// <param name="input">The file that no output may replace.</param>
    public static Outcome<OutputFolder> Open(string folder, string input)
    {
        if (File.Exists(folder))
        {
            return Messages.FileNotFolder(folder);
        }

        var staging = Path.Combine(folder, FormattableString.Invariant($".ifccourser-{Environment.ProcessId}"));
        var isNew = !Directory.Exists(folder);
        var held = Path.Combine(folder, ".ifccourser.lock");
        FileStream? hold = null;
        try
        {
            Directory.CreateDirectory(folder);

            // It goes with the process, however that ends.
            hold = new FileStream(held, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None, bufferSize: 0, FileOptions.DeleteOnClose);
            Directory.CreateDirectory(staging);
            return new OutputFolder(folder, staging, hold, input, isNew);
        }
        catch (Exception e) when (IsExpected(e))
        {
            var isHeld = hold is null && e is IOException && File.Exists(held);
            hold?.Dispose();
            return isHeld ? Messages.FolderHeld(folder) : Messages.NotWritable(folder, e);
        }
    }

    /// <summary>Writes one file beside its place; null, or why it could not be written.</summary>
    public Fault? Add(string relativePath, Action<Stream> write)
    {
        var (path, target) = (Path.Combine(_staging, relativePath), Path.Combine(_folder, relativePath));
        if (string.Equals(RealPath.Of(target), _input, StringComparison.Ordinal))
        {
            return Messages.OverwritesInput(target);
        }

        if (!IsInside(target) || !IsInside(path))
        {
            return Messages.LeadsElsewhere(Path.GetDirectoryName(target)!);
        }

        try
        {
            lock (_writing)
            {
                Directory.CreateDirectory(Path.GetDirectoryName(path)!);
                using var stream = new FileStream(path, FileMode.Create, FileAccess.Write);
                write(stream);
            }
        }
        catch (Exception e) when (IsExpected(e))
        {
            return Messages.NotWritable(target, e);
        }

        _files.Add(relativePath);
        return null;
    }

    /// <summary>Moves all files to their places; null, or why one could not be moved.</summary>
    public Fault? Commit()
    {
        lock (_writing)
        {
            foreach (var file in _files)
            {
                var target = Path.Combine(_folder, file);
                try
                {
                    Directory.CreateDirectory(Path.GetDirectoryName(target)!);
                    File.Move(Path.Combine(_staging, file), target, overwrite: true);
                }
                catch (Exception e) when (IsExpected(e))
                {
                    return Messages.NotWritable(target, e);
                }
            }
        }

        return null;
    }

    public void Dispose()
    {
        _stopped.Dispose();
        RemoveStaging();
    }

    internal static bool IsExpected(Exception e) => e is IOException or UnauthorizedAccessException or NotSupportedException;

    /// <summary>Whether no link leads the place of a file out of the folder.</summary>
    private bool IsInside(string path)
    {
        var beside = Path.GetRelativePath(_real, RealPath.Of(Path.GetDirectoryName(path)!));
        return beside != ".." && !beside.StartsWith(".." + Path.DirectorySeparatorChar, StringComparison.Ordinal) && !Path.IsPathRooted(beside);
    }

    /// <summary>The lock is kept: a file is written whole or not at all, and none after this.</summary>
    private void Stop()
    {
        _writing.Enter();
        RemoveStaging();
    }

    private void RemoveStaging()
    {
        try
        {
            Directory.Delete(_staging, recursive: true);
            _held.Dispose();
            if (_isNew && !Directory.EnumerateFileSystemEntries(_folder).Any())
            {
                Directory.Delete(_folder);
            }
        }
        catch (Exception e) when (IsExpected(e))
        {
            // Nothing is lost: what stays behind is named so that nobody takes it for a result.
            _held.Dispose();
        }
    }
}
