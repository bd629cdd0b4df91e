using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;

namespace IfcCourser.Tests;

/// <summary>The folders of the library are layers: each may use those before it, none after it.</summary>
public sealed partial class LayeringTests
{
    private static readonly string[] _layers =
    [
        "Units", "Findings", "Geometry", "Settings", "Catalogs", "Rules", "Step21", "Ifc", "Walls", "Layouts", "Jobs", "Modules", "Panels", "Reinforcement", "Coursing", "SettingOut", "Slabs", "Runs", "Takeoff", "Siting", "Comparing",
    ];

    [Fact]
    public void A_folder_uses_only_folders_before_it()
    {
        var library = Path.GetFullPath(Path.Combine(Path.GetDirectoryName(Here())!, "..", "..", "src", "IfcCourser"));
        var upward = _layers.SelectMany((layer, place) => Directory
            .EnumerateFiles(Path.Combine(library, layer), "*.cs", SearchOption.AllDirectories)
            .SelectMany(file => Using().Matches(File.ReadAllText(file))
                .Select(match => match.Groups["layer"].Value)
                .Where(used => Array.IndexOf(_layers, used) > place)
                .Select(used => $"{Path.GetRelativePath(library, file)} uses {used}")));
        Assert.Empty(upward);
    }

    [Fact]
    public void Every_folder_of_the_library_is_a_layer()
    {
        var library = Path.GetFullPath(Path.Combine(Path.GetDirectoryName(Here())!, "..", "..", "src", "IfcCourser"));
        var folders = Directory.EnumerateDirectories(library).Select(folder => Path.GetFileName(folder)!).Where(name => name is not ("bin" or "obj"));
        Assert.Equal(_layers.Order(StringComparer.Ordinal), folders.Order(StringComparer.Ordinal));
    }

    private static string Here([CallerFilePath] string file = "") => file;

    [GeneratedRegex(@"^using IfcCourser\.(?<layer>\w+)", RegexOptions.Multiline | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Using();
}
