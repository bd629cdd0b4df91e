using IfcCourser.Step21;

namespace IfcCourser.Ifc;

/// <summary>Reads property and quantity sets, numbers in SI units.</summary>
internal sealed class IfcPropertyReader
{
    private readonly IfcInstances _instances;
    private readonly IfcUnits _units;

    public IfcPropertyReader(IfcInstances instances, IfcUnits units)
    {
        _instances = instances;
        _units = units;
    }

    /// <summary>A property or quantity set; null for other instances.</summary>
    public IfcPropertyGroup? Read(long id)
    {
        if (_instances.Find(id) is not { } set)
        {
            return null;
        }

        var isQuantities = set.Type is "IFCELEMENTQUANTITY";
        if (!isQuantities && set.Type is not "IFCPROPERTYSET")
        {
            return null;
        }

        var values = IfcRelations.References(set[isQuantities ? "Quantities" : "HasProperties"])
            .Select(value => _instances.Find(value))
            .OfType<IfcEntity>()
            .Select(value => isQuantities ? Quantity(value) : Property(value));
        return new IfcPropertyGroup(id, set.Label("Name") ?? string.Empty, isQuantities, [.. values]);
    }

    private IfcProperty Property(IfcEntity property)
    {
        var value = property.Type switch
        {
            "IFCPROPERTYSINGLEVALUE" => property["NominalValue"],
            "IFCPROPERTYENUMERATEDVALUE" => property["EnumerationValues"],
            _ => StepValue.Omitted,
        };
        var kind = value.TypeName switch
        {
            "IFCLENGTHMEASURE" or "IFCPOSITIVELENGTHMEASURE" or "IFCNONNEGATIVELENGTHMEASURE" => "LENGTHUNIT",
            "IFCAREAMEASURE" => "AREAUNIT",
            "IFCVOLUMEMEASURE" => "VOLUMEUNIT",
            "IFCPLANEANGLEMEASURE" or "IFCPOSITIVEPLANEANGLEMEASURE" => "PLANEANGLEUNIT",
            _ => string.Empty,
        };
        return new IfcProperty(property.Label("Name") ?? string.Empty, value, value.AsReal * Factor(property, kind));
    }

    private IfcProperty Quantity(IfcEntity quantity)
    {
        var (attribute, kind) = quantity.Type switch
        {
            "IFCQUANTITYLENGTH" => ("LengthValue", "LENGTHUNIT"),
            "IFCQUANTITYAREA" => ("AreaValue", "AREAUNIT"),
            "IFCQUANTITYVOLUME" => ("VolumeValue", "VOLUMEUNIT"),
            "IFCQUANTITYCOUNT" => ("CountValue", string.Empty),
            "IFCQUANTITYWEIGHT" => ("WeightValue", string.Empty),
            "IFCQUANTITYTIME" => ("TimeValue", string.Empty),
            _ => (string.Empty, string.Empty),
        };
        var value = quantity[attribute];
        return new IfcProperty(quantity.Label("Name") ?? string.Empty, value, value.AsReal * Factor(quantity, kind));
    }

    /// <summary>The value's own unit counts before the project's.</summary>
    private double Factor(IfcEntity value, string kind)
    {
        const double MillimetresInMetre = 1000;
        var own = _instances.Follow(value["Unit"]) is { } unit ? IfcUnitReader.Factor(_instances, unit, kind) : null;
        return kind switch
        {
            "LENGTHUNIT" => own ?? (_units.LengthMm / MillimetresInMetre),
            "AREAUNIT" => own ?? _units.AreaM2,
            "VOLUMEUNIT" => own ?? _units.VolumeM3,
            "PLANEANGLEUNIT" => own ?? _units.AngleRadians,
            _ => 1,
        };
    }
}
