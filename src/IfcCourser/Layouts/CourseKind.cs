namespace IfcCourser.Layouts;

/// <summary>What a course is.</summary>
public enum CourseKind
{
    /// <summary>The first course, on the levelling bed.</summary>
    Levelling,
    Unit,
    BondBeam,

    /// <summary>Units cut to a lower height.</summary>
    Rip,
}
