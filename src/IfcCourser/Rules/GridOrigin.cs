using IfcCourser.Units;

namespace IfcCourser.Rules;

/// <summary>A point in plan, in model axes.</summary>
public readonly record struct GridOrigin(Length X, Length Y);
