using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Output.Sheets.Details;
using IfcCourser.Units;

namespace IfcCourser.Output.Sheets.Walls;

/// <summary>What one of several sheets shows of a long wall: the blocks between two match lines and what belongs to them.</summary>
/// <param name="Index">From 1 at the wall's start.</param>
/// <param name="Count">Sheets that the wall takes.</param>
/// <param name="Before">Null where the stretch begins at the wall's start.</param>
/// <param name="After">Null where it ends at the wall's end.</param>
internal sealed record WallStretch(int Index, int Count, MatchLine? Before, MatchLine? After)
{
    private const double Far = 1e9;

    /// <summary>Whether a place along the wall is on this sheet: a match line's own place is on both.</summary>
    public bool Shows(double s) => (Before is null || s >= Before.At) && (After is null || s <= After.At);

    /// <summary>The wall with only what this sheet shows; frame, junctions and quantities stay the whole wall's.</summary>
    public WallLayout Of(WallLayout wall)
    {
        var courses = wall.Courses.Select(course => (Whole: course, Own: course.Pieces.Where(Has).ToImmutableArray()))
            .Where(course => !course.Own.IsEmpty || course.Whole.Pieces.IsEmpty)
            .Select(course => course.Whole with { Pieces = course.Own, Spans = [.. course.Whole.Spans.Select(span => Own(span, course.Own)).OfType<Span>()] })
            .ToImmutableArray();
        var passed = courses.SelectMany(course => course.Pieces).SelectMany(piece => piece.Cores).ToHashSet(StringComparer.Ordinal);
        return wall with
        {
            Wall = wall.Wall with { Outline = Face(wall.Outline) },
            Courses = courses,
            Openings = [.. wall.Openings.Where(Has)],
            Lintels = [.. wall.Lintels.Where(lintel => Shows((lintel.From.Mm + lintel.To.Mm) / 2))],
            Cores = [.. wall.Cores.Where(core => passed.Contains(core.Id) || Shows(core.At.Mm))],
            BondBeams = [.. wall.BondBeams.Select(Own).OfType<BondBeam>()],
            MovementJoints = [.. wall.MovementJoints.Where(joint => Shows(joint.At.Mm))],
            Embeds = [.. wall.Embeds.Where(embed => Shows(embed.At.Mm))],
            Findings = [.. wall.Findings.Where(finding => finding.At?.S is not { } s || Shows(s.Mm))],
        };
    }

    public bool Has(OpeningLayout opening) => Shows((opening.Placed.Left.Mm + opening.Placed.Right.Mm) / 2);

    /// <summary>The wall's edges, open at the match lines.</summary>
    /// <param name="corners">Of the whole wall.</param>
    public IEnumerable<LineItem> Edges(ImmutableArray<Point> corners)
    {
        var steps = (Before ?? After)!.Steps;
        return steps.SelectMany((step, i) => Clip.Edges(Pen.OuterEdge, corners, new Box(
            Before?.Steps[i].S ?? -Far, i == 0 ? -Far : step.Bottom, After?.Steps[i].S ?? Far, i == steps.Length - 1 ? Far : steps[i + 1].Bottom)));
    }

    private bool Has(Piece piece) => Before?.HasBefore(piece) != true && After?.HasBefore(piece) != false;

    /// <summary>Where it was cut it ends at its pieces.</summary>
    public static Span? Own(Span span, ImmutableArray<Piece> pieces)
    {
        var inside = pieces.Where(piece => piece.From >= span.Run.From && piece.To <= span.Run.To).ToArray();
        if (inside.Length == 0)
        {
            return null;
        }

        var run = new Interval(inside.Min(piece => piece.From), inside.Max(piece => piece.To));
        return new Span(run, run.From == span.Run.From ? span.StartEdge : EdgeKind.Free, run.To == span.Run.To ? span.EndEdge : EdgeKind.Free);
    }

    private BondBeam? Own(BondBeam beam)
    {
        var middle = (beam.Bottom.Mm + beam.Top.Mm) / 2;
        var from = Length.Max(beam.From, Before is { } before ? Length.FromMm(before.AtHeight(middle)) : beam.From);
        var to = Length.Min(beam.To, After is { } after ? Length.FromMm(after.AtHeight(middle)) : beam.To);
        return from < to ? beam with { From = from, To = to, Outline = beam.Outline is { } outline ? Face(outline) : null } : null;
    }

    private ImmutableArray<ElevationPoint> Face(ImmutableArray<ElevationPoint> outline) =>
    [
        .. Clip.Face([.. outline.Select(point => new Point(point.S.Mm, point.Z.Mm))], new Box(Before?.At ?? -Far, -Far, After?.At ?? Far, Far))
            .Select(point => new ElevationPoint(Length.FromMm(point.X), Length.FromMm(point.Y))),
    ];
}
