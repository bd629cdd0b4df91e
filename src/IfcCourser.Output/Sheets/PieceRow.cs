using IfcCourser.Layouts;

namespace IfcCourser.Output.Sheets;

/// <summary>A row of a piece schedule.</summary>
/// <param name="Example">One of the pieces; they are all alike.</param>
public sealed record PieceRow(string Mark, Piece Example, int Count);
