using IfcCourser.Geometry;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Panels;

/// <summary>Another wall as one sees it that it meets.</summary>
/// <param name="Kind">How they meet.</param>
/// <param name="Place">Where on this wall's run.</param>
/// <param name="Thickness">Of the other wall.</param>
/// <param name="Yields">Whether this wall's courses leave the joint between them, not the other's.</param>
/// <param name="Name">What people call the other wall.</param>
/// <param name="Heights">From the other wall's base to its top, over this wall's base.</param>
internal readonly record struct MetWall(JunctionKind Kind, JunctionPlace Place, Length Thickness, bool Yields, string Name, Interval Heights);
