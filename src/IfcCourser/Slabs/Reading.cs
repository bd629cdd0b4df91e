using IfcCourser.Geometry;

namespace IfcCourser.Slabs;

/// <summary>A row of a readings file.</summary>
/// <param name="Line">In the file, from 1.</param>
/// <param name="Point">Its number or name; may be empty.</param>
/// <param name="Plan">In the file's own axes, mm.</param>
/// <param name="Height">In the file's own heights, mm; null where none was read.</param>
/// <param name="Wall">GlobalId or name; null where the row names none.</param>
/// <param name="Core">Id of a core; null where the row names none.</param>
public sealed record Reading(int Line, string Point, ReadingCode Code, Vector2 Plan, double? Height, string? Wall, string? Core);
