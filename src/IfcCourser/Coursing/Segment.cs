using IfcCourser.Geometry;

namespace IfcCourser.Coursing;

/// <summary>A stretch of a span of one height, to be filled with pieces.</summary>
/// <param name="Box">Its run and height.</param>
/// <param name="Start">What lies at its left end.</param>
/// <param name="End">What lies at its right end.</param>
internal sealed record Segment(ElevationRect Box, SegmentEnd Start, SegmentEnd End);
