using System.Collections.Immutable;
using IfcCourser.Findings;

namespace IfcCourser.Walls;

/// <summary>Every wall of a model: those to be coursed, those skipped, and how they meet.</summary>
public sealed record WallModel
{
    /// <summary>In the order of their GlobalIds, then of their instance numbers.</summary>
    public required ImmutableArray<Wall> Walls { get; init; }

    public required ImmutableArray<SkippedWall> Skipped { get; init; }

    /// <summary>Ordered by first and second wall.</summary>
    public required ImmutableArray<Junction> Junctions { get; init; }

    public required ImmutableArray<Finding> Findings { get; init; }

    /// <summary>What the walls are set out from.</summary>
    public Site Site { get; init; } = Site.None;
}
