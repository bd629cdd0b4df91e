namespace IfcCourser.Walls;

/// <summary>A name that was looked at to tell masonry from other walls.</summary>
/// <param name="Layer">Number of the layer or part that bears it, from 1; null where it is the whole wall's.</param>
/// <param name="Word">The catalog's word that was found in it; null where none was.</param>
/// <param name="IsMasonry">Whether the word speaks for masonry or rules the name out; null where none was found.</param>
public sealed record NameRead(NameKind Kind, int? Layer, string Name, string? Word, bool? IsMasonry);
