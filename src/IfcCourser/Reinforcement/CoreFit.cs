using IfcCourser.Catalogs;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Reinforcement;

/// <summary>Which core a wall can have.</summary>
internal static class CoreFit
{
    /// <summary>The largest core that the catalog and the bar rule allow in a wall so thick, judged by its nominal width; null where it can have none.</summary>
    public static CoreOption? In(Length thickness, LayoutRules rules)
    {
        if (rules.Set.Bars is not { } rule)
        {
            return null;
        }

        var width = rules.Catalog.Widths.FirstOrDefault(width => width.Actual == thickness || width.Nominal == thickness);
        var nominal = Length.Max(width.Nominal, thickness);
        foreach (var option in rules.Catalog.Cores.OrderByDescending(option => option.LeastWall))
        {
            var isThickEnough = option.LeastWall <= nominal && rule.LeastWall <= nominal && thickness >= option.Diameter + (rule.LeastShell * 2);
            if (isThickEnough && option.Diameter >= rule.LeastCore)
            {
                return option;
            }
        }

        return null;
    }
}
