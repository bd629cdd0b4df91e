using System.Collections.Immutable;
using IfcCourser.Coursing;
using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Modules;
using IfcCourser.Reinforcement;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Runs;

/// <summary>
/// The bond of a finished wall, read back off its pieces so that it can be solved again: spans, their edges and the heights of their pieces
/// stay. Pieces cut to a slope or around a lintel, and trough units over and under openings, stay where they lie.
/// </summary>
internal sealed class FinishedBond
{
    private readonly WallLayout _wall;
    private readonly PieceMaker _maker;
    private readonly ImmutableArray<ImmutableArray<Piece>> _kept;
    private readonly Dictionary<Segment, Piece> _before = [];

    /// <param name="wall">Finished.</param>
    /// <param name="rules">Of the layout.</param>
    public FinishedBond(WallLayout wall, LayoutRules rules)
    {
        (_wall, Rules) = (wall, WallRules.Of(wall.Wall, rules));
        var kept = ImmutableArray.CreateBuilder<ImmutableArray<Piece>>();
        var laid = ImmutableArray.CreateBuilder<LaidCourse>();
        foreach (var course in wall.Courses)
        {
            var (read, fixedPieces) = Read(course);
            laid.Add(read);
            kept.Add(fixedPieces);
        }

        (Laid, _kept) = (laid.ToImmutable(), kept.ToImmutable());
        _maker = new PieceMaker(Around(wall), [], Rules);
    }

    /// <summary>Of the wall, curved ones included.</summary>
    public LayoutRules Rules { get; }

    /// <summary>As the wall is laid now.</summary>
    public ImmutableArray<LaidCourse> Laid { get; }

    public ImmutableArray<ShapedCourse> Shapes => [.. Laid.Select(course => course.Shape)];

    /// <summary>Whether a core at a place keeps its distance from all joints and ends of the courses it passes.</summary>
    public bool IsClear(Core core, Length at, IEnumerable<LaidCourse> laid) =>
        IsClear(core, at, laid, course => course.Joints.Concat(Ends(course.Shape)));

    /// <summary>Whether it does from all that stay where they are in any bond.</summary>
    public bool MayBeClear(Core core, Length at) =>
        IsClear(core, at, Laid, course => course.Shape.JambJoints.Concat(course.Shape.EdgeJoints).Concat(Ends(course.Shape)));

    /// <summary>The wall with another bond; what is found of its bars and of its neighbours' waits for all walls.</summary>
    /// <param name="laid">Of <see cref="Shapes"/>.</param>
    /// <param name="cores">Where they stand now.</param>
    public WallLayout With(ImmutableArray<LaidCourse> laid, ImmutableArray<Core> cores)
    {
        ImmutableArray<Core> placed = [.. cores.Select(core => WithPlay(core, laid))];
        ImmutableArray<Course> courses = [.. _wall.Courses.Select((course, i) => course with { Pieces = Pieces(course, laid[i], _kept[i], placed) })];
        var pieces = courses.SelectMany(course => course.Pieces).ToList();
        var cut = pieces.Count(piece => piece.Cut != Cuts.None);
        FindingCode[] told = [FindingCodes.OverlapShort, FindingCodes.PieceShort, FindingCodes.RipThin, FindingCodes.CoreOnJoint];
        return _wall with
        {
            Courses = courses,
            Cores = placed,
            Lintels = [.. _wall.Lintels.Select(lintel => lintel with { RestsOn = WallRun.RestsOn(lintel, courses) })],
            Quantities = _wall.Quantities with { FullUnits = pieces.Count - cut, PartUnits = cut, TroughUnits = pieces.Count(piece => piece.IsTrough) },
            Findings =
            [
                .. _wall.Findings.Where(finding => !told.Contains(finding.Code)),
                .. BondFindings.Of(laid, courses, placed, Rules),
                .. LintelLaps.Of(laid, _wall.Lintels, Rules),
            ],
        };
    }

