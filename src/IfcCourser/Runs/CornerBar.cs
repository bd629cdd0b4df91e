using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Walls;

namespace IfcCourser.Runs;

/// <summary>A corner of a wall and who lists its bar.</summary>
/// <param name="Junction">Index of the junction.</param>
/// <param name="Place">Where it lies on the wall's run.</param>
/// <param name="OtherWall">GlobalId of the other wall.</param>
/// <param name="IsOwner">Whether this wall lists the bar.</param>
/// <param name="Beams">How this wall's bond beams meet the other wall's courses there.</param>
internal sealed record CornerBar(int Junction, JunctionPlace Place, string OtherWall, bool IsOwner, CornerBeams Beams)
{
    /// <summary>Whether the other wall can have cores.</summary>
    public required bool HasCores { get; init; }

    /// <summary>Lintels of the other wall that bear on the corner and that no bar passes, in this wall's elevation.</summary>
    public ImmutableArray<ElevationRect> Lintels { get; init; } = [];
}
