using System.Collections.Immutable;
using IfcCourser.Catalogs;
using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Modules;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>
/// Lintels over a wall's openings: at the head where that lies on a course line or a lintel can be seated there in
/// mid-course, else on the next course line. Openings whose pier can't carry two bearings share one; a lintel that would
/// leave less than the least piece to a wall end, a jamb or the next lintel runs on to it.
/// </summary>
internal sealed class LintelPlan
{
    private readonly ImmutableArray<OpeningLayout> _openings;
    private readonly LintelSite _site;
    private readonly LintelFitter _fitter;
    private readonly LayoutRules _rules;
    private readonly Length _joint;
    private readonly List<Finding> _missing = [];

    /// <param name="lines">The wall and its courses.</param>
    /// <param name="openings">Placed openings.</param>
    /// <param name="taken">What neighbouring walls take of a course.</param>
    /// <param name="barred">Where no lintel may pass, as at movement joints: rectangles of the elevation.</param>
    /// <param name="rules">Bearing, lintel products, load class.</param>
    public LintelPlan(
        WallLines lines,
        ImmutableArray<OpeningLayout> openings,
        Func<CourseBand, IEnumerable<ElevationRect>> taken,
        ImmutableArray<ElevationRect> barred,
        LayoutRules rules)
    {
        _openings = [.. openings.Where(opening => opening.Interrupts).OrderBy(opening => opening.Placed.Left)];
        _site = new LintelSite(lines, [.. _openings.Select(opening => opening.Placed)], taken, barred);
        _fitter = new LintelFitter(_site, lines.Wall.Frame.Thickness, rules);
        _rules = rules;
        _joint = rules.Catalog.HeadJoint.Nominal;
    }

    public (ImmutableArray<Lintel> Lintels, ImmutableArray<Finding> Findings) Solve()
    {
        var groups = Groups();
        var fits = new LintelRoom(_site, _rules).Settle([.. groups.Select(group => (Func<Interval, LintelFit?>)(limits => At(group.Carried, group.Level, limits)))]);
        ImmutableArray<LintelFit> placed = [.. fits.OfType<LintelFit>().OrderBy(fit => fit.Rows.First).ThenBy(fit => fit.Run.From)];
        var findings = groups.Zip(fits)
            .Where(pair => pair.Second is null)
            .SelectMany(pair => pair.First.Carried.Select(opening => LintelFindings.Missing(opening, Messages.NoRoomForLintel(opening.Opening.Label))));
        return (
            [.. placed.Select((fit, i) => AsLintel(fit, i + 1))],
            [.. _missing, .. findings, .. placed.SelectMany(fit => LintelFindings.Of(fit, _fitter, _rules))]);
    }

    /// <summary>Openings of one level, joined where the pier between them can't carry two bearings.</summary>
    private List<Group> Groups()
    {
        var groups = new List<Group>();
        var levels = _openings.Select(opening => (Opening: opening, Level: Level(opening))).Where(pair => pair.Level is not null);
        foreach (var level in levels.GroupBy(pair => pair.Level!.Value).OrderBy(level => level.Key))
        {
            var shared = new List<OpeningLayout>();
            foreach (var opening in level.Select(pair => pair.Opening))
            {
                if (shared.Count > 0 && !IsShared(shared[^1], opening, level.Key))
                {
                    groups.AddRange(Fitting([.. shared], level.Key));
                    shared.Clear();
                }

                shared.Add(opening);
            }

            groups.AddRange(Fitting([.. shared], level.Key));
        }

        return groups;
    }

    private bool IsShared(OpeningLayout left, OpeningLayout right, Length level)
    {
        var pier = new Interval(left.Placed.Right, right.Placed.Left);
        return pier.Size < _fitter.Bearing([left]) + _joint + _fitter.Bearing([right]) && !_site.IsInterrupted(pier, new Interval(level, level + _rules.Catalog.UnitHeight));
    }

    /// <summary>The openings together, or each alone where no lintel fits over them all.</summary>
    private IEnumerable<Group> Fitting(ImmutableArray<OpeningLayout> carried, Length level) =>
        carried.Length == 1 || At(carried, level, LintelRoom.Everywhere) is not null
            ? [new Group(carried, level)]
            : carried.Select(opening => new Group([opening], level));

    private LintelFit? At(ImmutableArray<OpeningLayout> carried, Length level, Interval limits) =>
        _fitter.Best(carried, level, limits);

    /// <summary>Where the underside of an opening's lintel lies; null where nothing stands over it or there is no room.</summary>
    private Length? Level(OpeningLayout opening)
    {
        var head = opening.Placed.Top;
        if (_site.TopOver(opening.Placed) - head <= _rules.Set.MortarRest)
        {
            return null;
        }

        var line = OpeningHeights.LineOver(head, _site.Courses);
        var levels = line - head <= _rules.Catalog.BedJoint.Nominal ? [line] : InMidCourse(opening, line);
        if (levels.FirstOrDefault(level => level is not null) is { } found && (found != line || At([opening], found, LintelRoom.Everywhere) is not null))
        {
            return found;
        }

        _missing.Add(LintelFindings.Missing(opening, _site.IsUnderOpening(opening.Placed)
            ? Messages.OpeningInPlaceOfLintel(opening.Opening.Label)
            : Messages.NoCourseForLintel(opening.Opening.Label)));
        return null;
    }

    /// <summary>
    /// Levels for a head in mid-course, the best first: a lintel of the catalog seated there, one on the line over it, a beam
    /// formed there, one on the line.
    /// </summary>
    private IEnumerable<Length?> InMidCourse(OpeningLayout opening, Length? line)
    {
        ImmutableArray<OpeningLayout> alone = [opening];
        var head = opening.Placed.Top;
        Length? IfFits(LintelFit? fit) => fit?.Heights.From;
        yield return IfFits(_fitter.OfCatalog(alone, head, LintelRoom.Everywhere));
        yield return line is { } over ? IfFits(_fitter.OfCatalog(alone, over, LintelRoom.Everywhere)) : null;
        yield return IfFits(_fitter.Formed(alone, head, LintelRoom.Everywhere));
        yield return line is { } next ? IfFits(_fitter.Formed(alone, next, LintelRoom.Everywhere)) : null;
    }

    private static Lintel AsLintel(LintelFit fit, int number) => new(
        FormattableString.Invariant($"L{number}"),
        fit.Carried[0].Opening.GlobalId,
        fit.Product?.Kind ?? LintelKind.Formed,
        fit.Product?.Name ?? Messages.FormedBeam,
        fit.Run.From, fit.Run.To, fit.Heights.From, fit.Heights.To, fit.BearingLeft, fit.BearingRight, []);

    private sealed record Group(ImmutableArray<OpeningLayout> Carried, Length Level);
}
