using IfcCourser.Units;

namespace IfcCourser.Layouts;

/// <summary>Where a bar of a bond beam goes on in the next.</summary>
/// <param name="Bar">From 1 at the left face.</param>
/// <param name="From">Start along the wall's run.</param>
/// <param name="To">End along the wall's run.</param>
public readonly record struct BarLap(int Bar, Length From, Length To);
