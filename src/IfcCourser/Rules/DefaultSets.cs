using IfcCourser.Units;

namespace IfcCourser.Rules;

/// <summary>Which built-in sets are taken where none are named.</summary>
public static class DefaultSets
{
    /// <summary>The system a model is drawn in: inch where its length unit is the inch, the foot (also the survey foot) or the yard.</summary>
    /// <param name="lengthUnitMm">Millimetres in the model's length unit.</param>
    public static UnitSystem SystemOf(double lengthUnitMm)
    {
        const double MmPerInch = 25.4;
        const double SurveyFootApart = 1e-5;
        ReadOnlySpan<int> inches = [1, 12, 36];
        foreach (var count in inches)
        {
            if (Math.Abs((lengthUnitMm / (count * MmPerInch)) - 1) < SurveyFootApart)
            {
                return UnitSystem.Inch;
            }
        }

        return UnitSystem.Metric;
    }

    /// <summary>Name of the catalog for models in this system.</summary>
    public static string Catalog(UnitSystem units) => units is UnitSystem.Inch ? "aac-in" : "aac-mm";

    /// <summary>Name of the rule set for catalogs in this system.</summary>
    public static string Rules(UnitSystem units) => units is UnitSystem.Inch ? "us" : "eu";
}
