using IfcCourser.Geometry;
using IfcCourser.Units;

namespace IfcCourser.Layouts;

/// <summary>A place where the slab is to be read before the first course is set.</summary>
/// <param name="Number">Unique in the layout, bars and control points included.</param>
/// <param name="Storey">Null for walls that no storey holds.</param>
/// <param name="Wall">GlobalId.</param>
/// <param name="S">Along the wall's run.</param>
/// <param name="T">From its left face: zero, or its thickness.</param>
/// <param name="Point">On the slab as designed, model axes, mm.</param>
public sealed record ShootingPoint(int Number, ShootingPointKind Kind, string? Storey, string Wall, Length S, Length T, Vector3 Point);
