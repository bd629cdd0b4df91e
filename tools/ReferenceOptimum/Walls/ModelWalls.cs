using System.Collections.Immutable;
using IfcCourser.Catalogs;
using IfcCourser.Ifc;
using IfcCourser.Rules;
using IfcCourser.Walls;

namespace ReferenceOptimum.Walls;

/// <summary>Walls of real models, up to 6 m long, 12 courses high and with the fewest doubts: each laid out with the whole model.</summary>
internal static class ModelWalls
{
    /// <param name="folder">Where the models are.</param>
    public static IEnumerable<(string Name, WallModel Model, LayoutRules Rules)> In(string folder)
    {
        foreach (var path in Directory.EnumerateFiles(folder, "*.ifc").Order(StringComparer.Ordinal))
        {
            if (IfcModel.Open(path) is not { IsOk: true } opened)
            {
                continue;
            }

            using var model = opened.Value;
            var units = DefaultSets.SystemOf(model.Units.LengthMm);
            var catalog = BuiltInCatalogs.Get(DefaultSets.Catalog(units));
            var set = BuiltInRuleSets.Get(DefaultSets.Rules(units));
            var selection = new WallSelection { Walls = WallChoice.All, Width = WidthMatch.Any };
            var walls = UniqueIds.Of(WallReader.Read(model, selection, catalog, set));
            yield return (Path.GetFileNameWithoutExtension(path), walls, LayoutRules.For(set, catalog, OpeningPolicy.Move));
        }
    }
}
