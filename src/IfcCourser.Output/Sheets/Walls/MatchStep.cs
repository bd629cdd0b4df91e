namespace IfcCourser.Output.Sheets.Walls;

/// <summary>A match line within a course, real millimetres of the elevation.</summary>
internal readonly record struct MatchStep(double Bottom, double Top, double S);
