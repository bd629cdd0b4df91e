using IfcCourser.Units;

namespace IfcCourser.Output.Sheets.Walls;

/// <summary>Stretches of courses whose head joints are alike and not of the nominal size.</summary>
/// <param name="Mean">Of the stretch's joints, to the step of <see cref="HeadJoints"/>.</param>
/// <param name="From">Start of the stretch along the run, or null where it is the whole course.</param>
/// <param name="Courses">Numbers, from the bottom up.</param>
internal sealed record HeadJointRun(Length Mean, Length? From, ImmutableArray<int> Courses);
