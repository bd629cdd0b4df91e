using System.Collections.Immutable;

namespace IfcCourser.Slabs;

/// <summary>The readings of one storey in the model's axes.</summary>
/// <param name="Levels">Of the slab, or of the first course's top; places read twice are one.</param>
/// <param name="Bars">As built.</param>
/// <param name="Fit">Of control points; null where the file's axes are known.</param>
/// <param name="Zero">Height of the readings at the model's zero, mm; of a bench mark, so that the slab's middle reading lies as designed.</param>
/// <param name="Elsewhere">Rows that name a wall of another storey.</param>
public sealed record PlacedReadings(
    ImmutableArray<PlacedReading> Levels, ImmutableArray<PlacedBar> Bars, ControlFit? Fit, ReadingHeights Heights, double Zero, int Elsewhere);
