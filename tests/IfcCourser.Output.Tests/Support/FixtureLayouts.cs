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
    private static readonly ConcurrentDictionary<string, Lazy<Layout>> _layouts = new(StringComparer.Ordinal);

    /// <param name="model">Such as yarrow/yarrow: with the inch catalog and its rules, which ask for bars.</param>
    public static Layout Of(string model) => _layouts.GetOrAdd(model, name => new Lazy<Layout>(() => LayOut(name))).Value;

    /// <summary>The model itself.</summary>
    public static IfcModel Open(string model)
    {
        var opened = IfcModel.Open(Path.Combine(Root(), "fixtures", "ifc", model + ".ifc"));
        Assert.True(opened.IsOk, opened.Fault?.ToString());
        return opened.Value;
    }

    private static Layout LayOut(string model)
    {
        using var read = Open(model);
        var (catalog, rules) = (BuiltInCatalogs.Get("aac-in"), BuiltInRuleSets.Get("us"));
        var walls = UniqueIds.Of(WallReader.Read(read, new WallSelection { Width = WidthMatch.Any }, catalog, rules));
        var facts = new ModelFacts(read.FileName, read.Sha256, read.SchemaName, read.Units.LengthMm, read.ProjectId, read.ProjectName, read.TimeStamp);
        return LayoutBuilder.Build(walls, LayoutRules.For(rules, catalog, OpeningPolicy.Move), facts);
    }

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
