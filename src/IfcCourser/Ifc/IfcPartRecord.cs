using System.Collections.Immutable;
using IfcCourser.Geometry;

namespace IfcCourser.Ifc;

/// <summary>An element that a wall is aggregated from: a building element part, a member, another wall.</summary>
/// <param name="EntityType">Upper-case entity name, such as IFCBUILDINGELEMENTPART.</param>
/// <param name="Placement">From the part's own axes to the model's, mm.</param>
/// <param name="Representation">Instance number of the IfcProductDefinitionShape.</param>
/// <param name="Openings">Openings that void the part itself.</param>
public sealed record IfcPartRecord(
    long StepId,
    string EntityType,
    string GlobalId,
    string? Name,
    Transform3 Placement,
    long? Representation,
    IfcMaterialUse? Material,
    ImmutableArray<IfcOpeningRecord> Openings)
{
    /// <summary>A wall of the model itself.</summary>
    public bool IsWall => EntityType.StartsWith("IFCWALL", StringComparison.Ordinal);
}
