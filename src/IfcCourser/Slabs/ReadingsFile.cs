using System.Collections.Immutable;

namespace IfcCourser.Slabs;

/// <summary>A readings file, its lengths in mm.</summary>
/// <param name="File">Path as the user gave it.</param>
/// <param name="NotShot">Rows without a reading: points of the list that nobody shot.</param>
/// <param name="OtherColumns">Columns that mean nothing here.</param>
public sealed record ReadingsFile(
    string File, ReadingAxes Axes, ImmutableArray<Reading> Readings, int NotShot, ImmutableArray<string> OtherColumns);
