using IfcCourser.Catalogs;
using IfcCourser.Ifc;
using IfcCourser.Rules;
using IfcCourser.Walls;

namespace Fuzz.Targets;

/// <summary>A model up to its walls in elevation.</summary>
internal static class ModelTarget
{
    private static readonly Catalog _catalog = BuiltInCatalogs.Get("aac-mm");
    private static readonly RuleSet _rules = BuiltInRuleSets.Get("eu");

    public static void Read(byte[] bytes)
    {
        var opened = IfcModel.Read("fuzz.ifc", bytes);
        if (!opened.IsOk)
        {
            return;
        }

        using var model = opened.Value;
        var walls = UniqueIds.Of(WallReader.Read(model, new WallSelection { Walls = WallChoice.All, Width = WidthMatch.Any }, _catalog, _rules));
        Law.Holds(walls.Walls.Length + walls.Skipped.Length == model.Walls.Length, "a wall is neither read nor skipped");
        foreach (var wall in model.Walls)
        {
            _ = model.PropertySets(wall.StepId).Length;
        }
    }
}
