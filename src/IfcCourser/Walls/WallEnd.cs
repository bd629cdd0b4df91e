using System.Collections.Immutable;
using IfcCourser.Units;

namespace IfcCourser.Walls;

/// <summary>What stands at one end of a wall.</summary>
/// <param name="Kind">What the end meets.</param>
/// <param name="With">Indices, in <see cref="WallModel.Walls"/>, of the walls met.</param>
/// <param name="Slant">
/// Where the walls met are not square: place of the end on the right face less that on the left face. The run reaches as far
/// as the longer face.
/// </param>
public sealed record WallEnd(EndKind Kind, ImmutableArray<int> With, Length Slant = default)
{
    public static readonly WallEnd Free = new(EndKind.Free, []);
}
