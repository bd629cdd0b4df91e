using IfcCourser.Geometry;

namespace IfcCourser.Reinforcement;

/// <summary>A rule's demand for a bar somewhere in a range of the run.</summary>
/// <param name="Range">Where the bar's centre may stand.</param>
/// <param name="Heights">The height that asks for it; decides which stretch of the wall the bar takes.</param>
/// <param name="Why">end, corner, jamb, movement-joint or spacing.</param>
/// <param name="Junction">Index of the corner whose bar it is; else null.</param>
internal sealed record BarDemand(Interval Range, Interval Heights, string Why, int? Junction = null);
