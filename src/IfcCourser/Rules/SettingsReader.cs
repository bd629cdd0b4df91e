using IfcCourser.Catalogs;
using IfcCourser.Findings;
using IfcCourser.Settings;

namespace IfcCourser.Rules;

/// <summary>Reads a file that is a catalog or a rule set, whichever it turns out to be.</summary>
public static class SettingsReader
{
    /// <summary>A built-in catalog or the one in a .toml file; a rule set is told to be one.</summary>
    public static Outcome<Catalog> Catalog(string nameOrFile) => SettingsKind.NotCatalog(nameOrFile) is { } fault ? fault : CatalogReader.Load(nameOrFile);

    /// <summary>A built-in rule set or the one in a .toml file; a catalog is told to be one.</summary>
    public static Outcome<RuleSet> RuleSet(string nameOrFile) => SettingsKind.NotRuleSet(nameOrFile) is { } fault ? fault : RuleSetReader.Load(nameOrFile);

    /// <summary>A file with more of a rule set's tables than of a catalog's is taken for a rule set, any other for a catalog.</summary>
    public static Outcome<VerifiedSettings> Verify(string path)
    {
        var text = SettingsFile.ReadText(path);
        if (!text.IsOk)
        {
            return text.Fault;
        }

        var tree = TomlTree.Parse(text.Value, path);
        if (!tree.IsOk)
        {
            return tree.Fault;
        }

        if (SettingsKind.IsRuleSet(tree.Value))
        {
            var rules = RuleSetReader.Read(text.Value, path);
            return rules.IsOk ? new VerifiedSettings("rule set", rules.Value.Name, text.Value) : rules.Fault;
        }

        var catalog = CatalogReader.Read(text.Value, path);
        return catalog.IsOk ? new VerifiedSettings("catalog", catalog.Value.Name, text.Value) : catalog.Fault;
    }

    /// <summary>The text of a built-in catalog or rule set with its sources; null where the name is neither.</summary>
    public static string? BuiltInText(string name) =>
        BuiltInCatalogs.Names.Contains(name, StringComparer.Ordinal) ? SettingsFile.BuiltIn($"Catalogs/{name}.toml")
        : BuiltInRuleSets.Names.Contains(name, StringComparer.Ordinal) ? SettingsFile.BuiltIn($"Rules/{name}.toml")
        : null;

    /// <summary>The fault of a name that is neither built in nor a file.</summary>
    public static Fault UnknownName(string name) =>
        SettingsFile.UnknownName(name, "catalog or rule set", [.. BuiltInCatalogs.Names, .. BuiltInRuleSets.Names]);
}
