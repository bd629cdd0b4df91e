using System.Collections.Immutable;
using IfcCourser.Coursing;
using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Modules;
using IfcCourser.Panels;
using IfcCourser.Reinforcement;
using IfcCourser.Rules;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Runs;

/// <summary>
/// One wall from its elevation to its layout: openings onto lines, lintels, courses shaped, bond, bars; where a bar would
/// stand too near a joint, the bond is solved again around the bars.
/// </summary>
internal sealed class WallRun
{
    private readonly WallLines _lines;
    private readonly LayoutRules _rules;
    private readonly WallSurroundings _around;
    private readonly PlacedOpenings _placed;
    private readonly Wall _wall;
    private readonly RunTables _tables;
    private readonly BondSolvers _solvers;
    private readonly BarEffort _barEffort = new();

    /// <param name="lines">The wall and its courses.</param>
    /// <param name="placed">Its openings and module lines.</param>
    /// <param name="around">The walls it meets.</param>
    /// <param name="rules">The rules of the run.</param>
    /// <param name="tables">What all walls share.</param>
    public WallRun(WallLines lines, PlacedOpenings placed, WallSurroundings around, LayoutRules rules, RunTables tables)
    {
        _lines = lines;
        _placed = placed;
        _around = around;
        _rules = rules;
        _tables = tables;
        _wall = lines.Wall;
        _solvers = new BondSolvers(_wall.Frame.Thickness, rules, tables.Rests);
    }

    public WallLayout Solve()
    {
        var (openings, moduleLines) = _placed;
        var (joints, jointFindings) = WallPanels.Of(_wall, _placed, _around.Met, _rules);
        ImmutableArray<ElevationRect> gaps = [.. joints.Select(joint => joint.Rect)];
        var (lintels, lintelFindings) = new LintelPlan(_lines, openings, band => _around.Taken(band), gaps, _rules).Solve();
        var shaper = new CourseShaper(
            _lines.Outline, [.. openings.Where(opening => opening.Interrupts).Select(opening => opening.Placed)], lintels, gaps, _rules);
        var (start, end) = (Length.Abs(_wall.Start.Slant), Length.Abs(_wall.End.Slant));
        var shaped = _lines.Bands.Select(band => shaper.Shape(band, _around.Taken(band), _around.Beyond(band)).OnSlants(start, end, _rules)).ToImmutableArray();
        var shapes = shaped.Select(shape => BondBeams.IsFormed(shape.Band, _wall, _rules) ? shape.LeftOut() : shape).ToImmutableArray();
        var (laid, bars, unmet, farApart) = Bond(shapes, openings, lintels, joints);
        var cores = Cores(bars, laid);
        var maker = new PieceMaker(_lines.Outline, lintels, _rules);
        ImmutableArray<Interval> heights = [.. _lines.Bands.Select(band => new Interval(band.Bottom, band.Top))];
        var checks = new OpeningChecks(_wall, _placed, heights, _rules);
        var length = LengthChecks.Of(_wall, _rules);
        var (courses, beams, beamFindings) = Beams([.. laid.Select(course => maker.Make(course, cores))], shaped, openings, lintels, joints);
        return new WallLayout
        {
            Wall = _wall,
            Group = _lines.Group.Name,
            LevelLine = _lines.Bands[0].Top,
            Openings = [.. openings.Select(opening => opening with { Check = checks.Of(opening) })],
            ModuleLines = moduleLines,
            LengthCheck = length,
            Courses = courses,
            Lintels = [.. lintels.Select(lintel => lintel with { RestsOn = RestsOn(lintel, courses) })],
            Cores = cores,
            BondBeams = beams,
            MovementJoints = joints,
            Embeds = [],
            Quantities = Quantities.Of(new ElevationOutline(_wall.Outline), _wall.Frame.Thickness, openings, courses, beams),
            Findings =
            [
                .. _wall.Findings,
                .. LengthFindings.Of(length, _rules),
                .. OpeningFindings.Of(_wall, openings, moduleLines, _rules),
                .. new OpeningHeightFindings(heights, lintels, _rules).Of(openings),
                .. new PierFindings(_lines, _around.Taken, _rules, _tables.Piers).Of(openings),
                .. ArchFindings.Of(openings, _rules),
                .. new ConflictFindings(_wall, [.. openings.Where(opening => opening.Interrupts)], _rules).Of(_around.Met, joints),
                .. jointFindings,
                .. lintelFindings,
                .. HeightFindings.Of(_lines, _rules),
                .. FillFindings.Of(_lines, shaper.LeftOpen),
                .. BondFindings.Of(laid, courses, cores, _rules),
                .. CutShort(),
                .. CornerCores.OnJoints(bars.Where(IsListedByOther), laid, courses, _rules),
                .. LintelLaps.Of(laid, lintels, _rules),
                .. beamFindings,
                .. WithoutCores(),
                .. unmet.Select(NoRoomFor),
                .. farApart.Select(FarApart),
                .. Crossings(),
            ],
        };
    }

