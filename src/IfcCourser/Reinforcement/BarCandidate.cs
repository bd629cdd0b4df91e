using System.Collections.Immutable;
using IfcCourser.Units;

namespace IfcCourser.Reinforcement;

/// <summary>A place of the run where bars may stand.</summary>
/// <param name="Spots">From the bottom up.</param>
/// <param name="Asking">The height cells whose masonry asks for bars at the largest spacing.</param>
/// <param name="Closes">Indices of the demands that no place from here on can meet.</param>
/// <param name="IsInLine">A bar of the wall below stands here, or there is none.</param>
internal sealed record BarCandidate(
    Length At, ImmutableArray<BarSpot> Spots, ImmutableArray<bool> Asking, ImmutableArray<int> Closes, bool IsInLine);
