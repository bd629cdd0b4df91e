using System.Collections.Concurrent;
using IfcCourser.Catalogs;
using IfcCourser.Ifc;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Runs;
using IfcCourser.Walls;

namespace IfcCourser.Output.Tests.Support;

/// <summary>Models of fixtures/ifc laid out with bars, each once.</summary>
internal static class FixtureLayouts
{
    private static readonly ConcurrentDictionary<(string, string, string), Lazy<Layout>> _layouts = new();

    /// <summary>Every model of fixtures/ifc that can be read, such as yarrow/yarrow.</summary>
    public static IEnumerable<string> Models => Directory.EnumerateFiles(Folder(), "*.ifc", SearchOption.AllDirectories)
        .Select(file => Path.ChangeExtension(Path.GetRelativePath(Folder(), file), null).Replace('\\', '/'))
        .Order(StringComparer.Ordinal);

    /// <param name="model">Such as yarrow/yarrow: with the inch catalog and its rules, which ask for bars.</param>
    public static Layout Of(string model) => Of(model, "aac-in", "us");

    public static Layout Of(string model, string catalog, string rules) =>
        _layouts.GetOrAdd((model, catalog, rules), of => new Lazy<Layout>(() => LayOut(of.Item1, BuiltInCatalogs.Get(of.Item2), BuiltInRuleSets.Get(of.Item3)))).Value;

    /// <summary>The model itself.</summary>
    public static IfcModel Open(string model)
    {
        var opened = IfcModel.Open(Path.Combine(Folder(), model + ".ifc"));
        Assert.True(opened.IsOk, opened.Fault?.ToString());
        return opened.Value;
    }

    /// <summary>Path of a file of fixtures/survey.</summary>
    public static string Survey(string name) => Path.Combine(Root(), "fixtures", "survey", name);

    private static Layout LayOut(string model, Catalog catalog, RuleSet rules)
    {
        using var read = Open(model);
        var walls = UniqueIds.Of(WallReader.Read(read, new WallSelection { Width = WidthMatch.Any }, catalog, rules));
        var facts = new ModelFacts(read.FileName, read.Sha256, read.SchemaName, read.Units.LengthMm, read.ProjectId, read.ProjectName, read.TimeStamp);
        return LayoutBuilder.Build(walls, LayoutRules.For(rules, catalog, OpeningPolicy.Move), facts);
    }

    private static string Folder() => Path.Combine(Root(), "fixtures", "ifc");

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
