using IfcCourser.Geometry;

namespace IfcCourser.Runs;

/// <summary>A part of a course that a bond beam's bars can pass.</summary>
/// <param name="Run">Along the wall.</param>
/// <param name="Piece">Id of the piece; null for a lintel or a formed stretch.</param>
/// <param name="IsFormedLintel">A beam formed over an opening, whose concrete is its own.</param>
internal readonly record struct BeamPart(Interval Run, string? Piece, bool IsFormedLintel = false);
