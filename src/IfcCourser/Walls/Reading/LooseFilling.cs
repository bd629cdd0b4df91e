using IfcCourser.Geometry;
using IfcCourser.Ifc;

namespace IfcCourser.Walls.Reading;

/// <summary>A door or window that stands in a wall without an opening.</summary>
/// <param name="Record">The door or window.</param>
/// <param name="Box">Where it stands in the elevation, along the run and up, mm.</param>
public sealed record LooseFilling(IfcFillingRecord Record, Rect Box);
