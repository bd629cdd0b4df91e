using System.Collections.Immutable;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Jobs;

/// <summary>What the walls of a name take that others don't.</summary>
/// <param name="Wall">GlobalId, or a name with * and ?.</param>
/// <param name="MovementJoints">Middles of joints, along the wall from its start.</param>
/// <param name="Embeds">Built in for others.</param>
public sealed record JobWall(string Wall, ImmutableArray<Length> MovementJoints, ImmutableArray<GivenEmbed> Embeds)
{
    public bool IsOf(WallIdentity wall) => new WallSelection { Only = [Wall] }.Includes(wall);
}
