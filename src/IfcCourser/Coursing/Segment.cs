using IfcCourser.Geometry;

namespace IfcCourser.Coursing;

/// <summary>A stretch of a span of one height, to be filled with pieces.</summary>
/// <param name="Box">Its run and height.</param>
/// <param name="StartCost">Cost of a cut piece at its start.</param>
/// <param name="EndCost">Cost of a cut piece at its end.</param>
internal sealed record Segment(ElevationRect Box, long StartCost, long EndCost);
