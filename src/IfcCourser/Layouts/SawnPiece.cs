using IfcCourser.Units;

namespace IfcCourser.Layouts;

/// <summary>A piece as it comes off the saw.</summary>
/// <param name="Wall">GlobalId.</param>
/// <param name="Course">Number in that wall.</param>
/// <param name="Piece">Id in that wall.</param>
/// <param name="Length">Of the rectangle it is cut out of.</param>
/// <param name="Height">Of that rectangle.</param>
public sealed record SawnPiece(string Wall, int Course, string Piece, Length Length, Length Height);
