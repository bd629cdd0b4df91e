using IfcCourser.Geometry;
using IfcCourser.Layouts;

namespace IfcCourser.Coursing;

/// <summary>A stretch of a course that no masonry of this wall takes, joints against it included.</summary>
internal readonly record struct Blocker(Interval Run, EdgeKind Edge);
