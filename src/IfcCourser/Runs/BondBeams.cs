using System.Collections.Immutable;
using IfcCourser.Catalogs;
using IfcCourser.Coursing;
using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Reinforcement;
using IfcCourser.Rules;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Runs;

/// <summary>
/// The bond beams of a wall once its pieces are known: which pieces become trough units, where beams begin and end, their bars, laps
/// and grout. Where no trough unit is made for the wall's width, a beam over the wall's length is formed in place of its course.
/// </summary>
internal sealed class BondBeams
{
    private readonly Wall _wall;
    private readonly WallLines _lines;
    private readonly LayoutRules _rules;
    private readonly BondBeamRule _rule;
    private readonly TroughUnit? _trough;
    private readonly BeamParts _parts;
    private readonly BeamFindings _findings;
    private readonly ImmutableArray<CornerBar> _corners;
    private readonly List<Finding> _found = [];
    private readonly List<BondBeam> _beams = [];

    /// <param name="lines">The wall and its courses.</param>
    /// <param name="rule">Its bond beams.</param>
    /// <param name="lintels">Its lintels.</param>
    /// <param name="joints">Its movement joints; no bar passes them.</param>
    /// <param name="corners">Its corners.</param>
    /// <param name="rules">The rules of the run.</param>
    public BondBeams(
        WallLines lines, BondBeamRule rule, ImmutableArray<Lintel> lintels, ImmutableArray<MovementJoint> joints, ImmutableArray<CornerBar> corners, LayoutRules rules)
    {
        (_wall, _lines, _rule, _rules, _corners) = (lines.Wall, lines, rule, rules, corners);
        _trough = rules.Catalog.TroughFor(_wall.Frame.Thickness);
        _parts = new BeamParts(lintels, joints, rules);
        _findings = new BeamFindings(lines, rule, lintels, rules);
    }

    /// <summary>Whether a course is formed in place of laid.</summary>
    public static bool IsFormed(CourseBand band, Wall wall, LayoutRules rules) =>
        band.Kind == CourseKind.BondBeam && rules.Catalog.TroughFor(wall.Frame.Thickness) is null;

    /// <param name="courses">The wall's courses with their pieces.</param>
    /// <param name="requests">Which of them must be beams.</param>
    /// <param name="formed">The runs of each course that is formed in place of laid.</param>
    /// <param name="openings">Openings that interrupt courses.</param>
    /// <returns>The courses with their trough units, the beams, and what keeps beams from being as asked for.</returns>
    public (ImmutableArray<Course> Courses, ImmutableArray<BondBeam> Beams, ImmutableArray<Finding> Findings) Lay(
        ImmutableArray<Course> courses, IEnumerable<BeamRequest> requests, IReadOnlyDictionary<int, ImmutableArray<Interval>> formed, ImmutableArray<OpeningLayout> openings)
    {
        var asked = requests.ToList();
        _found.AddRange(asked.Where(request => request.Course is null).Select(BeamFindings.NoCourse));
        var laid = courses.ToBuilder();
        foreach (var course in asked.Where(request => request.Course is not null).GroupBy(request => request.Course!.Value).OrderBy(course => course.Key))
        {
            ImmutableArray<Interval>? runs = formed.TryGetValue(course.Key, out var known) ? known : null;
            if (runs is null && _trough is null)
            {
                _found.AddRange(course.Select(_findings.NoTrough));
                continue;
            }

            laid[course.Key] = Lay(courses[course.Key], [.. course], runs, openings);
        }

        foreach (var raked in _lines.RakedBeams)
        {
            _beams.Add(Beam(raked));
        }

        _found.AddRange(_findings.Missing(_beams));
        _found.AddRange(_corners.SelectMany(_findings.Parted));
        return (laid.ToImmutable(), [.. _beams], [.. _found]);
    }

    /// <summary>Makes what is asked of a course a beam, or several where openings and joints part them.</summary>
    private Course Lay(Course course, List<BeamRequest> requests, ImmutableArray<Interval>? formed, ImmutableArray<OpeningLayout> openings)
    {
        var runs = _parts.Runs(course, formed);
        var whole = requests.Where(request => request.Opening is null).Select(request => request.Why).ToList();
        var why = runs.SelectMany(run => run).ToDictionary(part => part, _ => new SortedSet<string>(whole, StringComparer.Ordinal));
        foreach (var request in requests.Where(request => request.Opening is not null))
        {
            var jambs = request.Jambs!.Value;
            var past = _rule.Openings!.Extension + _rule.Bars.Cover.End;
            var stretch = new Interval(jambs.From - past, jambs.To + past);
            var near = runs.Where(run => run[0].Run.From < jambs.To && run[^1].Run.To > jambs.From).SelectMany(run => run).Where(part => part.Run.Overlaps(stretch)).ToList();
            near.ForEach(part => why[part].Add(request.Why));
            _found.AddRange(_findings.Reach(request, near, course));
        }

        var beams = _parts.Joined(why.Where(part => part.Value.Count > 0).Select(part => part.Key));
        _found.AddRange(whole.Count > 0 ? _findings.Interrupted(course, beams, openings, _parts) : []);
        foreach (var beam in beams)
        {
            _beams.Add(Beam(course, beam, [.. beam.SelectMany(part => why[part]).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)], formed is not null));
        }

