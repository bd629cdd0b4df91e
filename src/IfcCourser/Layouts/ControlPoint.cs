using IfcCourser.Geometry;
using IfcCourser.Units;

namespace IfcCourser.Layouts;

/// <summary>A point that is set out and checked before bars.</summary>
/// <param name="Number">Unique in the layout, bars included.</param>
/// <param name="Tag">Of the grid lines that cross; else empty.</param>
/// <param name="Wall">GlobalId of a wall whose corner it is; null for others.</param>
/// <param name="Point">Model axes, mm.</param>
/// <param name="X">In the storey's axes.</param>
/// <param name="Y">In the storey's axes.</param>
public sealed record ControlPoint(int Number, ControlPointKind Kind, string Tag, string? Wall, Vector3 Point, Length X, Length Y);
