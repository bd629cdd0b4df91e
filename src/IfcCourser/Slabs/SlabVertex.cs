using IfcCourser.Geometry;

namespace IfcCourser.Slabs;

/// <summary>A place with a value over it, mm.</summary>
public readonly record struct SlabVertex(Vector2 Plan, double Value);
