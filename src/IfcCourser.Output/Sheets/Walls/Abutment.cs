using IfcCourser.Layouts;
using IfcCourser.Units;

namespace IfcCourser.Output.Sheets.Walls;

/// <summary>A wall that stands against the face of this one.</summary>
/// <param name="From">Its near face along this wall's run.</param>
/// <param name="To">Its far face.</param>
/// <param name="IsBefore">On the viewer's side of this wall.</param>
internal sealed record Abutment(WallLayout Wall, Length From, Length To, bool IsBefore);
