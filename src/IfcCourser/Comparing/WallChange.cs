using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Walls;

namespace IfcCourser.Comparing;

/// <summary>A wall that is in both layouts, and not the same.</summary>
/// <param name="Areas">Where something laid is not what it was, in the newer wall's elevation; the whole wall where the older one was not laid out, none where the newer is not.</param>
/// <param name="Cost">Pieces that it takes more than before; less where negative.</param>
public sealed record WallChange(WallIdentity Old, WallIdentity New, ImmutableArray<Change> Changes, ImmutableArray<ElevationRect> Areas, PieceCounts Cost);