    private static IEnumerable<Length> Ends(ShapedCourse shape) => shape.Spans.SelectMany(span => new[] { span.Run.From, span.Run.To });

    private bool IsClear(Core core, Length at, IEnumerable<LaidCourse> laid, Func<LaidCourse, IEnumerable<Length>> places) => laid
        .Where(course => new Bar(at, core.Bottom, core.Top).Passes(course.Shape.Band))
        .All(course => course.Shape.Spans.Any(span => span.Run.Contains(at)) == course.Shape.Spans.Any(span => span.Run.Contains(core.At))
            && LapCheck.Nearest(places(course), at) >= Rules.CoreClearance);

    private Core WithPlay(Core core, ImmutableArray<LaidCourse> laid)
    {
        var (minus, plus) = CorePlay.Of(new BarPlace(new Interval(core.At, core.At), core.At, new Interval(core.Bottom, core.Top), core.Why, Junction: null), laid, Rules);
        return core with { PlayMinus = minus, PlayPlus = plus, Point = _wall.Frame.PointAt(core.At, core.Across, Length.Zero).Plan };
    }

    private ImmutableArray<Piece> Pieces(Course course, LaidCourse laid, ImmutableArray<Piece> kept, ImmutableArray<Core> cores)
    {
        var mirrored = _wall.Courses[0].Pieces.Select(piece => piece.Notch?.Face).OfType<string>().FirstOrDefault();
        return
        [
            .. laid.Shape.Segments.SelectMany((segment, i) => laid.Rows[i].Select(row => (
                    Box: segment.Box with { Left = segment.Box.Left + row.From, Right = segment.Box.Left + row.To }, Of: _before[segment], IsKept: false)))
                .Concat(kept.Select(piece => (Box: BoxOf(piece), Of: piece, IsKept: true)))
                .OrderBy(piece => piece.Box.Left).ThenBy(piece => piece.Box.Bottom)
                .Select((piece, i) => (piece.Of, piece.IsKept, Made: _maker.Make(FormattableString.Invariant($"C{course.Number}P{i + 1}"), piece.Box, laid.Shape.Band, cores)))
                .Select(piece => piece.IsKept ? piece.Of with { Id = piece.Made.Id, Cores = piece.Made.Cores, Notch = piece.Made.Notch }
                    : piece.Of.IsTrough ? piece.Made with { IsTrough = true, Product = piece.Of.Product }
                    : piece.Made)
                .Select(piece => piece.Notch is { } notch && mirrored is not null ? piece with { Notch = notch with { Face = mirrored } } : piece),
        ];
    }

    private (LaidCourse Laid, ImmutableArray<Piece> Kept) Read(Course course)
    {
        var segments = ImmutableArray.CreateBuilder<Segment>();
        var rows = ImmutableArray.CreateBuilder<ImmutableArray<Interval>>();
        var kept = ImmutableArray.CreateBuilder<Piece>();
        var joints = new SortedSet<Length>();
        foreach (var span in course.Spans)
        {
            var runs = Runs(course, span);
            joints.UnionWith(JointsBetween(runs));
            foreach (var run in runs)
            {
                if (run.Exists(piece => IsKept(piece, course)) || run.Exists(piece => piece.IsTrough != run[0].IsTrough))
                {
                    kept.AddRange(run);
                    joints.UnionWith(run.Zip(run.Skip(1), (left, right) => (left.To + right.From) / 2));
                    continue;
                }

                var segment = SegmentOf(run, span, course);
                segments.Add(segment);
                _before.Add(segment, run[0]);
                rows.Add([.. run.Select(piece => new Interval(piece.From - run[0].From, piece.To - run[0].From))]);
            }
        }

        var band = new CourseBand(course.Number, course.Number, course.Kind, course.Bottom, course.Top);
        var shape = new ShapedCourse(band, course.Spans, segments.ToImmutable(), EdgeJoints(course), [.. joints])
            .OnSlants(Length.Abs(_wall.Wall.Start.Slant), Length.Abs(_wall.Wall.End.Slant), Rules);
        foreach (var (before, after) in segments.Zip(shape.Segments).Where(pair => pair.First != pair.Second))
        {
            _before[after] = _before[before];
        }

        return (LaidCourse.Of(shape, rows.ToImmutable()), kept.ToImmutable());
    }

