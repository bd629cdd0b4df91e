using IfcCourser.Units;

namespace IfcCourser.Rules;

/// <summary>Openings of this width or more want a movement joint at each side, no further from the jamb than this.</summary>
public sealed record WideOpeningRule(Length From, Length Within);
