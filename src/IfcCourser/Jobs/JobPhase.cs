using System.Collections.Immutable;
using IfcCourser.Walls;

namespace IfcCourser.Jobs;

/// <summary>A delivery as the office plans it: the walls of some storeys, and some walls.</summary>
/// <param name="Storeys">Names of storeys, with * and ?.</param>
/// <param name="Walls">GlobalIds, or names with * and ?.</param>
public sealed record JobPhase(string Name, ImmutableArray<string> Storeys, ImmutableArray<string> Walls)
{
    public bool Includes(WallIdentity wall) =>
        (!Storeys.IsEmpty && new WallSelection { Storeys = Storeys }.Includes(wall)) || (!Walls.IsEmpty && new WallSelection { Only = Walls }.Includes(wall));
}
