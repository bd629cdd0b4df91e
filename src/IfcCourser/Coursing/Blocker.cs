using IfcCourser.Geometry;
using IfcCourser.Layouts;

namespace IfcCourser.Coursing;

/// <summary>A stretch of a course that no masonry of this wall takes, joints against it included.</summary>
/// <param name="Run">From where masonry before it ends to where masonry behind it begins.</param>
/// <param name="Left">What masonry before it stands against.</param>
/// <param name="Right">What masonry behind it stands against.</param>
internal readonly record struct Blocker(Interval Run, EdgeKind Left, EdgeKind Right)
{
    public Blocker(Interval run, EdgeKind edge)
        : this(run, edge, edge)
    {
    }
}
