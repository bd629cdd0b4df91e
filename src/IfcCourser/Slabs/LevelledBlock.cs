namespace IfcCourser.Slabs;

/// <summary>A block of the first course as it stands.</summary>
/// <param name="Off">Above the level of the course, mm; negative below; zero where it was not read.</param>
public sealed record LevelledBlock(FirstCourseBlock Block, double Off, LevelWork Work);
