using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>One of two segments to be filled together.</summary>
/// <param name="Left">Where it starts on the wall.</param>
/// <param name="Segment">What to fill: upright at both ends.</param>
/// <param name="Weight">How often what it costs alone counts.</param>
internal readonly record struct PairTask(Length Left, SegmentTask Segment, int Weight);
