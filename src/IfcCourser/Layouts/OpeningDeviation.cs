using IfcCourser.Units;

namespace IfcCourser.Layouts;

/// <summary>How far the edges of a wanted masonry opening are from the lines they belong on.</summary>
/// <param name="Left">The left jamb's way to its nearest module line; negative to the left.</param>
/// <param name="Right">The right jamb's.</param>
/// <param name="Sill">The sill's way to the nearest top of a course; null where it lies on or under the wall's base.</param>
/// <param name="Head">The head's way up to the next course's underside; null where no course stands over it.</param>
public sealed record OpeningDeviation(Length Left, Length Right, Length? Sill, Length? Head);
