using System.Collections.Immutable;
using IfcCourser.Geometry;

namespace IfcCourser.Coursing;

/// <summary>Pieces that fill a segment, as intervals from its start, and what the filling costs.</summary>
internal sealed record SegmentFill(ImmutableArray<Interval> Pieces, long Cost);
