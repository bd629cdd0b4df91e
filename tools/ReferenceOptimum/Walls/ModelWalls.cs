using IfcCourser.Catalogs;
using IfcCourser.Ifc;
using IfcCourser.Rules;
using IfcCourser.Walls;

namespace ReferenceOptimum.Walls;

/// <summary>Real models by the order of their file names, with all their walls and the rules that fit their units.</summary>
internal static class ModelWalls
{
    /// <param name="folder">Where the models are, or one of them.</param>
    /// <param name="withBars">The rule set where that of the model's units has no bars; null: that of the units always.</param>
    public static IEnumerable<(string Name, WallModel Model, LayoutRules Rules)> In(string folder, RuleSet? withBars = null)
    {
        foreach (var path in File.Exists(folder) ? Enumerable.Repeat(folder, 1) : Directory.EnumerateFiles(folder, "*.ifc").Order(StringComparer.Ordinal))
        {
            if (IfcModel.Open(path) is not { IsOk: true } opened)
            {
                continue;
            }

            using var model = opened.Value;
            var units = DefaultSets.SystemOf(model.Units.LengthMm);
            var catalog = BuiltInCatalogs.Get(DefaultSets.Catalog(units));
            var set = BuiltInRuleSets.Get(DefaultSets.Rules(units));
            set = set.Bars is null ? withBars ?? set : set;
            var selection = new WallSelection { Walls = WallChoice.All, Width = WidthMatch.Any };
            var walls = UniqueIds.Of(WallReader.Read(model, selection, catalog, set));
            yield return (Path.GetFileNameWithoutExtension(path), walls, LayoutRules.For(set, catalog, OpeningPolicy.Move));
        }
    }
}
