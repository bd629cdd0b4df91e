using IfcCourser.Units;

namespace IfcCourser.Rules;

/// <summary>Which built-in sets are taken where none are named.</summary>
public static class DefaultSets
{
    /// <summary>The system a model is drawn in: inch where its length unit is a whole number of inches (inch, foot, yard).</summary>
    /// <param name="lengthUnitMm">Millimetres in the model's length unit.</param>
    public static UnitSystem SystemOf(double lengthUnitMm)
    {
        const double MmPerInch = 25.4;
        var inches = lengthUnitMm / MmPerInch;
        return inches >= 0.99 && Math.Abs(inches - Math.Round(inches)) < 1e-4 * inches ? UnitSystem.Inch : UnitSystem.Metric;
    }

    /// <summary>Name of the catalog for models in this system.</summary>
    public static string Catalog(UnitSystem units) => units is UnitSystem.Inch ? "aac-in" : "aac-mm";

    /// <summary>Name of the rule set for catalogs in this system.</summary>
    public static string Rules(UnitSystem units) => units is UnitSystem.Inch ? "us" : "eu";
}