        var troughs = beams.SelectMany(beam => beam).Select(part => part.Piece).OfType<string>().ToHashSet(StringComparer.Ordinal);
        return course with { Pieces = [.. course.Pieces.Select(piece => troughs.Contains(piece.Id) ? piece with { IsTrough = true, Product = _trough!.Name } : piece)] };
    }

    private BondBeam Beam(Course course, ImmutableArray<BeamPart> parts, ImmutableArray<string> why, bool isFormed)
    {
        var (from, to) = (parts[0].Run.From, parts[^1].Run.To);
        var filled = (to - from).Mm - parts.Where(part => part.IsFormedLintel).Sum(part => part.Run.Size.Mm);
        var top = isFormed ? CastTo(course) : course.Top;
        var area = isFormed
            ? _wall.Frame.Thickness.Mm * (top - course.Bottom).Mm / 1e6
            : _trough!.HollowArea(_wall.Frame.Thickness, _rules.Catalog.UnitHeight);
        return new BondBeam
        {
            Id = FormattableString.Invariant($"B{_beams.Count + 1}"),
            Kind = isFormed ? BondBeamKind.Formed : BondBeamKind.Trough,
            Course = course.Number,
            Bottom = course.Bottom,
            Top = top,
            From = from,
            To = to,
            Why = why,
            BarCount = _rule.Bars.Count,
            BarSize = _rule.Bars.Size.Name,
            Lap = _rule.Bars.Lap,
            Laps = BeamLaps.Of(from, to, _rule.Bars),
            Corners = course.Kind == CourseKind.BondBeam ? Corners(_lines.Bands[course.Number - 1].Line, from, to) : [],
            GroutVolume = area * filled / 1000,
        };
    }

    /// <summary>A beam that is cast is struck off at the wall's top where blocks would leave a joint under it.</summary>
    private Length CastTo(Course course) =>
        course.Number == _lines.Bands[^1].Number && _lines.Outline.Box.Top - course.Top <= CourseFit.PlainJoint(_rules.Catalog) ? Length.Max(course.Top, _lines.Outline.Box.Top) : course.Top;

    private BondBeam Beam(RakedBeam raked)
    {
        var run = raked.Run.Size.Mm / raked.Slope.Mm;
        Length Place(Length along) => raked.Run.From + Length.FromMm(along.Mm * run);
        return new BondBeam
        {
            Id = FormattableString.Invariant($"B{_beams.Count + 1}"),
            Kind = BondBeamKind.Raked,
            Course = null,
            Bottom = raked.Outline.Min(point => point.Z),
            Top = raked.Outline.Max(point => point.Z),
            From = raked.Run.From,
            To = raked.Run.To,
            Outline = raked.Outline,
            Why = ["top"],
            BarCount = _rule.Bars.Count,
            BarSize = _rule.Bars.Size.Name,
            Lap = _rule.Bars.Lap,
            Laps = [.. BeamLaps.Of(Length.Zero, raked.Slope, _rule.Bars).Select(lap => lap with { From = Place(lap.From), To = Place(lap.To) })],
            Corners = [],
            GroutVolume = raked.Area * _wall.Frame.Thickness.Mm / 1000,
        };
    }

    /// <summary>Corners that a beam reaches, or whose other wall runs through in its course, where that has a beam on the same line.</summary>
    private ImmutableArray<BeamCorner> Corners(int line, Length from, Length to) =>
    [
        .. _corners
            .Where(corner => corner.IsOwner && corner.Beams.Met.Contains(line))
            .Where(corner => corner.Place.Side == JunctionSide.Start
                ? from <= corner.Place.To + _rules.Catalog.HeadJoint.Max
                : to >= corner.Place.From - _rules.Catalog.HeadJoint.Max)
            .Select(corner => new BeamCorner(corner.OtherWall, (corner.Place.From + corner.Place.To) / 2, _rule.Bars.Count, _rule.Bars.Lap)),
    ];
}
