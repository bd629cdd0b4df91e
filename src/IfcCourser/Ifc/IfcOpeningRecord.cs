using System.Collections.Immutable;
using IfcCourser.Geometry;

namespace IfcCourser.Ifc;

/// <summary>An opening element that voids a wall or one of its parts.</summary>
/// <param name="Placement">From the opening's own axes to the model's, mm.</param>
/// <param name="Representation">Instance number of the IfcProductDefinitionShape.</param>
/// <param name="PredefinedType">OPENING, RECESS or another word of the model; null in IFC2X3, where ObjectType may tell.</param>
/// <param name="ObjectType">As written.</param>
/// <param name="Fillings">Doors, windows and others that stand in it.</param>
public sealed record IfcOpeningRecord(
    long StepId,
    string GlobalId,
    string? Name,
    string? PredefinedType,
    string? ObjectType,
    Transform3 Placement,
    long? Representation,
    ImmutableArray<IfcFillingRecord> Fillings)
{
    /// <summary>Whether it voids the whole that the wall is a part of: it may lie in another part.</summary>
    public bool IsInherited { get; init; }

    /// <summary>Whether it has no body that can be read, so that the size of what fills it is taken.</summary>
    public bool IsSizedByFilling { get; init; }
}
