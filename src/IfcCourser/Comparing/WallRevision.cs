using System.Collections.Immutable;
using IfcCourser.Geometry;

namespace IfcCourser.Comparing;

/// <summary>What the new sheet of a changed wall says of the change.</summary>
/// <param name="Mark">Letter or number of the issue, as in its row on the cover.</param>
/// <param name="Areas">Where something is not what it was, in the wall's elevation; none overlaps another.</param>
/// <param name="Changes">Empty for a wall that is new.</param>
public sealed record WallRevision(string Mark, ImmutableArray<ElevationRect> Areas, ImmutableArray<Change> Changes);
