using IfcCourser.Findings;

namespace IfcCourser.Settings;

/// <summary>Reads the text of a settings file: built in, or given by the user.</summary>
internal static class SettingsFile
{
    private const long MostBytes = 1024 * 1024;

    /// <summary>The text of a file that is embedded in this assembly.</summary>
    public static string BuiltIn(string resource)
    {
        using var stream = typeof(SettingsFile).Assembly.GetManifestResourceStream(resource)
            ?? throw new InvalidOperationException($"{resource} is not embedded.");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }

    /// <summary>Parses text with the function given; the first fault counts.</summary>
    public static Outcome<T> Parse<T>(string text, string file, Func<SettingsTable, T> read)
        where T : class
    {
        var tree = TomlTree.Parse(text, file);
        if (!tree.IsOk)
        {
            return tree.Fault;
        }

        var table = SettingsTable.Root(tree.Value, file);
        var value = read(table);
        return table.FirstFault() is { } fault ? fault : value;
    }

    /// <summary>Reads and parses a file of the user.</summary>
    public static Outcome<T> Load<T>(string path, Func<SettingsTable, T> read)
        where T : class
    {
        var text = ReadText(path);
        return text.IsOk ? Parse(text.Value, path, read) : text.Fault;
    }

    /// <summary>The text of a file of the user.</summary>
    public static Outcome<string> ReadText(string path)
    {
        try
        {
            if (new FileInfo(path) is { Exists: true, Length: > MostBytes })
            {
                return new Fault(path, null, null, "the file is larger than 1 MB, which no catalog, rule set or job file is", "Check the path.");
            }

            return File.ReadAllText(path);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return new Fault(path, null, null, $"the file can't be read: {e.Message.TrimEnd('.')}", "Check the path and its permissions.");
        }
    }

    /// <summary>The fault of a name that is neither built in nor a file.</summary>
    public static Fault UnknownName(string name, string kind, IReadOnlyCollection<string> known)
    {
        var nearest = NearestName.Of(name, known);
        var hint = nearest is null ? string.Empty : $"Did you mean \"{nearest}\"? ";
        return new Fault(
            name, null, null, $"this is neither a built-in {kind} nor a .toml file", $"{hint}Built in: {string.Join(", ", known)}.");
    }
}
