using IfcCourser.Catalogs;
using IfcCourser.Findings;
using IfcCourser.Settings;

namespace IfcCourser.Rules;

/// <summary>Tells catalogs and rule sets apart by the tables that only one of them has.</summary>
internal static class SettingsKind
{
    private static readonly string[] _ofCatalogs = ["unit", "joints", "cutting", "layout", "words", "lintels", "troughs", "cores"];

    private static readonly string[] _ofRuleSets = ["bond", "openings", "junctions", "bars", "bond-beams", "bar-list", "cautions"];

    /// <summary>Whether a file has more of a rule set's tables than of a catalog's.</summary>
    public static bool IsRuleSet(TomlValue root)
    {
        var keys = (Dictionary<string, TomlValue>)root.Content;
        return _ofRuleSets.Count(keys.ContainsKey) > _ofCatalogs.Count(keys.ContainsKey);
    }

    /// <summary>The fault of a rule set given as the catalog; null where it is none, or can't be read.</summary>
    public static Fault? NotCatalog(string nameOrFile) =>
        BuiltInRuleSets.Names.Contains(nameOrFile, StringComparer.Ordinal) || Root(nameOrFile) is { } root && IsRuleSet(root)
            ? new Fault(nameOrFile, null, null, "this is a rule set, not a catalog", "Give it with --rules.")
            : null;

    /// <summary>The fault of a catalog given as the rule set; null where it is none, or can't be read.</summary>
    public static Fault? NotRuleSet(string nameOrFile) =>
        BuiltInCatalogs.Names.Contains(nameOrFile, StringComparer.Ordinal) || Root(nameOrFile) is { } root && IsCatalog(root)
            ? new Fault(nameOrFile, null, null, "this is a catalog, not a rule set", "Give it with --catalog.")
            : null;

    private static bool IsCatalog(TomlValue root) => !IsRuleSet(root) && _ofCatalogs.Any(((Dictionary<string, TomlValue>)root.Content).ContainsKey);

    private static TomlValue? Root(string path) =>
        path.EndsWith(".toml", StringComparison.OrdinalIgnoreCase)
        && SettingsFile.ReadText(path) is { IsOk: true } text
        && TomlTree.Parse(text.Value, path) is { IsOk: true } tree ? tree.Value : null;
}
