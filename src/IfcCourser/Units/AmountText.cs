using static System.FormattableString;

namespace IfcCourser.Units;

/// <summary>Areas and volumes as people write them: m2 and litres, or square feet and US gallons.</summary>
public static class AmountText
{
    private const double SquareMetresPerSquareFoot = 0.3048 * 0.3048;

    private const double LitresPerGallon = 3.785411784;

    public static string AreaUnit(UnitSystem units) => units == UnitSystem.Inch ? "ft2" : "m2";

    public static string VolumeUnit(UnitSystem units) => units == UnitSystem.Inch ? "gal" : "litres";

    public static string Area(double squareMetres, UnitSystem units) => Invariant($"{AreaNumber(squareMetres, units)} {AreaUnit(units)}");

    public static string Volume(double litres, UnitSystem units) => Invariant($"{VolumeNumber(litres, units)} {VolumeUnit(units)}");

    /// <summary>With at most two decimals.</summary>
    public static string AreaNumber(double squareMetres, UnitSystem units) => Invariant($"{squareMetres / (units == UnitSystem.Inch ? SquareMetresPerSquareFoot : 1):0.##}");

    /// <summary>With at most one decimal.</summary>
    public static string VolumeNumber(double litres, UnitSystem units) => Invariant($"{litres / (units == UnitSystem.Inch ? LitresPerGallon : 1):0.#}");
}
