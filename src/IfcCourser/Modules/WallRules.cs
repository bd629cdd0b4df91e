using IfcCourser.Rules;
using IfcCourser.Walls;

namespace IfcCourser.Modules;

/// <summary>The rules of a run as one wall keeps them.</summary>
internal static class WallRules
{
    /// <summary>Head joints of a wall that is curved in plan differ from the catalog's.</summary>
    public static LayoutRules Of(Wall wall, LayoutRules rules) =>
        wall.Frame.Curve is { } curve ? rules.Around(curve.Radius, wall.Frame.Thickness) : rules;
}
