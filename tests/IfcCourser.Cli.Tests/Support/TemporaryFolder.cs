namespace IfcCourser.Cli.Tests.Support;

/// <summary>An empty folder, removed with all that is in it.</summary>
internal sealed class TemporaryFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("ifccourser-test-").FullName;

    public string File(params string[] names) => System.IO.Path.Combine([Path, .. names]);

    /// <summary>Every file in it, relative, sorted.</summary>
    public string[] Files() =>
    [
        .. Directory.EnumerateFiles(Path, "*", new EnumerationOptions { RecurseSubdirectories = true, AttributesToSkip = FileAttributes.None })
            .Select(file => System.IO.Path.GetRelativePath(Path, file).Replace('\\', '/'))
            .Order(StringComparer.Ordinal),
    ];

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
