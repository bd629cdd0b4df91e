using IfcCourser.Findings;
using IfcCourser.Geometry;

namespace IfcCourser.Ifc;

/// <summary>Where products stand and what shape they have; references that lead nowhere become findings.</summary>
internal sealed class IfcProducts
{
    private readonly IfcInstances _instances;
    private readonly IfcPlacements _placements;
    private readonly List<Finding> _findings;

    public IfcProducts(IfcInstances instances, IfcPlacements placements, List<Finding> findings)
    {
        _instances = instances;
        _placements = placements;
        _findings = findings;
    }

    public static string GlobalId(IfcEntity product) => product.Label("GlobalId") ?? string.Empty;

    /// <summary>From the product's own axes to the model's, mm.</summary>
    public Transform3 Placement(IfcEntity product) => _placements.Absolute(Resolved(product, "ObjectPlacement"));

    /// <summary>Instance number of the IfcProductDefinitionShape; null where there is none.</summary>
    public long? Representation(IfcEntity product) => Resolved(product, "Representation");

    private long? Resolved(IfcEntity element, string attribute)
    {
        var id = element[attribute].AsReference;
        if (id is { } number && !_instances.File.Contains(number))
        {
            _findings.Add(new Finding(
                FindingCodes.ReferenceMissing,
                FormattableString.Invariant($"{element.Type} #{element.Id} refers to #{number}, which is not in the file.")));
            return null;
        }

        return id;
    }
}
