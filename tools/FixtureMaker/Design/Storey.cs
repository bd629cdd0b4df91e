using System.Collections.Immutable;

namespace FixtureMaker.Design;

/// <summary>A storey with its walls and the slab they stand on. <see cref="SlabOutline"/> is in plan, empty
/// where there is no slab; the slab's top is the storey's level.</summary>
internal sealed record Storey(
    string Name,
    double Elevation,
    double SlabThickness,
    ImmutableArray<Point> SlabOutline,
    ImmutableArray<Wall> Walls);
