using IfcCourser.Units;

namespace IfcCourser.Rules;

/// <summary>How far cast-in bars usually stand from a slab's edge: advice, no demand.</summary>
/// <param name="AtCorners">Of a corner's bar from both edges.</param>
/// <param name="Elsewhere">Of other bars.</param>
/// <param name="About">Differences up to this go unsaid.</param>
/// <param name="Within">Bars further from every edge than this stand in the slab's field.</param>
public sealed record EdgeDistanceRule(Length AtCorners, Length Elsewhere, Length About, Length Within);
