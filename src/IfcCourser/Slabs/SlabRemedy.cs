namespace IfcCourser.Slabs;

/// <summary>A way to bring a first course into line, and what it takes.</summary>
/// <param name="Raised">What the course stands above its designed level, mm; negative below.</param>
/// <param name="Depth">The most that is trimmed, ground or filled in one place, or that a unit is higher or lower, mm.</param>
/// <param name="Area">That is worked on, mm2.</param>
/// <param name="Volume">That is taken off, filled or exchanged, mm3.</param>
/// <param name="Mortar">Of the bed, mm3.</param>
/// <param name="Blocks">That are trimmed or exchanged.</param>
/// <param name="IsPossible">Whether it brings the bed within its limits everywhere.</param>
/// <param name="Effort">Litres weighted by what they cost to move; see <see cref="SlabRemedies"/>.</param>
public sealed record SlabRemedy(RemedyKind Kind, double Raised, double Depth, double Area, double Volume, double Mortar, int Blocks, bool IsPossible, double Effort);
