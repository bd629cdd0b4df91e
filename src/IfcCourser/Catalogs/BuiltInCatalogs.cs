using System.Collections.Immutable;
using IfcCourser.Settings;

namespace IfcCourser.Catalogs;

/// <summary>The catalogs that ship with the program.</summary>
public static class BuiltInCatalogs
{
    private static readonly ImmutableDictionary<string, Lazy<Catalog>> _read =
        Names.ToImmutableDictionary(name => name, name => new Lazy<Catalog>(() => Parse(name)), StringComparer.Ordinal);

    /// <summary>In the order they are listed.</summary>
    public static ImmutableArray<string> Names => ["aac-in", "aac-mm", "aac-600", "octametric", "block-in"];

    /// <summary>The catalog of one of the <see cref="Names"/>.</summary>
    public static Catalog Get(string name) => _read[name].Value;

    private static Catalog Parse(string name)
    {
        var file = $"Catalogs/{name}.toml";
        var outcome = CatalogReader.Read(SettingsFile.BuiltIn(file), file);
        return outcome.IsOk ? outcome.Value : throw new InvalidOperationException(outcome.Fault.ToString());
    }
}
