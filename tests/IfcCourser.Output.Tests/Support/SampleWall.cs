using System.Collections.Immutable;
using IfcCourser.Catalogs;
using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Output.Tests.Support;

/// <summary>
/// An invented wall, laid in plain half bond by a few lines that know nothing of the solver: drawings need something to draw,
/// not a good bond.
/// </summary>
internal sealed record SampleWall(Catalog Catalog, string Name, Length Run, int CourseCount)
{
    private static readonly Length _tooSmall = Length.FromMm(90);

    public ImmutableArray<OpeningLayout> Openings { get; init; } = [];

    public ImmutableArray<Lintel> Lintels { get; init; } = [];

    public ImmutableArray<Core> Cores { get; init; } = [];

    public ImmutableArray<Finding> Findings { get; init; } = [];

    /// <summary>Height of the last course where it is ripped.</summary>
    public Length? Rip { get; init; }

    /// <summary>Upper outline over the eaves, from right to left; empty for a level top.</summary>
    public ImmutableArray<ElevationPoint> Gable { get; init; } = [];

    public Vector3 Origin { get; init; } = new(0, 0, 0);

    public Vector2 Direction { get; init; } = new(1, 0);

    public long StepId { get; init; } = 100;

    public string Storey { get; init; } = "Ground floor";

    public Length Bed => Catalog.LevellingBed.Nominal;

    public Length BottomOf(int course) => Bed + (Catalog.CoursePitch * (course - 1));

    public Length TopOf(int course) =>
        BottomOf(course) + (course == CourseCount && Rip is { } rip ? rip : Catalog.UnitHeight);

    public WallLayout Laid()
    {
        var courses = Enumerable.Range(1, CourseCount).Select(CourseOf).ToImmutableArray();
        var pieces = courses.SelectMany(course => course.Pieces).ToArray();
        var top = TopOf(CourseCount);
        ImmutableArray<ElevationPoint> outline = Gable.IsEmpty
            ? [new(Length.Zero, Length.Zero), new(Run, Length.Zero), new(Run, top), new(Length.Zero, top)]
            : [new(Length.Zero, Length.Zero), new(Run, Length.Zero), .. Gable];
        return new WallLayout
        {
            Wall = new Wall
            {
                Identity = new WallIdentity("0Sample" + Name, StepId, Name, Storey, "Sample type"),
                Frame = new WallFrame(Origin, Direction, Run, Catalog.Widths[^2].Actual),
                Body = new BodyFacts(1, 1, Origin, Origin),
                Outline = outline,
                Openings = [.. Openings.Select(opening => opening.Opening)],
                Start = WallEnd.Free,
                End = WallEnd.Free,
                Findings = [],
            },
            Group = "G1",
            LevelLine = TopOf(1),
            Openings = Openings,
            ModuleLines = new ModuleLines(Length.Zero, Catalog.Module),
            Courses = courses,
            Lintels = Lintels,
            Cores = Cores,
            BondBeams = [],
            MovementJoints = [],
            Embeds = [],
            Quantities = new WallQuantities(
                12.5, 3.5, 9, 2.25, pieces.Count(piece => piece.Cut == Cuts.None), pieces.Count(piece => piece.Cut != Cuts.None), 0, 0),
            Findings = Findings,
        };
    }

    private Course CourseOf(int number)
    {
        var (bottom, top) = (BottomOf(number), TopOf(number));
        var spans = Spans(bottom, top);
        var pieces = spans.SelectMany(span => Fill(number, span, bottom, top)).ToArray();
        var kind = number == 1 ? CourseKind.Levelling : top - bottom < Catalog.UnitHeight ? CourseKind.Rip : CourseKind.Unit;
        return new Course(
            number,
            kind,
            bottom,
            top,
            [.. spans.Select(span => new Span(span, EdgeKind.Free, EdgeKind.Free))],
            [.. pieces.Select((piece, i) => piece with { Id = FormattableString.Invariant($"C{number}P{i + 1}") })]);
    }

