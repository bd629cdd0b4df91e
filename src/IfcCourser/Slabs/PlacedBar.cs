using IfcCourser.Geometry;

namespace IfcCourser.Slabs;

/// <summary>A bar as measured.</summary>
/// <param name="Line">Of the file.</param>
/// <param name="Wall">GlobalId or name of its wall, or null.</param>
/// <param name="Core">Id of its core, or null where a point's number tells which bar it is.</param>
/// <param name="Plan">Its middle, model axes, mm.</param>
public sealed record PlacedBar(int Line, string Point, string? Wall, string? Core, Vector2 Plan);
