using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Coursing;

/// <summary>
/// Shares the masonry out where walls meet: at a bonded corner the walls run through in turn, course by course; a corner
/// of two level groups is butted, its first wall running through; a tee's or crossing's second wall stops at the first, or
/// at a bonded tee runs through it in even courses.
/// </summary>
internal sealed class JunctionShares
{
    private readonly ImmutableArray<WallLines> _walls;
    private readonly ImmutableArray<Junction> _junctions;
    private readonly ImmutableArray<ImmutableArray<ElevationRect>> _openings;
    private readonly ImmutableArray<CornerCourses?> _corners;
    private readonly JunctionPlan _plan;
    private readonly LayoutRules _rules;
    private readonly Length _joint;

    /// <param name="walls">With their courses.</param>
    /// <param name="junctions">How they meet.</param>
    /// <param name="plan">Of the same junctions.</param>
    /// <param name="turns">Which wall runs through in odd courses, one for each junction.</param>
    /// <param name="openings">Of each wall what interrupts its courses.</param>
    /// <param name="rules">Of the run.</param>
    public JunctionShares(
        ImmutableArray<WallLines> walls,
        ImmutableArray<Junction> junctions,
        JunctionPlan plan,
        ImmutableArray<CornerTurn> turns,
        ImmutableArray<ImmutableArray<ElevationRect>> openings,
        LayoutRules rules)
    {
        (_walls, _junctions, _plan, _openings, _rules) = (walls, junctions, plan, openings, rules);
        _joint = rules.Catalog.HeadJoint.Nominal;
        _corners =
        [
            .. junctions.Select((junction, j) => plan.IsBondedCorner(junction)
                ? CornerCourses.That(
                    At(junction.First, junction.FirstPlace), At(junction.Second, junction.SecondPlace), turns[j], rules.Catalog.BedJoint.Nominal)
                : null),
        ];
    }

    /// <summary>What the neighbours of a wall take of a course, the joints against them included: all of its height or a part.</summary>
    public IEnumerable<ElevationRect> TakenFrom(int wall, CourseBand band)
    {
        var box = _walls[wall].Outline.Box;
        foreach (var index in _plan.JunctionsOf(wall))
        {
            var place = JunctionPlan.PlaceOn(_junctions[index], wall);
            foreach (var height in HeightsTaken(index, wall, band))
            {
                yield return WithEmptyRest(wall, band, new ElevationRect(
                    (place.Side == JunctionSide.Start ? Length.Min(place.From, box.Left) : place.From) - _joint,
                    (place.Side == JunctionSide.End ? Length.Max(place.To, box.Right) : place.To) + _joint,
                    height.From,
                    height.To));
            }
        }
    }

    /// <summary>What is taken of a course, all of its height where the wall itself does not stand above or below.</summary>
    private ElevationRect WithEmptyRest(int wall, CourseBand band, ElevationRect taken)
    {
        bool IsEmpty(Length bottom, Length top) => _walls[wall].Outline.Within(taken with { Bottom = bottom, Top = top }).IsEmpty;
        return taken with
        {
            Bottom = IsEmpty(band.Bottom, taken.Bottom) ? band.Bottom : taken.Bottom,
            Top = IsEmpty(taken.Top, band.Top) ? band.Top : taken.Top,
        };
    }

