using IfcCourser.Units;

namespace IfcCourser.Layouts;

/// <summary>Distance between two control points.</summary>
/// <param name="From">Number of a point.</param>
/// <param name="To">Number of the other.</param>
public sealed record Diagonal(int From, int To, Length Length);
