using System.Collections.Immutable;
using IfcCourser.Geometry;

namespace IfcCourser.Layouts;

/// <summary>A closed line of edges in plan.</summary>
/// <param name="Kind">A slab's edge, or the outer faces of walls.</param>
/// <param name="Name">Names of the slabs, or null.</param>
/// <param name="Top">Of the slab, or of the walls' base: model axes, mm.</param>
/// <param name="Loop">Counter-clockwise, model axes, mm.</param>
public sealed record SetOutOutline(ControlLineKind Kind, string? Name, double Top, ImmutableArray<Vector2> Loop);
