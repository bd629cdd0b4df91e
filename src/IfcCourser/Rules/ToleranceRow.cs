using IfcCourser.Units;

namespace IfcCourser.Rules;

/// <summary>What two places this far apart may differ by.</summary>
public readonly record struct ToleranceRow(Length Within, Length Limit);
