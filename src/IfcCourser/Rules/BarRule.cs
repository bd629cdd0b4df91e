using IfcCourser.Units;

namespace IfcCourser.Rules;

/// <summary>Where vertical bars must stand; distances are to the bar's centre.</summary>
/// <param name="FromEnd">From a wall's end.</param>
/// <param name="FromJamb">From an opening's jamb; a solid lintel's bearing is passed over.</param>
/// <param name="FromMovementJoint">From each face of a movement joint.</param>
/// <param name="LargestSpacing">Between bars.</param>
/// <param name="OpeningsFrom">Openings smaller than this both ways need no bars.</param>
/// <param name="Bar">Bar designation in the tables.</param>
public sealed record BarRule(
    Interval<Length> FromEnd, Interval<Length> FromJamb, Interval<Length> FromMovementJoint, Length LargestSpacing, Length OpeningsFrom, string Bar);
