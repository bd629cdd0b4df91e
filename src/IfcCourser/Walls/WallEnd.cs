using System.Collections.Immutable;

namespace IfcCourser.Walls;

/// <summary>What stands at one end of a wall.</summary>
/// <param name="Kind">What the end meets.</param>
/// <param name="With">Indices, in <see cref="WallModel.Walls"/>, of the walls met.</param>
public sealed record WallEnd(EndKind Kind, ImmutableArray<int> With)
{
    public static readonly WallEnd Free = new(EndKind.Free, []);
}
