namespace IfcCourser.Coursing;

/// <summary>Walls that touch and share one set of course lines.</summary>
/// <param name="Name">G1, G2, ... in the order of their first walls.</param>
/// <param name="Lines">The lines, line 0 under the group's lowest first course.</param>
internal sealed record LevelGroup(string Name, CourseLines Lines);
