using IfcCourser.Geometry;

namespace IfcCourser.Layouts;

/// <summary>A stretch of a course where masonry stands, and what its two ends stand against.</summary>
public readonly record struct Span(Interval Run, EdgeKind StartEdge, EdgeKind EndEdge);
