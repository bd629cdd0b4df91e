using System.Collections.Immutable;
using IfcCourser.Geometry;

namespace IfcCourser.Reinforcement;

/// <summary>A stretch of height that a bar can take at a place.</summary>
/// <param name="Heights">From foot to top.</param>
/// <param name="Cells">Indices of the first and last height cell that it reaches into.</param>
/// <param name="Serves">Indices of the demands that a bar here meets.</param>
/// <param name="MayStand">Whether a bar may stand here: for a demand, or far enough from edges.</param>
internal sealed record BarSpot(Interval Heights, (int First, int Last) Cells, ImmutableArray<int> Serves, bool MayStand);
