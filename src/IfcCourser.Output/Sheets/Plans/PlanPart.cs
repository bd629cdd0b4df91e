using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Output.Sheets.Details;
using IfcCourser.Output.Sheets.Walls;
using IfcCourser.Units;

namespace IfcCourser.Output.Sheets.Plans;

/// <summary>What one of several sheets shows of a storey's plan: what lies in a window, and blocks that its match lines cross, whole.</summary>
/// <param name="Index">From 1, in rows from the upper left.</param>
/// <param name="Count">Sheets that the plan takes.</param>
/// <param name="Window">Axes of the plan, real millimetres; without end where no part lies beyond.</param>
/// <param name="Edges">Match lines, each with the part beyond it.</param>
internal sealed record PlanPart(int Index, int Count, Box Window, ImmutableArray<PlanEdge> Edges)
{
    /// <summary>Along a match line, where its name is tried.</summary>
    private static readonly double[] _shares = [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8];

    /// <summary>A match line's own place is on both sheets.</summary>
    public bool Shows(Point at) => at.X >= Window.Left && at.X <= Window.Right && at.Y >= Window.Bottom && at.Y <= Window.Top;

    public bool Meets(Box box) => Window.Overlaps(box);

    /// <summary>The wall with what this sheet shows of one of its courses; null where it shows no block of it.</summary>
    /// <param name="at">Model axes, mm, to the axes of the plan.</param>
    public WallLayout? Of(WallLayout wall, int index, Func<Vector2, Point> at)
    {
        var course = wall.Courses[index];
        var pieces = course.Pieces.Where(piece => Meets(BoxOf(wall, new Interval(piece.From, piece.To), at))).ToImmutableArray();
        if (pieces.IsEmpty)
        {
            return null;
        }

        var spans = course.Spans.Select(span => WallStretch.Own(span, pieces)).OfType<Span>();
        return wall with
        {
            Courses = wall.Courses.SetItem(index, course with { Pieces = pieces, Spans = [.. spans] }),
            Cores = [.. wall.Cores.Where(core => Shows(at(wall.Frame.PointAt(core.At, core.Across, Length.Zero).Plan)))],
            MovementJoints = [.. wall.MovementJoints.Where(joint => Meets(BoxOf(wall, new Interval(joint.Rect.Left, joint.Rect.Right), at)))],
            Embeds = [.. wall.Embeds.Where(embed => Shows(at(wall.Frame.PointAt(embed.At, wall.Frame.Thickness / 2, Length.Zero).Plan)))],
        };
    }

    /// <summary>Bars, control points and check lines of a storey in the window; edges, grid and diagonals stay the whole storey's.</summary>
    /// <param name="at">Model axes, mm, to the axes of the plan.</param>
    public StoreySetOut Of(StoreySetOut storey, Func<Vector2, Point> at) => storey with
    {
        Bars = [.. storey.Bars.Where(bar => Shows(new Point(bar.X.Mm, bar.Y.Mm)))],
        ControlPoints = [.. storey.ControlPoints.Where(point => Shows(new Point(point.X.Mm, point.Y.Mm)))],
        CheckLines = [.. storey.CheckLines.Where(line => Clip.Line(new LineItem(Pen.GridLine, at(line.From), at(line.To)), Window) is not null)],
    };

    /// <summary>How far tiers along an axis reach.</summary>
    public static (double From, double To) Shown(PlanPart? part, DimensionAxis axis) => part is null ? (double.MinValue, double.MaxValue)
        : axis == DimensionAxis.Horizontal ? (part.Window.Left, part.Window.Right) : (part.Window.Bottom, part.Window.Top);

    /// <summary>The match lines' own places in the running dimensions: the same number stands on both sheets.</summary>
    /// <param name="from">Where the lines end beside the tier, across the axis.</param>
    public static IEnumerable<PlanStation> Matches(PlanPart? part, DimensionAxis axis, double from) => (part?.Edges ?? [])
        .Where(edge => edge.IsUpright == (axis == DimensionAxis.Horizontal))
        .Select(edge => new PlanStation(edge.IsUpright ? new Point(edge.At, from) : new Point(from, edge.At), [], SheetText.Match));

    /// <summary>Through the plan as it is drawn, with the sheets where it goes on.</summary>
    /// <param name="number">Of the whole plan.</param>
    public void Draw(Canvas canvas, string number)
    {
        var (mm, box) = (canvas.PerPaper, canvas.Extent);
        foreach (var edge in Edges)
        {
            var line = edge.IsUpright
                ? new LineItem(Pen.MatchLine, new Point(edge.At, box.Bottom - (3 * mm)), new Point(edge.At, box.Top + (3 * mm)))
                : new LineItem(Pen.MatchLine, new Point(box.Left - (3 * mm), edge.At), new Point(box.Right + (3 * mm), edge.At));
            canvas.Add(line);
            canvas.TakeLine(line);
            Name(canvas, line, PlanText.Part(number, edge.Beyond), edge.IsUpright ? 90 : 0);
        }
    }

    /// <summary>Beside the line where it is free, else past its end.</summary>
    private static void Name(Canvas canvas, LineItem line, string sheet, double degrees)
    {
        const double Height = 2.5;
        var mm = canvas.PerPaper;
        var aside = (degrees == 0 ? new Point(0, 3.2) : new Point(-3.2, 0)) * mm;
        var places = from name in new[] { SheetText.MatchLine(sheet), SheetText.MatchLineShort(sheet) }
                     from share in _shares
                     from side in new[] { aside, aside * -1 }
                     select new TextItem(Pen.Heading, line.From + ((line.To - line.From) * share) + side, name, Height, TextAnchor.Middle, degrees);
        var past = new TextItem(Pen.Heading, line.To + ((degrees == 0 ? new Point(1, 0) : new Point(0, 1)) * (2 * mm)), SheetText.MatchLineShort(sheet), Height, TextAnchor.MiddleLeft, degrees);
        canvas.Write(places.Where(text => canvas.IsFree(ItemBox.Of(text, mm))).DefaultIfEmpty(past).First());
    }

    private static Box BoxOf(WallLayout wall, Interval run, Func<Vector2, Point> at) => Box.Around(PlanShape.Loop(wall, run, at)).Grown(-0.5);
}
