using System.Runtime.InteropServices;
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
    private readonly bool _isNew;
    private readonly List<string> _files = [];
    private readonly Lock _writing = new();
    private readonly List<PosixSignalRegistration> _signals = [];

    private OutputFolder(string folder, string staging, string input, bool isNew)
    {
        _folder = folder;
        _staging = staging;
        _input = Resolved(input);
        _isNew = isNew;
        foreach (var signal in (PosixSignal[])[PosixSignal.SIGINT, PosixSignal.SIGTERM, PosixSignal.SIGHUP])
        {
            _signals.Add(PosixSignalRegistration.Create(signal, Interrupted));
        }
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

    /// <summary>Makes the folder where it is missing; a fault where it can't be made or is a file.</summary>
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
        try
        {
            Directory.CreateDirectory(staging);
            return new OutputFolder(folder, staging, input, isNew);
        }
        catch (Exception e) when (IsExpected(e))
        {
            return Messages.NotWritable(folder, e);
        }
    }

    /// <summary>Writes one file beside its place; null, or why it could not be written.</summary>
    public Fault? Add(string relativePath, Action<Stream> write)
    {
        var (path, target) = (Path.Combine(_staging, relativePath), Path.Combine(_folder, relativePath));
        if (string.Equals(Resolved(target), _input, StringComparison.Ordinal))
        {
            return Messages.OverwritesInput(target);
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
        _signals.ForEach(signal => signal.Dispose());
        RemoveStaging();
    }

    private static string Resolved(string path) =>
        File.Exists(path) && File.ResolveLinkTarget(path, returnFinalTarget: true) is { } target ? target.FullName : Path.GetFullPath(path);

    internal static bool IsExpected(Exception e) => e is IOException or UnauthorizedAccessException or NotSupportedException;

    private void Interrupted(PosixSignalContext context)
    {
        context.Cancel = true;
        lock (_writing)
        {
            RemoveStaging();
            Environment.Exit((int)ExitStatus.Interrupted);
        }
    }

    private void RemoveStaging()
    {
        try
        {
            Directory.Delete(_staging, recursive: true);
            if (_isNew && !Directory.EnumerateFileSystemEntries(_folder).Any())
            {
                Directory.Delete(_folder);
            }
        }
        catch (Exception e) when (IsExpected(e))
        {
            // Nothing is lost: what stays behind is named so that nobody takes it for a result.
        }
    }
}
