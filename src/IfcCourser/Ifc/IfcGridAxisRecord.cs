using IfcCourser.Geometry;

namespace IfcCourser.Ifc;

/// <summary>A straight axis of an IfcGrid.</summary>
/// <param name="Tag">As written on the grid's bubble.</param>
/// <param name="Family">U, V or W: axes of one family don't cross each other.</param>
/// <param name="From">One end, model axes, mm.</param>
/// <param name="To">The other end, model axes, mm.</param>
public sealed record IfcGridAxisRecord(long StepId, string Tag, char Family, Vector3 From, Vector3 To);
