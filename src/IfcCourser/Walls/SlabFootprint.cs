using IfcCourser.Geometry;

namespace IfcCourser.Walls;

/// <summary>A slab seen from above.</summary>
/// <param name="Top">Of its highest point, model axes, mm.</param>
/// <param name="Plan">Model axes, mm.</param>
public sealed record SlabFootprint(string GlobalId, string? Name, double Top, Region Plan);
