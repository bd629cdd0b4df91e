using IfcCourser.Rules;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Reinforcement;

/// <summary>Which walls the rule set's bond beams are for.</summary>
internal static class BeamDemands
{
    /// <summary>The rule that a wall's beams follow; null where it has none.</summary>
    public static BondBeamRule? RuleFor(Wall wall, LayoutRules rules) => rules.Set.BondBeams is { } rule
        && (rule.Walls == BeamedWalls.All || wall.LoadBearing != false)
        && Nominal(wall.Frame.Thickness, rules) >= rule.LeastWall
            ? rule
            : null;

    private static Length Nominal(Length thickness, LayoutRules rules) => Length.Max(
        thickness, rules.Catalog.Widths.Where(width => rules.Catalog.IsWidth(width.Actual, thickness)).Select(width => width.Nominal).DefaultIfEmpty(thickness).Max());
}
