using System.Collections.Immutable;

namespace IfcCourser.Tests.Walls.Fixtures;

/// <summary>The files of fixtures/ifc that say by hand what each model beside them holds; their form is told in junctions/expected.txt.</summary>
internal static class ExpectedModels
{
    public static ImmutableArray<string> Folders => ["bodies", "junctions", "oddities"];

    public static string PathOf(string model) => Path.Combine(Root(), "fixtures", "ifc", model);

    /// <summary>What is expected of each model of a folder: its lines, blanks between words made one.</summary>
    public static Dictionary<string, ImmutableArray<string>> Of(string folder)
    {
        var models = new Dictionary<string, ImmutableArray<string>>(StringComparer.Ordinal);
        var current = string.Empty;
        foreach (var line in File.ReadLines(PathOf($"{folder}/expected.txt")).Where(line => line.Length > 0 && line[0] != '#'))
        {
            if (line.EndsWith(".ifc", StringComparison.Ordinal))
            {
                current = line;
                models.Add(current, []);
            }
            else
            {
                models[current] = models[current].Add(string.Join(' ', line.Split(' ', StringSplitOptions.RemoveEmptyEntries)));
            }
        }

        return models;
    }

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "IfcCourser.sln")))
        {
            folder = folder.Parent ?? throw new DirectoryNotFoundException("no IfcCourser.sln above the tests");
        }

        return folder.FullName;
    }
}
