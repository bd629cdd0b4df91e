using IfcCourser.Units;

namespace IfcCourser.Layouts;

/// <summary>An inspection notch at the foot of a core: cut from one face of a first-course piece.</summary>
/// <param name="Face">left or right, seen along the wall's direction.</param>
/// <param name="From">Start along the wall's run.</param>
/// <param name="To">End along the wall's run.</param>
/// <param name="Height">Above the piece's underside.</param>
public sealed record Notch(string Face, Length From, Length To, Length Height);
