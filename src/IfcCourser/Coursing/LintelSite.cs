using System.Collections.Immutable;
using IfcCourser.Catalogs;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Modules;
using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>What stands in a lintel's way in a wall's elevation.</summary>
/// <param name="lines">The wall and its courses.</param>
/// <param name="openings">Placed openings that courses stop at.</param>
/// <param name="taken">What neighbouring walls take of a course, joints included.</param>
/// <param name="barred">Where no lintel may pass, as movement joints ask for.</param>
internal sealed class LintelSite(
    WallLines lines, ImmutableArray<ElevationRect> openings, Func<CourseBand, IEnumerable<ElevationRect>> taken, ImmutableArray<ElevationRect> barred)
{
    /// <summary>Outlines of models that miss a course by less are level with it.</summary>
    private static readonly Length _dust = Length.FromMm(1);

    /// <summary>The wall's courses, each from its underside to its top.</summary>
    public ImmutableArray<Interval> Courses { get; } = [.. lines.Bands.Select(band => new Interval(band.Bottom, band.Top))];

    /// <summary>Whether a solid lintel lies in a course that is a bond beam, or any in a part of its height, so that the beam's bars can't pass.</summary>
    public bool StopsBeam(LintelFit fit) => Bands(fit.Rows).Any(band => band.Kind == CourseKind.BondBeam
        && (fit.Product?.Kind == LintelKind.Solid || fit.Heights.From > band.Bottom || fit.Heights.To < band.Top));

    /// <summary>The top of the masonry over a stretch of the run.</summary>
    public Length TopOver(ElevationRect opening) => lines.Outline.HighestWithin(opening.Left, opening.Right);

    /// <summary>Whether another opening stands where the course over an opening would carry its lintel.</summary>
    public bool IsUnderOpening(ElevationRect opening)
    {
        var over = Courses.FirstOrDefault(course => course.To > opening.Top);
        return openings.Any(other => other != opening && other.Left < opening.Right && other.Right > opening.Left
            && other.Top > opening.Top && other.Bottom < over.To + over.Size);
    }

    /// <summary>Whether an opening or a bar stands in a stretch of the run, so that a lintel ends before it and another begins behind.</summary>
    public bool IsInterrupted(Interval run, Interval heights) => openings.Concat(barred).Any(rect =>
        rect.Left < run.To && rect.Right > run.From && rect.Bottom < heights.To && rect.Top > heights.From);

    /// <summary>
    /// How far a lintel over openings may reach: to the wall's ends, a neighbour's face, a bar or the next opening, and under
    /// a rake as far as its courses have their full height.
    /// </summary>
    /// <param name="over">From the first left to the last right jamb.</param>
    /// <param name="rows">The courses it lies in.</param>
    /// <param name="carried">The openings it carries.</param>
    public Interval FreeRun(Interval over, LintelRows rows, IReadOnlyCollection<ElevationRect> carried)
    {
        var (from, to) = (lines.Outline.Box.Left, lines.Outline.Box.Right);
        foreach (var band in Bands(rows))
        {
            var part = lines.Outline.Within(new ElevationRect(lines.Outline.Box.Left, lines.Outline.Box.Right, band.Bottom, band.Top))
                .FirstOrDefault(part => part.Box.Left <= over.From && part.Box.Right >= over.To);
            if (part is not null)
            {
                from = Length.Max(from, LevelFrom(part, band));
                to = Length.Min(to, LevelTo(part, band));
            }

            foreach (var obstacle in taken(band).Select(rect => new Interval(rect.Left, rect.Right)).Concat(ObstaclesIn(band, carried)))
            {
                from = obstacle.To <= over.From ? Length.Max(from, obstacle.To) : from;
                to = obstacle.From >= over.To ? Length.Min(to, obstacle.From) : to;
            }
        }

        return new Interval(Length.Min(from, over.From), Length.Max(to, over.To));
    }

    /// <summary>Whether the wall is whole where a lintel is to lie: level masonry, and no opening but those it carries.</summary>
    public bool IsWhole(Interval run, LintelRows rows, IReadOnlyCollection<ElevationRect> carried) => Bands(rows).All(band =>
        lines.Outline.Within(new ElevationRect(run.From, run.To, band.Bottom, band.Top)) is [{ Points: null } part]
        && part.Box.Width == run.Size && band.Height - part.Box.Height <= _dust
        && !ObstaclesIn(band, carried).Any(run.Overlaps));

    private IEnumerable<CourseBand> Bands(LintelRows rows) => lines.Bands.Skip(rows.First).Take(rows.Last - rows.First + 1);

    private IEnumerable<Interval> ObstaclesIn(CourseBand band, IReadOnlyCollection<ElevationRect> carried) => openings
        .Where(opening => !carried.Contains(opening))
        .Concat(barred)
        .Where(rect => rect.Bottom < band.Top && rect.Top > band.Bottom)
        .Select(rect => new Interval(rect.Left, rect.Right));

    private static Length LevelFrom(OutlinePart part, CourseBand band) => part.Points is not { } points
        ? part.Box.Left
        : points.Where(point => point.Z >= band.Top).Select(point => point.S).DefaultIfEmpty(part.Box.Left).Min();

    private static Length LevelTo(OutlinePart part, CourseBand band) => part.Points is not { } points
        ? part.Box.Right
        : points.Where(point => point.Z >= band.Top).Select(point => point.S).DefaultIfEmpty(part.Box.Right).Max();
}
