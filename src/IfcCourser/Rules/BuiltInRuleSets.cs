using System.Collections.Immutable;
using IfcCourser.Settings;

namespace IfcCourser.Rules;

/// <summary>The rule sets that ship with the program.</summary>
public static class BuiltInRuleSets
{
    private static readonly ImmutableDictionary<string, Lazy<RuleSet>> _read =
        Names.ToImmutableDictionary(name => name, name => new Lazy<RuleSet>(() => Parse(name)), StringComparer.Ordinal);

    /// <summary>In the order they are listed.</summary>
    public static ImmutableArray<string> Names => ["us", "eu", "de", "none"];

    /// <summary>The rule set of one of the <see cref="Names"/>.</summary>
    public static RuleSet Get(string name) => _read[name].Value;

    private static RuleSet Parse(string name)
    {
        var file = $"Rules/{name}.toml";
        var outcome = RuleSetReader.Read(SettingsFile.BuiltIn(file), file);
        return outcome.IsOk ? outcome.Value : throw new InvalidOperationException(outcome.Fault.ToString());
    }
}
