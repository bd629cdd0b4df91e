using System.Collections.Immutable;
using IfcCourser.Units;

namespace IfcCourser.Rules;

/// <summary>What slab, first course and bars are told beside on slab day. Told, not decided on; null where the set names none.</summary>
/// <param name="SlabLevel">How far a slab's top may lie above or below its designed level.</param>
/// <param name="SlabFlatness">How far it may lie off the straight between two readings, by their distance, in proportion between.</param>
/// <param name="CourseLevel">What two tops of a first course may differ by, by their distance along a wall.</param>
/// <param name="CourseLevelMost">How far any top may lie above or below the course's level.</param>
/// <param name="BarAlong">How far a bar may stand off its place along the wall.</param>
/// <param name="PlanLengths">What the distance between two control points may differ by from that of the plan, by that distance.</param>
/// <param name="Sources">Where the values come from.</param>
public sealed record SlabTolerances(
    Length? SlabLevel, ToleranceTable? SlabFlatness, ToleranceTable? CourseLevel, Length? CourseLevelMost, Length? BarAlong, ToleranceTable? PlanLengths,
    ImmutableArray<RuleSource> Sources)
{
    public static readonly SlabTolerances None = new(null, null, null, null, null, null, []);

    /// <summary>Standard, edition and clause of a value, and how sure it is.</summary>
    /// <param name="key">As the rule file writes it.</param>
    public string SourceOf(string key) => Sources.FirstOrDefault(source => source.Keys.Contains(key, StringComparer.Ordinal))?.Text ?? Messages.SourceNotGiven;
}
