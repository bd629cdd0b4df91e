using System.Collections.Immutable;
using IfcCourser.Walls;

namespace IfcCourser.Comparing;

/// <summary>A wall that is in both layouts, and not the same.</summary>
/// <param name="Cost">Pieces that it takes more than before; less where negative.</param>
public sealed record WallChange(WallIdentity Old, WallIdentity New, ImmutableArray<Change> Changes, PieceCounts Cost);
