using System.Collections.Immutable;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Layouts;

/// <summary>A junction as built.</summary>
/// <param name="Walls">GlobalIds.</param>
/// <param name="ThroughOdd">GlobalId of the wall that runs through in odd courses.</param>
/// <param name="ThroughEven">GlobalId of the wall that runs through in even courses.</param>
/// <param name="Ties">Heights of tied beds above the abutting wall's base.</param>
public sealed record JunctionLayout(
    string Id,
    JunctionKind Kind,
    ImmutableArray<string> Walls,
    JunctionHow How,
    string ThroughOdd,
    string ThroughEven,
    ImmutableArray<Length> Ties);
