namespace IfcCourser.Cli.Tests.Support;

/// <summary>The committed models, and folders that vanish after a test.</summary>
internal static class Fixtures
{
    private static readonly string _root = Root();

    public static string House(string name) => Path.Combine(_root, "fixtures", "ifc", name, name + ".ifc");

    public static string Bad(string file) => Path.Combine(_root, "fixtures", "bad", file);

    /// <param name="path">From the repository's top, with slashes.</param>
    public static string InRepository(string path) => Path.Combine([_root, .. path.Split('/')]);

    public static string Survey(string file) => Path.Combine(_root, "fixtures", "survey", file);

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "IfcCourser.sln")))
        {
            folder = folder.Parent ?? throw new InvalidOperationException("The tests do not run from inside the repository.");
        }

        return folder.FullName;
    }
}
