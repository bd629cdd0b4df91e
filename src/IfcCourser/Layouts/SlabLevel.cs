using IfcCourser.Units;

namespace IfcCourser.Layouts;

/// <summary>The level that a storey's first course was given by readings of its slab.</summary>
/// <param name="Storey">Null for walls that no storey holds.</param>
/// <param name="Datum">Underside of the lowest first course, in the heights of the readings.</param>
/// <param name="Raised">Above the designed level; null where the heights of the readings are not the model's.</param>
/// <param name="Remedy">How the slab is brought within the bed's limits, as slab.json names it.</param>
public sealed record SlabLevel(string? Storey, Length Datum, Length? Raised, string Remedy);
