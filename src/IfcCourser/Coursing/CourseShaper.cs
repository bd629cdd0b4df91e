using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>
/// Cuts a course's band out of the wall: the outline, less openings, lintels, movement joints and what neighbouring walls take.
/// A sill in mid-course leaves lower pieces under it, with joints at the jambs; a lintel that lies in a part of the course's
/// height is cut out of its pieces.
/// </summary>
internal sealed class CourseShaper(
    ElevationOutline outline, ImmutableArray<ElevationRect> openings, ImmutableArray<Lintel> lintels, ImmutableArray<ElevationRect> movementJoints, LayoutRules rules)
{
    private readonly Length _joint = rules.Catalog.HeadJoint.Nominal;
    private readonly BondAims _aims = rules.Set.Aims;

    /// <summary>Strips lower, and spans shorter, than this are left to mortar.</summary>
    private readonly Length _leastStrip = rules.Set.MortarRest;

    private readonly List<ElevationRect> _leftOpen = [];

    /// <summary>What the courses shaped so far leave without masonry because no piece is so small.</summary>
    public IReadOnlyList<ElevationRect> LeftOpen => _leftOpen;

    /// <param name="band">The course.</param>
    /// <param name="taken">What neighbouring walls take of the course, joints included.</param>
    /// <param name="beyond">How far it runs on beyond the wall's start and end.</param>
    public ShapedCourse Shape(CourseBand band, ImmutableArray<ElevationRect> taken, (Length Start, Length End) beyond)
    {
        bool IsWhole(ElevationRect rect) => rect.Bottom <= band.Bottom && rect.Top >= band.Top;
        var voids = Voids(band, taken.Where(rect => !IsWhole(rect)));
        var blockers = Blockers(band, voids, taken.Where(IsWhole).Select(rect => new Interval(rect.Left, rect.Right)));
        var spans = ImmutableArray.CreateBuilder<Span>();
        var segments = ImmutableArray.CreateBuilder<Segment>();
        var jambs = ImmutableArray.CreateBuilder<Length>();
        foreach (var whole in outline.Within(new ElevationRect(outline.Box.Left, outline.Box.Right, band.Bottom, band.Top)))
        {
            var part = RunningOn(whole.Box, beyond);
            if (part.Height < Length.Min(_leastStrip, band.Height))
            {
                LeaveOpen(part);
                continue;
            }

            foreach (var span in Subtract(new Interval(part.Left, part.Right), blockers))
            {
                if (span.Run.Size < _leastStrip)
                {
                    LeaveOpen(part with { Left = span.Run.From, Right = span.Run.To });
                    continue;
                }

                spans.Add(span);
                Divide(span, part, Rake.Of(whole, band), voids, segments, jambs);
            }

            LeaveGapsOpen(part, voids);

            // Parts above each other, as at a slanted slot, can't both be coursed: the left one goes first.
            blockers.Insert(0, new Blocker(new Interval(outline.Box.Left, part.Right + rules.Catalog.HeadJoint.Max + rules.Catalog.CutGrid), EdgeKind.Wall));
        }

        return new ShapedCourse(band, spans.ToImmutable(), segments.ToImmutable(), EdgeJoints(spans), jambs.ToImmutable());
    }

    /// <summary>What interrupts the course, with what is left of it above and below where the outline has masonry there.</summary>
    private ImmutableArray<BandVoid> Voids(CourseBand band, IEnumerable<ElevationRect> taken)
    {
        var voids = BandVoid.Of(
            new Interval(band.Bottom, band.Top),
            openings.Select(opening => (WithLintel(opening, band), EdgeKind.Jamb)).Concat(Notches(band).Select(notch => (notch, EdgeKind.Free)))
                .Concat(taken.Select(rect => (rect, EdgeKind.Wall))),
            _leastStrip,
            _joint * 2);
        bool HasMasonry(Interval run, Interval height) =>
            outline.Within(new ElevationRect(run.From, run.To, height.From, height.To)).Any(part => part.Box.Height >= _leastStrip);
        return outline.IsRectangle ? voids : [.. voids.Select(v => v with { Strips = [.. v.Strips.Where(strip => HasMasonry(v.Run, strip))] })];
    }

    private ElevationRect RunningOn(ElevationRect part, (Length Start, Length End) beyond) => part with
    {
        Left = part.Left == outline.Box.Left ? part.Left - beyond.Start : part.Left,
        Right = part.Right == outline.Box.Right ? part.Right + beyond.End : part.Right,
    };

    /// <summary>An opening and what of a lintel seated in mid-course lies over it within a band.</summary>
    private ElevationRect WithLintel(ElevationRect opening, CourseBand band) =>
        lintels.Any(lintel => lintel.Bottom == opening.Top && lintel.From <= opening.Left && lintel.To >= opening.Right
            && lintel.Bottom > band.Bottom && lintel.Bottom < band.Top)
            ? opening with { Top = band.Top }
            : opening;

    /// <summary>Rectangular notches of the outline within a band, which are coursed around like openings.</summary>
    private ImmutableArray<ElevationRect> Notches(CourseBand band)
    {
        if (outline.IsRectangle)
        {
            return [];
        }

        var notches = ImmutableArray.CreateBuilder<ElevationRect>();
        foreach (var part in outline.Within(new ElevationRect(outline.Box.Left, outline.Box.Right, band.Bottom, band.Top)))
        {
            if (part.Points is { } points && IsRectilinear(points))
            {
                var steps = points.Select(point => point.S).Distinct().Order().ToList();
                notches.AddRange(steps.Zip(steps.Skip(1), (left, right) => part.Box with { Left = left, Right = right }).SelectMany(NotchesIn));
            }
        }

        return notches.ToImmutable();
    }

    private static bool IsRectilinear(ImmutableArray<ElevationPoint> points) =>
        !points.Where((point, i) => points[(i + 1) % points.Length] is var next && point.S != next.S && point.Z != next.Z).Any();

    private IEnumerable<ElevationRect> NotchesIn(ElevationRect column)
    {
        if (outline.Within(column) is [var masonry])
        {
            var above = column with { Bottom = masonry.Box.Top };
            var below = column with { Top = masonry.Box.Bottom };
            return new[] { above, below }.Where(notch => notch.Height > Length.Zero);
        }

        return [];
    }

    private List<Blocker> Blockers(CourseBand band, ImmutableArray<BandVoid> voids, IEnumerable<Interval> taken)
    {
        var blockers = new List<Blocker>();
        blockers.AddRange(taken.Select(run => new Blocker(run, EdgeKind.Wall)));
        blockers.AddRange(lintels
            .Where(lintel => lintel.Bottom < band.Top && lintel.Top > band.Bottom && !LetInLintel.IsIn(lintel, band, rules))
            .Select(lintel => new Blocker(new Interval(lintel.From - _joint, lintel.To + _joint), EdgeKind.Lintel)));
        blockers.AddRange(voids.Where(v => v.Strips.IsEmpty).Select(v => new Blocker(v.Run, v.Left, v.Right)));
        blockers.AddRange(movementJoints
            .Where(joint => joint.Bottom < band.Top && joint.Top > band.Bottom)
            .Select(joint => new Blocker(new Interval(joint.Left, joint.Right), EdgeKind.Movement)));
        blockers.Sort((a, b) => (a.Run.From, a.Run.To).CompareTo((b.Run.From, b.Run.To)));
        return blockers;
    }

    /// <summary>Strips that are too low for a piece, and those over a head.</summary>
    private void LeaveGapsOpen(ElevationRect part, ImmutableArray<BandVoid> voids)
    {
        foreach (var v in voids)
        {
            foreach (var gap in v.Gaps)
            {
                LeaveOpen(new ElevationRect(Length.Max(part.Left, v.Run.From), Length.Min(part.Right, v.Run.To), gap.From, gap.To));
            }
        }
    }

    /// <summary>What is no wider than the joint that stands there anyhow is not worth a word.</summary>
    private void LeaveOpen(ElevationRect rect)
    {
        if (rect.Width > rules.Catalog.HeadJoint.Max && rect.Height > rules.Catalog.BedJoint.Nominal)
        {
            _leftOpen.Add(rect);
        }
    }

    private static IEnumerable<Span> Subtract(Interval run, List<Blocker> blockers)
    {
        var (from, edge) = (run.From, EdgeKind.Free);
        foreach (var blocker in blockers.Where(blocker => blocker.Run.To > run.From && blocker.Run.From < run.To))
        {
            if (blocker.Run.From > from)
            {
                yield return new Span(new Interval(from, blocker.Run.From), edge, blocker.Left);
            }

            if (blocker.Run.To > from || (blocker.Run.To == from && blocker.Right == EdgeKind.Movement))
            {
                (from, edge) = (blocker.Run.To, blocker.Right);
            }
        }

        if (from < run.To)
        {
            yield return new Span(new Interval(from, run.To), edge, EdgeKind.Free);
        }
    }

    /// <summary>Divides a span at the jambs of openings that end within the course.</summary>
    private void Divide(
        Span span,
        ElevationRect part,
        Rake rake,
        ImmutableArray<BandVoid> voids,
        ImmutableArray<Segment>.Builder segments,
        ImmutableArray<Length>.Builder jambs)
    {
        var (from, cost) = (span.Run.From, CostAt(span.StartEdge));
        foreach (var v in voids.Where(v => !v.Strips.IsEmpty && v.Run.Overlaps(span.Run)))
        {
            var left = Length.Max(v.Run.From, from);
            var right = Length.Min(v.Run.To, span.Run.To);
            if (left > from)
            {
                segments.Add(Upright(part, rake, from, left, cost, _aims.CutAtJamb));
                jambs.Add(left + (_joint / 2));
                left += _joint;
            }

            var goesOn = right < span.Run.To;
            if (goesOn)
            {
                jambs.Add(right - (_joint / 2));
            }

            var end = goesOn ? right - _joint : right;
            segments.AddRange(v.Strips.Select(strip => new Segment(new ElevationRect(left, end, strip.From, strip.To), SegmentEnd.Upright(0), SegmentEnd.Upright(0))));
            (from, cost) = (right, _aims.CutAtJamb);
        }

        if (from < span.Run.To)
        {
            segments.Add(Upright(part, rake, from, span.Run.To, cost, CostAt(span.EndEdge)));
        }
    }

    private Segment Upright(ElevationRect part, Rake rake, Length left, Length right, long startCost, long endCost) => new(
        part with { Left = left, Right = right },
        rake.StartOf(left, right, startCost, rules.MinPiece, rules.Catalog.UnitLength),
        rake.EndOf(left, right, endCost, rules.MinPiece, rules.Catalog.UnitLength));

    private long CostAt(EdgeKind edge) => edge == EdgeKind.Jamb ? _aims.CutAtJamb : _aims.CutAtEnd;

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
