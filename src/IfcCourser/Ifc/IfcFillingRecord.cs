using IfcCourser.Geometry;

namespace IfcCourser.Ifc;

/// <summary>A door, window or other element that fills an opening.</summary>
/// <param name="EntityType">Upper-case entity name, such as IFCDOOR.</param>
/// <param name="OverallWidth">Mm; null where the model gives none.</param>
/// <param name="OverallHeight">Mm; null where the model gives none.</param>
public sealed record IfcFillingRecord(
    long StepId,
    string EntityType,
    string GlobalId,
    string? Name,
    Transform3 Placement,
    long? Representation,
    double? OverallWidth,
    double? OverallHeight)
{
    public bool IsDoor => EntityType is "IFCDOOR" or "IFCDOORSTANDARDCASE";

    public bool IsWindow => EntityType is "IFCWINDOW" or "IFCWINDOWSTANDARDCASE";
}
