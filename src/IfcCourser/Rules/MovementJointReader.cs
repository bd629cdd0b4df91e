using IfcCourser.Settings;
using IfcCourser.Units;

namespace IfcCourser.Rules;

/// <summary>Reads a rule set's table of movement joints.</summary>
internal static class MovementJointReader
{
    public static MovementJointRule Read(SettingsTable table)
    {
        var rule = new MovementJointRule(
            table.Choice("walls", ("all", JointedWalls.All), ("non-bearing", JointedWalls.NonBearing)),
            table.PositiveLength("longest-panel"),
            table.Whole("at-corner-percent", 1, 100),
            table.PositiveLength("width"),
            table.Length("from-jamb"),
            table.PositiveLength("height-step"),
            table.PositiveLength("thickness-step"),
            table.OptionalTable("wide-opening") is { } wide ? new WideOpeningRule(wide.PositiveLength("from"), wide.PositiveLength("within")) : null);
        table.Check(rule.FromJamb >= Length.Zero, "from-jamb", "must not be negative");
        table.Check(rule.Width < rule.LongestPanel || !table.Has("width"), "width", "must be less than the longest panel");
        return rule;
    }
}
