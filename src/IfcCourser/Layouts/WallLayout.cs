using System.Collections.Immutable;
using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Layouts;

/// <summary>A coursed wall.</summary>
public sealed record WallLayout
{
    public required Wall Wall { get; init; }

    /// <summary>Name of the set of touching walls that share course lines.</summary>
    public required string Group { get; init; }

    /// <summary>Top of the first course above the wall's base: zero of the mason's heights.</summary>
    public required Length LevelLine { get; init; }

    public required ImmutableArray<OpeningLayout> Openings { get; init; }

    public required ModuleLines ModuleLines { get; init; }

    /// <summary>How its length stands to the module; null where it is not the wall's own: curved, ended on a slant or run on in another wall.</summary>
    public LengthCheck? LengthCheck { get; init; }

    /// <summary>From the bottom up.</summary>
    public required ImmutableArray<Course> Courses { get; init; }

    public required ImmutableArray<Lintel> Lintels { get; init; }

    public required ImmutableArray<Core> Cores { get; init; }

    /// <summary>Cores of walls that share a corner, which stand in this wall's pieces too.</summary>
    public ImmutableArray<CornerCore> CornerCores { get; init; } = [];

    public required ImmutableArray<BondBeam> BondBeams { get; init; }

    public required ImmutableArray<MovementJoint> MovementJoints { get; init; }

    public required ImmutableArray<Embed> Embeds { get; init; }

    public required WallQuantities Quantities { get; init; }

    public required ImmutableArray<Finding> Findings { get; init; }

    public WallIdentity Identity => Wall.Identity;

    public WallFrame Frame => Wall.Frame;

    public ImmutableArray<ElevationPoint> Outline => Wall.Outline;
}
