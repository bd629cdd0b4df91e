using System.Collections.Immutable;

namespace IfcCourser.Ifc;

/// <summary>What an element is made of.</summary>
/// <param name="Kind">How the model states it.</param>
/// <param name="Name">Of the layer set, constituent set or material.</param>
/// <param name="Layers">In the order of the set; a single material is one layer without thickness.</param>
/// <param name="Offset">OffsetFromReferenceLine of a layer set usage, mm; else 0.</param>
/// <param name="IsPositive">DirectionSense of a layer set usage: layers follow each other along the positive axis.</param>
/// <param name="Axis">LayerSetDirection of a layer set usage, AXIS2 for walls; null for other kinds.</param>
public sealed record IfcMaterialUse(
    IfcMaterialKind Kind, string? Name, ImmutableArray<IfcLayer> Layers, double Offset, bool IsPositive, string? Axis);
