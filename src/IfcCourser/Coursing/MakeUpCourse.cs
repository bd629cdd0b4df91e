using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>Courses of another height than the unit's that go round all walls of a group: one of a unit the catalog lists, or one or two rips.</summary>
/// <param name="Line">The line that carries the first.</param>
/// <param name="Height">Of each.</param>
/// <param name="Courses">How many follow each other.</param>
internal readonly record struct MakeUpCourse(int Line, Length Height, int Courses = 1)
{
    /// <summary>How many of them lie below a line.</summary>
    public int Below(int line) => Math.Clamp(line - Line, 0, Courses);

    /// <summary>The line over them.</summary>
    public int LineAbove => Line + Courses;
}
