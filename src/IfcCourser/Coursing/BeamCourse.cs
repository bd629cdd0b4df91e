using System.Collections.Immutable;

namespace IfcCourser.Coursing;

/// <summary>A course that is a bond beam over the wall's length.</summary>
/// <param name="Line">The course's line.</param>
/// <param name="Why">top, corner, height or spacing.</param>
internal sealed record BeamCourse(int Line, ImmutableArray<string> Why);