    /// <summary>What openings and lintels leave of a course; under a gable what is in its outline at the course's bottom.</summary>
    private List<Interval> Spans(Length bottom, Length top)
    {
        var gone = Openings.Select(o => o.Placed).Concat(Lintels.Select(l => new ElevationRect(l.From, l.To, l.Bottom, l.Top)))
            .Where(rect => rect.Bottom < top && rect.Top > bottom)
            .OrderBy(rect => rect.Left);
        var (from, end) = Gable.IsEmpty ? (Length.Zero, Run) : (GableAt(bottom, left: true), GableAt(bottom, left: false));
        var spans = new List<Interval>();
        foreach (var rect in gone)
        {
            spans.Add(new Interval(from, rect.Left));
            from = rect.Right;
        }

        spans.Add(new Interval(from, end));
        return [.. spans.Where(span => span.Size > _tooSmall)];
    }

    private IEnumerable<Piece> Fill(int number, Interval span, Length bottom, Length top)
    {
        var pitch = Catalog.Pitch;
        var offset = number % 2 == 1 ? Length.Zero : pitch / 2;
        var from = span.From;
        while (from < span.To)
        {
            var next = (from - offset).FloorTo(pitch) + pitch + offset;
            next = next - from < _tooSmall ? next + pitch : next;
            var to = Length.Min(next - Catalog.HeadJoint.Nominal, span.To);
            to = to - from > Catalog.UnitLength ? from + Catalog.UnitLength : to;
            if (span.To - to < _tooSmall)
            {
                to = span.To - from <= Catalog.UnitLength ? span.To : span.To - _tooSmall - Catalog.HeadJoint.Nominal;
            }

            yield return PieceOf(from, to, bottom, top);
            from = to + Catalog.HeadJoint.Nominal;
        }
    }

    private Piece PieceOf(Length from, Length to, Length bottom, Length top)
    {
        var cut = (to - from < Catalog.UnitLength ? Cuts.Length : Cuts.None) | (top - bottom < Catalog.UnitHeight ? Cuts.Height : Cuts.None);
        var outline = Raked(from, to, bottom, top);
        cut = outline is null ? cut : Cuts.Rake;
        return new Piece
        {
            Id = string.Empty,
            Product = "unit",
            From = from,
            To = to,
            Bottom = bottom,
            Top = top,
            Outline = outline,
            Cut = cut,
            IsFull = cut == Cuts.None,
            Cores = [.. Cores.Where(core => core.At > from && core.At < to).Select(core => core.Id)],
        };
    }

    /// <summary>The piece's corners under the gable, where it is not a whole rectangle.</summary>
    private ImmutableArray<ElevationPoint>? Raked(Length from, Length to, Length bottom, Length top)
    {
        if (Gable.IsEmpty || (GableAt(top, left: true) <= from && GableAt(top, left: false) >= to))
        {
            return null;
        }

        var upper = new[] { to, GableAt(top, left: false), GableAt(top, left: true), from }
            .Where(s => s >= from && s <= to)
            .OrderByDescending(s => s)
            .Select(s => new ElevationPoint(s, Length.Min(top, RoofAt(s))));
        return [new(from, bottom), new(to, bottom), .. upper.Where(p => p.Z > bottom).Distinct()];
    }

    private Length RoofAt(Length s)
    {
        for (var i = 0; i + 1 < Gable.Length; i++)
        {
            var (a, b) = (Gable[i + 1], Gable[i]);
            if (s >= a.S && s <= b.S)
            {
                return Length.FromMm(a.Z.Mm + ((s - a.S).Mm / (b.S - a.S).Mm * (b.Z - a.Z).Mm));
            }
        }

        return Gable[0].Z;
    }

    private Length GableAt(Length z, bool left)
    {
        for (var i = 0; i + 1 < Gable.Length; i++)
        {
            var (a, b) = (Gable[i], Gable[i + 1]);
            var climbs = a.Z < b.Z;
            if (climbs != left && z >= Length.Min(a.Z, b.Z) && z <= Length.Max(a.Z, b.Z))
            {
                return Length.FromMm(a.S.Mm + ((z - a.Z).Mm / (b.Z - a.Z).Mm * (b.S - a.S).Mm));
            }
        }

        return left ? Length.Zero : Run;
    }
}