    private static bool IsKept(Piece piece, Course course) => piece.Outline is not null || (piece.IsTrough && course.Kind != CourseKind.BondBeam);

    /// <summary>The pieces of a span in rows that are filled on their own: of one height, with head joints between them; each kept piece alone.</summary>
    private List<List<Piece>> Runs(Course course, Span span)
    {
        var runs = new List<List<Piece>>();
        foreach (var layer in course.Pieces.Where(piece => piece.From >= span.Run.From && piece.To <= span.Run.To).GroupBy(piece => (piece.Bottom, piece.Top, IsKept: IsKept(piece, course))))
        {
            foreach (var piece in layer.OrderBy(piece => piece.From))
            {
                var isNext = !layer.Key.IsKept && runs.Count > 0 && runs[^1] is [.., var last] && !IsKept(last, course) && (last.Bottom, last.Top) == (piece.Bottom, piece.Top)
                    && piece.From - last.To <= Rules.Catalog.HeadJoint.Max && piece.From >= last.To;
                if (isNext)
                {
                    runs[^1].Add(piece);
                }
                else
                {
                    runs.Add([piece]);
                }
            }
        }

        return [.. runs.OrderBy(run => run[0].From).ThenBy(run => run[0].Bottom)];
    }

    private IEnumerable<Length> JointsBetween(List<List<Piece>> runs) =>
        from left in runs
        from right in runs
        let gap = right[0].From - left[^1].To
        where gap >= Length.Zero && gap <= Rules.Catalog.HeadJoint.Max
        select (left[^1].To + right[0].From) / 2;

    private Segment SegmentOf(List<Piece> run, Span span, Course course)
    {
        var aims = Rules.Set.Aims;
        var isWhole = run[0].Bottom == course.Bottom && run[0].Top == course.Top;
        var box = BoxOf(run[0]) with { Right = run[^1].To };
        return new Segment(box, End(box.Left == span.Run.From, span.StartEdge), End(box.Right == span.Run.To, span.EndEdge));

        SegmentEnd End(bool isEdge, EdgeKind edge) => SegmentEnd.Upright(!isWhole ? 0 : !isEdge || edge == EdgeKind.Jamb ? aims.CutAtJamb : aims.CutAtEnd);
    }

    private ImmutableArray<Length> EdgeJoints(Course course)
    {
        var half = Rules.Catalog.HeadJoint.Nominal / 2;
        return
        [
            .. course.Spans.Where(span => span.StartEdge is EdgeKind.Wall or EdgeKind.Lintel).Select(span => span.Run.From - half),
            .. course.Spans.Where(span => span.EndEdge is EdgeKind.Wall or EdgeKind.Lintel).Select(span => span.Run.To + half),
        ];
    }

    private static ElevationRect BoxOf(Piece piece) => new(piece.From, piece.To, piece.Bottom, piece.Top);

    /// <summary>A rectangle around all pieces: what is laid again is cut to no outline.</summary>
    private static ElevationOutline Around(WallLayout wall)
    {
        var pieces = wall.Courses.SelectMany(course => course.Pieces).Select(BoxOf).DefaultIfEmpty(new ElevationRect(Length.Zero, wall.Frame.Length, Length.Zero, wall.Frame.Length)).ToList();
        var (left, right, bottom, top) = (pieces.Min(box => box.Left), pieces.Max(box => box.Right), pieces.Min(box => box.Bottom), pieces.Max(box => box.Top));
        return new ElevationOutline([new(left, bottom), new(right, bottom), new(right, top), new(left, top)]);
    }
}
