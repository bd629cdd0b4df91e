using System.Collections.Immutable;
using IfcCourser.Walls;

namespace IfcCourser.Comparing;

/// <summary>A wall that is in both layouts, and not the same.</summary>
public sealed record WallChange(WallIdentity Old, WallIdentity New, ImmutableArray<Change> Changes);
