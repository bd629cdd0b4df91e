using IfcCourser.Units;

namespace IfcCourser.Rules;

/// <summary>How much larger than the modelled void the masonry opening must be, per side, at the head and at the sill.</summary>
public sealed record OpeningAllowances(Length DoorSide, Length DoorHead, Length WindowSide, Length WindowHead, Length WindowSill);
