using IfcCourser.Layouts;
using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>The height that a course takes in a wall.</summary>
/// <param name="Number">From 1 at the wall's first course.</param>
/// <param name="Line">Number of the group's course line under it: equal in walls that bond with each other.</param>
/// <param name="Bottom">Above the wall's base.</param>
/// <param name="Top">Above the wall's base.</param>
internal readonly record struct CourseBand(int Number, int Line, CourseKind Kind, Length Bottom, Length Top)
{
    public Length Height => Top - Bottom;

    public Length Middle => Bottom + (Height / 2);
}
