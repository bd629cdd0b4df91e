using IfcCourser.Units;

namespace IfcCourser.Walls;

/// <summary>Two walls that meet over a common height.</summary>
/// <param name="First">Index of a wall in <see cref="WallModel.Walls"/>; at a tee the host.</param>
/// <param name="Second">Index of the other; at a tee the abutting wall.</param>
/// <param name="FirstPlace">Where on the first wall's run.</param>
/// <param name="SecondPlace">Where on the second wall's run.</param>
/// <param name="FirstShare">How much of the first wall's run the second takes, measured along the run.</param>
/// <param name="SecondShare">How much of the second wall's run the first takes.</param>
/// <param name="IsSquare">Within half a degree of a right angle.</param>
public sealed record Junction(
    JunctionKind Kind,
    int First,
    int Second,
    JunctionPlace FirstPlace,
    JunctionPlace SecondPlace,
    Length FirstShare,
    Length SecondShare,
    bool IsSquare);
