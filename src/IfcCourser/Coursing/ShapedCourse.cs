using System.Collections.Immutable;
using IfcCourser.Layouts;
using IfcCourser.Rules;
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
    /// <summary>The course with what ends on a slant asks for: the slant runs through one piece only.</summary>
    /// <param name="start">How much shorter one face is at the wall's start; zero where it is square.</param>
    /// <param name="end">The same at its end.</param>
    /// <param name="rules">Least piece and unit.</param>
    public ShapedCourse OnSlants(Length start, Length end, LayoutRules rules)
    {
        var segments = Segments;
        if (start > Length.Zero && segments is [var first, ..] && first.Box.Left == Spans[0].Run.From && Spans[0].StartEdge is EdgeKind.Free or EdgeKind.Wall)
        {
            segments = segments.SetItem(0, first with { Start = first.Start.OnSlant(Least(start, first)) });
        }

        if (end > Length.Zero && segments is [.., var last] && last.Box.Right == Spans[^1].Run.To && Spans[^1].EndEdge is EdgeKind.Free or EdgeKind.Wall)
        {
            segments = segments.SetItem(segments.Length - 1, last with { End = last.End.OnSlant(Least(end, last)) });
        }

        return this with { Segments = segments };

        Length Least(Length shorter, Segment segment) => SegmentEnd.LeastWith(shorter, segment.Box.Width, rules.MinPiece, rules.Catalog.UnitLength);
    }

    /// <summary>The course without any masonry, as where a beam is formed in its place.</summary>
    public ShapedCourse LeftOut() => new(Band, [], [], [], []);
}
