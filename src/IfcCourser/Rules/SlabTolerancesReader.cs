using System.Collections.Immutable;
using IfcCourser.Settings;
using IfcCourser.Units;

namespace IfcCourser.Rules;

/// <summary>Reads a rule set's table of tolerances.</summary>
internal static class SlabTolerancesReader
{
    public const string SlabLevel = "slab-level";
    public const string SlabFlatness = "slab-flatness";
    public const string CourseLevel = "course-level";
    public const string CourseLevelMost = "course-level-most";
    public const string BarAlong = "bar-along";
    public const string PlanLengths = "plan-lengths";

    public static SlabTolerances Read(SettingsTable table) => new(
        Limit(table, SlabLevel),
        Rows(table, SlabFlatness),
        Rows(table, CourseLevel),
        Limit(table, CourseLevelMost),
        Limit(table, BarAlong),
        Rows(table, PlanLengths),
        [.. table.Tables("sources").Select(RuleSourceReader.Read)]);

    private static Length? Limit(SettingsTable table, string key) => table.Has(key) ? table.PositiveLength(key) : null;

    private static ToleranceTable? Rows(SettingsTable table, string key)
    {
        if (!table.Has(key))
        {
            return null;
        }

        ImmutableArray<ToleranceRow> rows = [.. table.Tables(key).Select(row => new ToleranceRow(row.PositiveLength("within"), row.PositiveLength("limit")))];
        table.Check(!rows.IsEmpty, key, "must have a row");
        table.Check(rows.Zip(rows.Skip(1)).All(pair => pair.First.Within < pair.Second.Within), key, "must go from the nearest distance to the furthest");
        return rows.IsEmpty ? null : new ToleranceTable(rows);
    }
}
