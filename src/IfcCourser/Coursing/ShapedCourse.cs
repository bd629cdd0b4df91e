using System.Collections.Immutable;
using IfcCourser.Layouts;
using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>Where masonry stands in a course before its pieces are known.</summary>
/// <param name="Band">The course's height.</param>
/// <param name="Spans">From left to right.</param>
/// <param name="Segments">What the spans are filled by, from left to right; below a sill and above a head with heights of their own.</param>
/// <param name="EdgeJoints">Centres of the joints against walls' faces and lintels' ends.</param>
/// <param name="JambJoints">Centres of the joints between pieces that the jambs of an opening in mid-course ask for.</param>
internal sealed record ShapedCourse(
    CourseBand Band,
    ImmutableArray<Span> Spans,
    ImmutableArray<Segment> Segments,
    ImmutableArray<Length> EdgeJoints,
    ImmutableArray<Length> JambJoints)
{
    /// <summary>The course without any masonry, as where a beam is formed in its place.</summary>
    public ShapedCourse LeftOut() => new(Band, [], [], [], []);
}
