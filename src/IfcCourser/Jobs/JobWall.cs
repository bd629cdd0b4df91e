using System.Collections.Immutable;
using IfcCourser.Units;

namespace IfcCourser.Jobs;

/// <summary>What the walls of a name take that others don't.</summary>
/// <param name="Wall">GlobalId, or a name with * and ?.</param>
/// <param name="MovementJoints">Middles of joints, along the wall from its start.</param>
public sealed record JobWall(string Wall, ImmutableArray<Length> MovementJoints);
