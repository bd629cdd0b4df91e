using IfcCourser.Settings;

namespace IfcCourser.Rules;

/// <summary>Reads where values of a rule set come from.</summary>
internal static class RuleSourceReader
{
    public static RuleSource Read(SettingsTable table)
    {
        var certainty = table.Choice(
            "certainty", ("read", Certainty.Read), ("from-memory", Certainty.FromMemory), ("derived", Certainty.Derived), ("practice", Certainty.Practice));
        var standard = certainty == Certainty.Practice && !table.Has("standard") ? string.Empty : table.Text("standard");
        return new RuleSource(table.Texts("keys"), standard, table.Has("clause") ? table.Text("clause") : string.Empty, certainty);
    }
}