    private IEnumerable<Interval> HeightsTaken(int index, int wall, CourseBand band)
    {
        var junction = _junctions[index];
        var isFirst = junction.First == wall;
        var whole = new Interval(band.Bottom, band.Top);
        IEnumerable<Interval> Part(IEnumerable<Interval> heights) => heights
            .Where(whole.Overlaps)
            .Select(height => new Interval(Length.Max(height.From, whole.From), Length.Min(height.To, whole.To)));

        if (_corners[index] is { } corner)
        {
            var up = _walls[wall].Base;
            return (isFirst ? corner.OfFirst : corner.OfSecond).TryGetValue(band.Line, out var taken)
                ? Part([new Interval(taken.From - up, taken.To - up)])
                : [];
        }

        if (junction.Kind == JunctionKind.Tee && _plan.Tees.RunsThrough(index, band.Line))
        {
            return isFirst ? [whole] : [];
        }

        if (isFirst)
        {
            return [];
        }

        var heights = HeightsOf(junction.First, junction.FirstPlace, seenFrom: wall).ToList();
        return junction.Kind is JunctionKind.Corner or JunctionKind.Cross
            ? Part(heights.Select(height => height with { To = height.To + _rules.Catalog.BedJoint.Nominal }))
            : heights.Exists(height => height.From <= band.Middle && height.To > band.Middle) ? [whole] : [];
    }

    /// <summary>The heights at which a wall stands at a place of its run, above another wall's base.</summary>
    private IEnumerable<Interval> HeightsOf(int wall, JunctionPlace place, int seenFrom)
    {
        var (lines, run) = (_walls[wall], Run(place));
        var up = lines.Base - _walls[seenFrom].Base;
        return lines.Outline.Within(new ElevationRect(run.From, run.To, lines.Outline.Box.Bottom, lines.Outline.Box.Top))
            .Select(part => new Interval(part.Box.Bottom + up, part.Box.Top + up));
    }

    /// <summary>A wall's courses where it turns a corner, without those of which too little for a piece stands there.</summary>
    private IEnumerable<CornerCourse> At(int wall, JunctionPlace place)
    {
        var (lines, run) = (_walls[wall], Run(place));
        foreach (var band in lines.Bands.Where(band => !IsSlip(wall, place, band)))
        {
            var parts = lines.Outline.Within(new ElevationRect(run.From, run.To, band.Bottom, band.Top))
                .Where(part => part.Box.Height >= Length.Min(_rules.Set.MortarRest, band.Height))
                .ToList();
            if (parts.Count > 0)
            {
                var bottom = parts.Min(part => part.Box.Bottom);
                var foot = bottom > band.Bottom || band.Kind != CourseKind.Levelling ? bottom : Length.Zero;
                yield return new CornerCourse(
                    band.Line, lines.Base + foot, lines.Base + bottom, lines.Base + Length.Min(WholeAt(lines.Outline, run), band.Top), lines.Base + parts.Max(part => part.Box.Top),
                    IsOpen(wall, run, band));
            }
        }
    }

    /// <summary>How high a wall stands at both sides of a place.</summary>
    private static Length WholeAt(ElevationOutline outline, Interval run)
    {
        var sliver = Length.FromMm(1);
        return Length.Min(outline.HighestWithin(run.From, run.From + sliver), outline.HighestWithin(run.To - sliver, run.To));
    }

    /// <summary>Whether an opening, as placed, reaches into the corner beside the course.</summary>
    private bool IsOpen(int wall, Interval corner, CourseBand band) => _openings[wall].Any(opening =>
        Length.Min(opening.Right, corner.To) - Length.Max(opening.Left, corner.From) > _rules.ModuleTolerance
        && Length.Min(opening.Top, band.Top) - Length.Max(opening.Bottom, band.Bottom) > _rules.ModuleTolerance);

    /// <summary>Whether an opening beside the corner leaves less of the course there than any piece is long.</summary>
    private bool IsSlip(int wall, JunctionPlace place, CourseBand band)
    {
        var box = _walls[wall].Outline.Box;
        return _openings[wall].Any(opening => opening.Bottom <= band.Bottom && opening.Top >= band.Top
            && (place.Side == JunctionSide.Start
                ? opening.Left >= place.To && opening.Left - box.Left < _rules.Set.MortarRest
                : opening.Right <= place.From && box.Right - opening.Right < _rules.Set.MortarRest));
    }

    private static Interval Run(JunctionPlace place) =>
        place.From < place.To ? new Interval(place.From, place.To) : new Interval(place.From - Length.FromMm(1), place.From + Length.FromMm(1));
}
