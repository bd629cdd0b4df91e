using IfcCourser.Units;

namespace IfcCourser.Rules;

/// <summary>Where movement joints divide walls into panels; distances along the run, to a joint's faces.</summary>
/// <param name="Walls">Which walls the rule divides.</param>
/// <param name="LongestPanel">From joint to joint or to a wall's end; the catalog's counts where shorter.</param>
/// <param name="AtCornerPercent">Share of the longest panel that one may have between a corner and a joint or a free end.</param>
/// <param name="Width">Of a joint.</param>
/// <param name="FromJamb">Least distance from an opening.</param>
/// <param name="HeightStep">Steps of a wall's top from this height on have a joint.</param>
/// <param name="ThicknessStep">Walls in one line whose thicknesses differ by this or more have a joint between them.</param>
/// <param name="WideOpenings">Openings that ask for a joint at each side; null where none do.</param>
public sealed record MovementJointRule(
    JointedWalls Walls,
    Length LongestPanel,
    int AtCornerPercent,
    Length Width,
    Length FromJamb,
    Length HeightStep,
    Length ThicknessStep,
    WideOpeningRule? WideOpenings);
