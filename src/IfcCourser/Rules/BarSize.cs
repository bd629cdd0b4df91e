using IfcCourser.Units;

namespace IfcCourser.Rules;

/// <summary>A bar or rod as it is bought.</summary>
/// <param name="Name">As rule files and schedules write it: No. 4, 12 mm, 1/2 in threaded rod.</param>
/// <param name="Kind">Which standard's table it stands in.</param>
/// <param name="Diameter">Nominal.</param>
/// <param name="Area">Of steel, mm2.</param>
/// <param name="MassPerMetre">kg/m.</param>
public sealed record BarSize(string Name, BarKind Kind, Length Diameter, double Area, double MassPerMetre)
{
    /// <summary>kg.</summary>
    /// <param name="length">Of the bar.</param>
    public double Mass(Length length) => MassPerMetre * length.Mm / 1000;
}
