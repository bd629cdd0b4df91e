using IfcCourser.Findings;

namespace IfcCourser.Cli;

/// <summary>A result whose place the user names: written beside it and moved in whole.</summary>
internal static class OutputFile
{
    /// <param name="path">Path as given.</param>
    /// <param name="input">The model, which no output may replace.</param>
    /// <param name="write">Writes the file.</param>
    /// <returns>Null, or why it could not be written.</returns>
    public static Fault? Write(string path, string input, Action<Stream> write)
    {
        var target = Path.GetFullPath(path);
        if (string.Equals(target, Path.GetFullPath(input), StringComparison.Ordinal))
        {
            return Messages.OverwritesInput(path);
        }

        var beside = FormattableString.Invariant($"{target}.ifccourser-{Environment.ProcessId}");
        using var stopped = Interruption.Undo(() => File.Delete(beside));
        try
        {
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            using (var stream = new FileStream(beside, FileMode.Create, FileAccess.Write))
            {
                write(stream);
            }

            File.Move(beside, target, overwrite: true);
            return null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or NotSupportedException)
        {
            File.Delete(beside);
            return Messages.NotWritable(path, e);
        }
    }
}
