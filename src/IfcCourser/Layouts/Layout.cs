using System.Collections.Immutable;
using IfcCourser.Findings;
using IfcCourser.Rules;
using IfcCourser.Walls;

namespace IfcCourser.Layouts;

/// <summary>Everything a run decided; all outputs are written from it and compute nothing of their own.</summary>
public sealed record Layout
{
    public required ModelFacts Model { get; init; }

    public required LayoutRules Rules { get; init; }

    /// <summary>One for each coursed wall, in the order of their GlobalIds, then of their instance numbers.</summary>
    public required ImmutableArray<WallLayout> Walls { get; init; }

    /// <summary>The coursed walls of each storey, the lowest storey first; those that no storey holds have a null key.</summary>
    public IEnumerable<IGrouping<string?, WallLayout>> Storeys =>
        Walls.GroupBy(wall => wall.Identity.Storey, StringComparer.Ordinal).OrderBy(storey => storey.Min(wall => wall.Frame.Origin.Z));

    public required ImmutableArray<SkippedWall> Skipped { get; init; }

    /// <summary>GlobalIds of the walls, counted as <see cref="WallEnd.With"/> counts them.</summary>
    public ImmutableArray<string> WallIds { get; init; } = [];

    public required ImmutableArray<JunctionLayout> Junctions { get; init; }

    /// <summary>Vertical bars to order, mark by mark.</summary>
    public ImmutableArray<BarScheduleRow> BarSchedule { get; init; } = [];

    /// <summary>How bars are set out before slabs are poured.</summary>
    public SetOut SetOut { get; init; } = SetOut.None;

    /// <summary>What is to be ordered; null where nobody asked for it.</summary>
    public Order? Order { get; init; }

    /// <summary>What the office says of the job.</summary>
    public JobFacts Job { get; init; } = JobFacts.None;

    /// <summary>Levels that first courses were given by readings, a storey once.</summary>
    public ImmutableArray<SlabLevel> SlabLevels { get; init; } = [];

    /// <summary>Where slabs are read before the first course is set, by number.</summary>
    public ImmutableArray<ShootingPoint> ShootingList { get; init; } = [];

    /// <summary>What the walls are set out from.</summary>
    public Site Site { get; init; } = Site.None;

    /// <summary>Findings of the model as a whole.</summary>
    public required ImmutableArray<Finding> Findings { get; init; }
}
