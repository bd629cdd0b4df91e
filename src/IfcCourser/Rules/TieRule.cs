using IfcCourser.Units;

namespace IfcCourser.Rules;

/// <summary>Flat ties at tied tees: in every n-th bed, or at most this far apart; the closer counts.</summary>
public sealed record TieRule(int EveryNthBed, Length LargestSpacing);
