using System.Collections.Immutable;
using IfcCourser.Geometry;

namespace IfcCourser.Slabs;

/// <summary>A reading in the model's axes.</summary>
/// <param name="Lines">Of the file: several where a place was read more than once.</param>
/// <param name="Point">Its number or name; may be empty.</param>
/// <param name="Plan">Model axes, mm.</param>
/// <param name="Height">In the heights of the readings, mm.</param>
public sealed record PlacedReading(ImmutableArray<int> Lines, string Point, Vector2 Plan, double Height);
