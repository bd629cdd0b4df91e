using FixtureMaker.Design;
using FixtureMaker.Step;

namespace FixtureMaker.Ifc;

/// <summary>The unit assignment; feet and inches are conversion-based on the metre (1 ft = 0.3048 m exactly).</summary>
internal static class UnitPart
{
    private const double FootInMetres = 0.3048;

    public static Reference Write(ModelFile file)
    {
        var lengths = file.House.Units switch
        {
            HouseUnits.Foot => Imperial(file, "FOOT", FootInMetres),
            HouseUnits.Inch => Imperial(file, "INCH", FootInMetres / 12),
            _ => Metric(file),
        };
        var angle = file.Step.Add("IFCSIUNIT", Derived.Value, new Keyword("PLANEANGLEUNIT"), null, new Keyword("RADIAN"));
        return file.Step.Add("IFCUNITASSIGNMENT", lengths.Append(angle).ToList());
    }

    private static List<Reference> Metric(ModelFile file) =>
    [
        Si(file, "LENGTHUNIT", file.House.Units == HouseUnits.Millimetre ? new Keyword("MILLI") : null, "METRE"),
        Si(file, "AREAUNIT", null, "SQUARE_METRE"),
        Si(file, "VOLUMEUNIT", null, "CUBIC_METRE"),
    ];

    private static List<Reference> Imperial(ModelFile file, string name, double metres) =>
    [
        Converted(file, "LENGTHUNIT", name, metres, 1, "METRE", "IFCLENGTHMEASURE"),
        Converted(file, "AREAUNIT", $"SQUARE {name}", metres, 2, "SQUARE_METRE", "IFCAREAMEASURE"),
        Converted(file, "VOLUMEUNIT", $"CUBIC {name}", metres, 3, "CUBIC_METRE", "IFCVOLUMEMEASURE"),
    ];

    private static Reference Converted(ModelFile file, string kind, string name, double metres, int power, string si, string measure)
    {
        var dimensions = file.Step.Add("IFCDIMENSIONALEXPONENTS", power, 0, 0, 0, 0, 0, 0);
        var factor = file.Step.Add(
            "IFCMEASUREWITHUNIT", new Typed(measure, Math.Pow(metres, power)), Si(file, kind, null, si));
        return file.Step.Add("IFCCONVERSIONBASEDUNIT", dimensions, new Keyword(kind), name, factor);
    }

    private static Reference Si(ModelFile file, string kind, Keyword? prefix, string name) =>
        file.Step.Add("IFCSIUNIT", Derived.Value, new Keyword(kind), prefix, new Keyword(name));
}
