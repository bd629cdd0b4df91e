using IfcCourser.Geometry;

namespace IfcCourser.Ifc;

/// <summary>A slab as the model states it, nothing derived from its geometry.</summary>
/// <param name="PredefinedType">Such as FLOOR, BASESLAB, ROOF; null where the model does not say.</param>
/// <param name="Placement">From the slab's own axes to the model's, mm.</param>
/// <param name="Representation">Instance number of the IfcProductDefinitionShape.</param>
public sealed record IfcSlabRecord(
    long StepId, string GlobalId, string? Name, string? PredefinedType, Transform3 Placement, long? Representation);
