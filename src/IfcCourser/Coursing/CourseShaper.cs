using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>
/// Cuts a course's band out of the wall: the outline, less openings, lintels and what neighbouring walls take.
/// Openings that end in mid-course leave lower pieces under the sill or over the head, with joints at the jambs.
/// </summary>
internal sealed class CourseShaper(
    ElevationOutline outline, ImmutableArray<ElevationRect> openings, ImmutableArray<Lintel> lintels, LayoutRules rules)
{
    private readonly Length _joint = rules.Catalog.HeadJoint.Nominal;

    /// <summary>Strips lower, and spans shorter, than this are left to mortar.</summary>
    private readonly Length _leastStrip = rules.Set.PartitionHeadGap;

    private readonly List<ElevationRect> _leftOpen = [];

    /// <summary>What the courses shaped so far leave without masonry because no piece is so small.</summary>
    public IReadOnlyList<ElevationRect> LeftOpen => _leftOpen;

    /// <param name="band">The course.</param>
    /// <param name="taken">What neighbouring walls take of the course, joints included.</param>
    public ShapedCourse Shape(CourseBand band, IEnumerable<Interval> taken)
    {
        var blockers = Blockers(band, taken);
        var spans = ImmutableArray.CreateBuilder<Span>();
        var segments = ImmutableArray.CreateBuilder<Segment>();
        var jambs = ImmutableArray.CreateBuilder<Length>();
        foreach (var part in outline.Within(new ElevationRect(outline.Box.Left, outline.Box.Right, band.Bottom, band.Top)))
        {
            if (part.Box.Height < Length.Min(_leastStrip, band.Height))
            {
                LeaveOpen(part.Box);
                continue;
            }

            foreach (var span in Subtract(new Interval(part.Box.Left, part.Box.Right), blockers))
            {
                if (span.Run.Size < _leastStrip)
                {
                    LeaveOpen(part.Box with { Left = span.Run.From, Right = span.Run.To });
                    continue;
                }

                spans.Add(span);
                Divide(span, part.Box, segments, jambs);
            }

            LeaveStripsOpen(band, part.Box);
        }

        return new ShapedCourse(band, spans.ToImmutable(), segments.ToImmutable(), EdgeJoints(spans), jambs.ToImmutable());
    }

    private List<Blocker> Blockers(CourseBand band, IEnumerable<Interval> taken)
    {
        var blockers = new List<Blocker>();
        blockers.AddRange(taken.Select(run => new Blocker(run, EdgeKind.Wall)));
        blockers.AddRange(lintels
            .Where(lintel => lintel.Bottom < band.Top && lintel.Top > band.Bottom)
            .Select(lintel => new Blocker(new Interval(lintel.From - _joint, lintel.To + _joint), EdgeKind.Lintel)));
        blockers.AddRange(openings
            .Where(opening => opening.Bottom < band.Top && opening.Top > band.Bottom && !LeavesStrip(opening, band.Bottom, band.Top))
            .Select(opening => new Blocker(new Interval(opening.Left, opening.Right), EdgeKind.Jamb)));
        blockers.Sort((a, b) => (a.Run.From, a.Run.To).CompareTo((b.Run.From, b.Run.To)));
        return blockers;
    }

    /// <summary>Strips under a sill or over a head that are too low for a piece.</summary>
    private void LeaveStripsOpen(CourseBand band, ElevationRect part)
    {
        foreach (var opening in openings.Where(opening => opening.Bottom < band.Top && opening.Top > band.Bottom))
        {
            var beside = part with { Left = Length.Max(part.Left, opening.Left), Right = Length.Min(part.Right, opening.Right) };
            foreach (var strip in new[] { beside with { Top = opening.Bottom }, beside with { Bottom = opening.Top } })
            {
                if (strip.Height < _leastStrip)
                {
                    LeaveOpen(strip);
                }
            }
        }
    }

    /// <summary>What is no wider than the joint that stands there anyhow is not worth a word.</summary>
    private void LeaveOpen(ElevationRect rect)
    {
        if (rect.Width > rules.Catalog.HeadJoint.Max && rect.Height > rules.Catalog.BedJoint.Max)
        {
            _leftOpen.Add(rect);
        }
    }

    private bool LeavesStrip(ElevationRect opening, Length bottom, Length top) =>
        opening.Bottom - bottom >= _leastStrip || top - opening.Top >= _leastStrip;

    private static IEnumerable<Span> Subtract(Interval run, List<Blocker> blockers)
    {
        var (from, edge) = (run.From, EdgeKind.Free);
        foreach (var blocker in blockers.Where(blocker => blocker.Run.To > run.From && blocker.Run.From < run.To))
        {
            if (blocker.Run.From > from)
            {
                yield return new Span(new Interval(from, blocker.Run.From), edge, blocker.Edge);
            }

            if (blocker.Run.To > from)
            {
                (from, edge) = (blocker.Run.To, blocker.Edge);
            }
        }

        if (from < run.To)
        {
            yield return new Span(new Interval(from, run.To), edge, EdgeKind.Free);
        }
    }

    /// <summary>Divides a span at the jambs of openings that end within the course.</summary>
    private void Divide(Span span, ElevationRect part, ImmutableArray<Segment>.Builder segments, ImmutableArray<Length>.Builder jambs)
    {
        var (from, cost) = (span.Run.From, CostAt(span.StartEdge));
        foreach (var opening in openings
            .Where(o => o.Bottom < part.Top && o.Top > part.Bottom && o.Left < span.Run.To && o.Right > span.Run.From)
            .Where(o => LeavesStrip(o, part.Bottom, part.Top))
            .OrderBy(o => o.Left))
        {
            var left = Length.Max(opening.Left, from);
            var right = Length.Min(opening.Right, span.Run.To);
            if (left > from)
            {
                segments.Add(new Segment(part with { Left = from, Right = left }, cost, BondWeights.CutAtJamb));
                jambs.Add(left + (_joint / 2));
                left += _joint;
            }

            var goesOn = right < span.Run.To;
            if (goesOn)
            {
                jambs.Add(right - (_joint / 2));
            }

            var strip = part with { Left = left, Right = goesOn ? right - _joint : right };
            AddStrip(strip with { Top = opening.Bottom }, segments);
            AddStrip(strip with { Bottom = opening.Top }, segments);
            (from, cost) = (right, BondWeights.CutAtJamb);
        }

        if (from < span.Run.To)
        {
            segments.Add(new Segment(part with { Left = from, Right = span.Run.To }, cost, CostAt(span.EndEdge)));
        }
    }

    private void AddStrip(ElevationRect strip, ImmutableArray<Segment>.Builder segments)
    {
        if (strip.Height >= _leastStrip && strip.Width > Length.Zero)
        {
            segments.Add(new Segment(strip, 0, 0));
        }
    }

    private static long CostAt(EdgeKind edge) => edge == EdgeKind.Jamb ? BondWeights.CutAtJamb : BondWeights.CutAtEnd;

    private ImmutableArray<Length> EdgeJoints(IEnumerable<Span> spans)
    {
        var joints = ImmutableArray.CreateBuilder<Length>();
        foreach (var span in spans)
        {
            if (span.StartEdge is EdgeKind.Wall or EdgeKind.Lintel)
            {
                joints.Add(span.Run.From - (_joint / 2));
            }

            if (span.EndEdge is EdgeKind.Wall or EdgeKind.Lintel)
            {
                joints.Add(span.Run.To + (_joint / 2));
            }
        }

        return joints.ToImmutable();
    }
}