    private (ImmutableArray<LaidCourse> Laid, ImmutableArray<BarPlace> Bars, ImmutableArray<BarDemand> Unmet, ImmutableArray<Interval> Gaps) Bond(
        ImmutableArray<ShapedCourse> shapes, ImmutableArray<OpeningLayout> openings, ImmutableArray<Lintel> lintels, ImmutableArray<MovementJoint> joints)
    {
        if (_rules.Set.Bars is not { } rule || CoreFit.In(_wall.Frame.Thickness, _rules) is null)
        {
            return (new WallBond(shapes, lintels, [], _solvers).Solve(), [], [], []);
        }

        var site = new BarSite(
            _wall, openings, lintels, joints, [.. _around.Corners.Select(corner => new CornerPlace(corner.Junction, corner.Place, corner.HasCores))],
            [.. _around.Met.Where(met => met is { Kind: JunctionKind.Tee, Place.Side: JunctionSide.Along }).Select(met => new Interval(met.Place.From, met.Place.To))],
            _around.BarsBelow)
        {
            Courses = [.. _lines.Bands.Select(band => new Interval(band.Bottom, band.Top))],
            LintelsInCorners = [.. _around.Corners.SelectMany(corner => corner.Lintels)],
        };
        var placement = new BarPlacement(site, _rules, rule, _barEffort);
        var (laid, bars) = new BarBond(shapes, lintels, placement, placement.Required, _solvers).Solve();
        return (laid, bars, [.. placement.Unmet(bars)], [.. placement.Gaps(bars)]);
    }

    private (ImmutableArray<Course> Courses, ImmutableArray<BondBeam> Beams, ImmutableArray<Finding> Findings) Beams(
        ImmutableArray<Course> courses, ImmutableArray<ShapedCourse> shaped, ImmutableArray<OpeningLayout> openings, ImmutableArray<Lintel> lintels, ImmutableArray<MovementJoint> joints)
    {
        if (BeamDemands.RuleFor(_wall, _rules) is not { } rule)
        {
            return (courses, [], []);
        }

        var formed = Enumerable.Range(0, shaped.Length)
            .Where(i => BondBeams.IsFormed(shaped[i].Band, _wall, _rules))
            .ToDictionary(i => i, i => shaped[i].Spans.Select(span => span.Run).ToImmutableArray());
        return new BondBeams(_lines, rule, lintels, joints, _around.Corners, _rules)
            .Lay(courses, new BeamRequests(_lines, openings, lintels, _rules).Of(rule), formed, openings);
    }

    private bool IsListedByOther(BarPlace bar) => bar.Junction is { } junction && _around.Corners.Any(corner => corner.Junction == junction && !corner.IsOwner);

    private static Finding NoRoomFor(BarDemand demand) => new(
        FindingCodes.CoreNotPossible, Messages.NoRoomForBar(demand.Why), new FindingPlace { S = demand.Range.From + (demand.Range.Size / 2), Z = demand.Heights.From });

    private Finding FarApart(Interval gap) => new(
        FindingCodes.BarsFarApart, Messages.BarsFarApart(gap.From, gap.To, _rules.Set.Bars!.LargestSpacing, _rules.Catalog.Units), new FindingPlace { S = gap.From });

    private IEnumerable<Finding> CutShort()
    {
        if (_solvers.Effort.IsCutShort || _barEffort.IsCutShort)
        {
            yield return new Finding(FindingCodes.BondSearchEnded, Messages.BondSearchEnded);
        }
    }

    private IEnumerable<Finding> WithoutCores()
    {
        if (_rules.Set.Bars is not null && CoreFit.In(_wall.Frame.Thickness, _rules) is null)
        {
            yield return new Finding(
                FindingCodes.CoreNotPossible, _rules.Catalog.Cores.IsEmpty ? Messages.NoCoresInCatalog : Messages.NoCoreInThinWall(_wall.Frame.Thickness, _rules.Catalog.Units));
        }
    }

    private IEnumerable<Finding> Crossings() => _around.CrossedBy.Select(wall => new Finding(FindingCodes.OutlineNotFilled, Messages.CrossedBy(wall)));

    /// <summary>The wall's cores; a corner's bar is listed by one of its walls alone.</summary>
    private ImmutableArray<Core> Cores(ImmutableArray<BarPlace> bars, ImmutableArray<LaidCourse> laid)
    {
        if (CoreFit.In(_wall.Frame.Thickness, _rules) is not { } option)
        {
            return [];
        }

        var across = _wall.Frame.Thickness / 2;
        var cores = ImmutableArray.CreateBuilder<Core>();
        foreach (var bar in bars)
        {
            var corner = _around.Corners.FirstOrDefault(corner => corner.Junction == bar.Junction);
            if (IsListedByOther(bar))
            {
                continue;
            }

            var (minus, plus) = CorePlay.Of(bar, laid, _rules);
            cores.Add(new Core(
                FormattableString.Invariant($"K{cores.Count + 1}"), bar.At, across, bar.Heights.From, bar.Heights.To, option.Diameter,
                _rules.Set.Bars!.Designation, bar.Why, _wall.Frame.PointAt(bar.At, across, Length.Zero).Plan, minus, plus,
                bar.Junction is null || corner is null ? [] : [corner.OtherWall]));
        }

        return cores.ToImmutable();
    }

    public static ImmutableArray<string> RestsOn(Lintel lintel, ImmutableArray<Course> courses)
    {
        var below = courses.LastOrDefault(course => course.Bottom < lintel.Bottom);
        var (jambLeft, jambRight) = (lintel.From + lintel.BearingLeft, lintel.To - lintel.BearingRight);
        return below is null ? [] :
        [
            .. below.Pieces
                .Where(piece => (piece.From < jambLeft && piece.To > lintel.From) || (piece.From < lintel.To && piece.To > jambRight))
                .Select(piece => piece.Id),
        ];
    }
}
