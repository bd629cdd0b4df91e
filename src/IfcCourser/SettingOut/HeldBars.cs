using IfcCourser.Findings;
using IfcCourser.Layouts;
using IfcCourser.Units;

namespace IfcCourser.SettingOut;

/// <summary>Bars that are not to be cast in before the designer agrees: should an opening go back to where it was drawn, they stand wrong.</summary>
public static class HeldBars
{
    /// <summary>Whether a bar stands beside an opening that was moved along the wall, or in the way of one as it was drawn.</summary>
    /// <param name="wall">The wall that lists the bar.</param>
    /// <param name="core">One of its cores.</param>
    public static bool IsHeld(WallLayout wall, Core core) =>
        wall.Findings.Any(finding => finding.Code == FindingCodes.BarInDoorway && finding.At?.Core == core.Id)
        || (core.Why.Contains("jamb", StringComparer.Ordinal) && Nearest(wall, core) is { } opening && (opening.Placed.Left != opening.Design.Left || opening.Placed.Right != opening.Design.Right));

    private static OpeningLayout? Nearest(WallLayout wall, Core core) => wall.Openings
        .Where(opening => opening.Interrupts)
        .MinBy(opening => Length.Min(Length.Abs(core.At - opening.Placed.Left), Length.Abs(core.At - opening.Placed.Right)));
}
