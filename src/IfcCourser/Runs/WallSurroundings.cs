using System.Collections.Immutable;
using IfcCourser.Coursing;
using IfcCourser.Geometry;
using IfcCourser.Panels;
using IfcCourser.Units;

namespace IfcCourser.Runs;

/// <summary>What the walls that a wall meets mean for its layout.</summary>
/// <param name="Taken">What they take of a course, joints included.</param>
/// <param name="Beyond">How far a course runs on beyond the wall's start and end.</param>
/// <param name="Corners">The wall's corners, with the walls that share their bars.</param>
/// <param name="CrossedBy">What people call the walls that run through this one.</param>
/// <param name="Met">The walls themselves.</param>
/// <param name="BarsBelow">Places of the run over bars of the wall below.</param>
internal sealed record WallSurroundings(
    Func<CourseBand, ImmutableArray<ElevationRect>> Taken,
    Func<CourseBand, (Length Start, Length End)> Beyond,
    ImmutableArray<CornerBar> Corners,
    ImmutableArray<string> CrossedBy,
    ImmutableArray<MetWall> Met,
    ImmutableArray<Length> BarsBelow);
