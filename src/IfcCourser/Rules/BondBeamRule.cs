using System.Collections.Immutable;
using IfcCourser.Units;

namespace IfcCourser.Rules;

/// <summary>Where walls must have bond beams: horizontal bars in grouted trough units.</summary>
/// <param name="Walls">Which walls have them.</param>
/// <param name="LeastWall">Thinner walls have none; nominal.</param>
/// <param name="Tops">Which tops of walls end with one.</param>
/// <param name="TopWithin">A beam whose top lies this far or less under a wall's top counts as the top's.</param>
/// <param name="Heights">Heights above a wall's base at which a course must be one: the course that holds the height.</param>
/// <param name="LargestSpacing">From a wall's base to the first beam's middle and from beam to beam; null where nothing limits it.</param>
/// <param name="Openings">Beams over and under openings; null where none are asked for.</param>
/// <param name="Bars">What lies in each.</param>
public sealed record BondBeamRule(
    BeamedWalls Walls,
    Length LeastWall,
    BeamedTops Tops,
    Length TopWithin,
    ImmutableArray<Length> Heights,
    Length? LargestSpacing,
    OpeningBeamRule? Openings,
    BeamBars Bars);
