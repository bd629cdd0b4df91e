using IfcCourser.Units;

namespace IfcCourser.Walls;

/// <summary>Where a junction lies on a wall's run.</summary>
/// <param name="Side">At the start, at the end or along the run.</param>
/// <param name="From">Start of the stretch of the run where the other wall stands (at a corner: the shared corner).</param>
/// <param name="To">End of that stretch.</param>
/// <param name="Slant">Where the walls are not square: place of the other wall on the right face less that on the left face.</param>
public readonly record struct JunctionPlace(JunctionSide Side, Length From, Length To, Length Slant = default);
