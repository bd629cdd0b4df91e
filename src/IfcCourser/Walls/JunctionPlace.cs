using IfcCourser.Units;

namespace IfcCourser.Walls;

/// <summary>Where a junction lies on a wall's run.</summary>
/// <param name="Side">At the start, at the end or along the run.</param>
/// <param name="From">Start of the stretch of the run where the other wall stands (at a corner: the shared corner).</param>
/// <param name="To">End of that stretch.</param>
public readonly record struct JunctionPlace(JunctionSide Side, Length From, Length To);
