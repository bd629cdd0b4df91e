using IfcCourser.Units;

namespace IfcCourser.Geometry;

/// <summary>A point of a wall's elevation: s along the run from its start, z up from the wall's base.</summary>
public readonly record struct ElevationPoint(Length S, Length Z);
