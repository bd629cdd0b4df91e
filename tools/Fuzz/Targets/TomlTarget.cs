using System.Text;
using IfcCourser.Catalogs;
using IfcCourser.Jobs;
using IfcCourser.Rules;

namespace Fuzz.Targets;

/// <summary>One text read as catalog, rule set and job file.</summary>
internal static class TomlTarget
{
    public static void Read(byte[] bytes)
    {
        var text = Encoding.UTF8.GetString(bytes);
        string?[] faults =
        [
            CatalogReader.Read(text, "fuzz.toml").Fault?.ToString(),
            RuleSetReader.Read(text, "fuzz.toml").Fault?.ToString(),
            JobReader.Read(text, "fuzz.toml").Fault?.ToString(),
        ];
        Law.Holds(faults.Any(fault => fault is not null), "a text is catalog, rule set and job file at once");
    }
}
