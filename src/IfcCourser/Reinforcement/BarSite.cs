using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Reinforcement;

/// <summary>A wall as its bars find it.</summary>
/// <param name="Wall">The wall.</param>
/// <param name="Openings">As placed.</param>
/// <param name="Lintels">Over them.</param>
/// <param name="MovementJoints">That divide it.</param>
/// <param name="Corners">Where it turns into other walls.</param>
/// <param name="Tees">Where walls abut, from face to face.</param>
/// <param name="InLine">Places of the run where a bar of the wall under it stands.</param>
internal sealed record BarSite(
    Wall Wall,
    ImmutableArray<OpeningLayout> Openings,
    ImmutableArray<Lintel> Lintels,
    ImmutableArray<MovementJoint> MovementJoints,
    ImmutableArray<CornerPlace> Corners,
    ImmutableArray<Interval> Tees,
    ImmutableArray<Length> InLine)
{
    /// <summary>Openings that courses stop at.</summary>
    public IEnumerable<ElevationRect> Voids => Openings.Where(opening => opening.Interrupts).Select(opening => opening.Placed);

    /// <summary>Heights of the courses: a bar stands where some course is, not in the mortar over the last. Empty: courses everywhere.</summary>
    public ImmutableArray<Interval> Courses { get; init; } = [];

    /// <summary>Lintels of walls that share a corner, where they bear on it.</summary>
    public ImmutableArray<ElevationRect> LintelsInCorners { get; init; } = [];

    /// <summary>Lintels of its own that no bar passes.</summary>
    public IEnumerable<ElevationRect> OwnBarriers => Lintels.Where(lintel => lintel.Kind != Catalogs.LintelKind.Trough)
        .Select(lintel => new ElevationRect(lintel.From, lintel.To, lintel.Bottom, lintel.Top));

    /// <summary>Lintels that no bar passes.</summary>
    public IEnumerable<ElevationRect> Barriers => OwnBarriers.Concat(LintelsInCorners);
}
