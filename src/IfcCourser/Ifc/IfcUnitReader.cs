using IfcCourser.Findings;

namespace IfcCourser.Ifc;

/// <summary>Reads the project's units (IfcUnitAssignment): SI units with prefixes, and units converted to them.</summary>
internal static class IfcUnitReader
{
    /// <summary>The units; what the project does not name is metre, radian, square and cubic metre.</summary>
    public static IfcUnits Read(IfcInstances instances, IfcEntity? project, List<Finding> findings)
    {
        var assignment = project is { } root ? instances.Follow(root["UnitsInContext"]) : null;
        assignment ??= instances.All("IFCUNITASSIGNMENT").Select(entity => (IfcEntity?)entity).FirstOrDefault();
        var units = assignment is { } given ? IfcRelations.References(given["Units"]) : [];
        var factors = new Dictionary<string, double>(StringComparer.Ordinal);
        foreach (var unit in units.Select(id => instances.Find(id)).OfType<IfcEntity>())
        {
            if (unit["UnitType"].AsEnumeration is { } kind && Factor(instances, unit, kind) is { } factor)
            {
                factors.TryAdd(kind, factor);
            }
        }

        const double Micrometre = 1e-6;
        const double Kilometre = 1e3;
        var named = Get("LENGTHUNIT");
        var length = named is >= Micrometre and <= Kilometre ? named : null;
        if (length is null)
        {
            findings.Add(new Finding(FindingCodes.NoLengthUnit, named is null ? "The project names no length unit; metres are assumed."
                : "The project names a length unit that no building is drawn in; metres are assumed."));
        }

        return new IfcUnits(
            Math.Round((length ?? 1) * 1000, 9),
            Get("PLANEANGLEUNIT") ?? 1,
            Get("AREAUNIT") ?? 1,
            Get("VOLUMEUNIT") ?? 1,
            length is not null,
            factors.ContainsKey("AREAUNIT"),
            factors.ContainsKey("VOLUMEUNIT"));

        double? Get(string kind) => factors.TryGetValue(kind, out var factor) ? factor : null;
    }

    /// <summary>What one of the unit is in metre, square metre, cubic metre or radian; null where the model does not tell.</summary>
    public static double? Factor(IfcInstances instances, IfcEntity unit, string kind)
    {
        const int PowerOfArea = 2;
        const int PowerOfVolume = 3;
        var power = kind switch { "AREAUNIT" => PowerOfArea, "VOLUMEUNIT" => PowerOfVolume, _ => 1 };
        if (unit.Type is "IFCSIUNIT")
        {
            return Math.Pow(10, power * Exponent(unit["Prefix"].AsEnumeration));
        }

        // One step of conversion: the standard has conversion factors in SI units only.
        if (instances.Follow(unit["ConversionFactor"]) is { } measure && measure["ValueComponent"].AsReal is { } value && value > 0)
        {
            var component = instances.Follow(measure["UnitComponent"]);
            return component is { Type: "IFCSIUNIT" } si ? value * Math.Pow(10, power * Exponent(si["Prefix"].AsEnumeration)) : value;
        }

        return null;
    }

    /// <summary>Decimal exponent of an SI prefix (ISO 80000-1, table 4).</summary>
    private static int Exponent(string? prefix) => prefix switch
    {
        "EXA" => 18,
        "PETA" => 15,
        "TERA" => 12,
        "GIGA" => 9,
        "MEGA" => 6,
        "KILO" => 3,
        "HECTO" => 2,
        "DECA" => 1,
        "DECI" => -1,
        "CENTI" => -2,
        "MILLI" => -3,
        "MICRO" => -6,
        "NANO" => -9,
        "PICO" => -12,
        "FEMTO" => -15,
        "ATTO" => -18,
        _ => 0,
    };
}
