using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Output.Sheets.Plans;
using IfcCourser.Output.Sheets.Walls;

namespace IfcCourser.Output.Sheets.Panels;

/// <summary>
/// The storey's walls in plan, not to scale: those of the sheet filled, each with its run from A to B and an arrow where the viewer stands, several with their numbers.
/// </summary>
internal static class KeyPlan
{
    private const double PictureHeight = 46;
    private const double Margin = 6;

    /// <summary>With room for numbers outside the walls.</summary>
    private const double NumberMargin = 10;

    /// <summary>One plan; where several walls have no room for their numbers, one for each.</summary>
    /// <param name="walls">At least one, all of a storey.</param>
    public static IEnumerable<Panel> Of(ImmutableArray<WallFacts> walls) =>
        TryDraw(walls, SheetText.KeyPlan) is { } all ? [all] : walls.Select(wall => TryDraw([wall], SheetText.KeyPlanOf(wall.Number))!);

    private static Panel? TryDraw(ImmutableArray<WallFacts> shown, string title)
    {
        var walls = shown[0].Layout.Walls.Where(wall => wall.Identity.Storey == shown[0].Wall.Identity.Storey).ToArray();
        var real = Box.Around(walls.SelectMany(wall => Footprint(wall)));
        var margin = shown.Length == 1 ? Margin : NumberMargin;
        var factor = Math.Min(
            (Panel.Width - (2 * margin)) / Math.Max(real.Width, 1), (PictureHeight - (2 * margin)) / Math.Max(real.Height, 1));
        var middle = new Point(Panel.Width / 2, -PictureHeight / 2);
        var canvas = new Canvas(1);
        foreach (var wall in walls.Where(wall => shown.All(one => one.Whole != wall || one.Stretch is not null)))
        {
            canvas.Add(new PolylineItem(Pen.Neighbour, [.. Footprint(wall).Select(Placed)], PathEnd.Closed));
        }

        foreach (var facts in shown)
        {
            canvas.Add(new HatchItem(Pen.ThisWall, [[.. Shown(facts).Select(Placed)]], HatchKind.Solid));
        }

        var runs = shown.Select(facts => new Run(facts, Placed)).ToArray();
        if (!IsMarked(canvas, walls.Select(wall => Footprint(wall).Select(Placed).ToImmutableArray()), runs))
        {
            return null;
        }

        return new Panel([Table.Heading(title)], [new PanelRow(PictureHeight, canvas.Drawn())]);

        Point Placed(Point p) => middle + ((p - real.Middle) * factor);
    }

    /// <summary>Letters stand where nothing else does, for A is at the viewer's left; false where the number of one of several walls has no room.</summary>
    private static bool IsMarked(Canvas canvas, IEnumerable<ImmutableArray<Point>> loops, Run[] runs)
    {
        foreach (var loop in loops)
        {
            PlanShape.Take(canvas, loop);
        }

        TakeOutside(canvas);
        foreach (var run in runs)
        {
            run.Arrow(canvas);
        }

        var placed = runs.Length == 1 || runs.All(run => PlanTag.TryPlace(canvas, run.Tail, SheetText.WallNumber(run.Facts.Number), Pen.Heading));
        foreach (var letter in runs.SelectMany(run => run.Ends).Select(places => places.FirstOrDefault(letter => canvas.IsFree(TextMetrics.BoxOf(letter)))).OfType<TextItem>())
        {
            canvas.Write(letter);
        }

        return placed;
    }

    private static void TakeOutside(Canvas canvas)
    {
        const double Far = 1000;
        canvas.Take(new Box(-Far, -Far, 0, Far));
        canvas.Take(new Box(Panel.Width, -Far, Far, Far));
        canvas.Take(new Box(-Far, 0, Far, Far));
        canvas.Take(new Box(-Far, -Far, Far, -PictureHeight));
    }

    private static ImmutableArray<Point> Footprint(WallLayout wall) => [.. wall.Wall.Footprint().Select(p => new Point(p.X, p.Y))];

    /// <summary>What the sheet shows of the wall; all of a curved one.</summary>
    private static ImmutableArray<Point> Shown(WallFacts facts)
    {
        var frame = facts.Whole.Frame;
        if (facts.Stretch is not { } stretch || frame.Curve is not null)
        {
            return Footprint(facts.Whole);
        }

        var (from, to) = (stretch.Before is { } before ? Units.Length.FromMm(before.At) : Units.Length.Zero, stretch.After is { } after ? Units.Length.FromMm(after.At) : frame.Length);
        return [.. new[] { (from, frame.Thickness), (to, frame.Thickness), (to, Units.Length.Zero), (from, Units.Length.Zero) }
            .Select(corner => frame.PointAt(corner.Item1, corner.Item2, Units.Length.Zero)).Select(p => new Point(p.X, p.Y))];
    }

    /// <summary>A wall's run in the plan. The elevation has its start at the left, so the viewer stands on the right of the run.</summary>
    private sealed class Run
    {
        private static readonly ImmutableArray<(double Before, double Aside)> _places = [(2.5, 1.5), (-1.5, 2.8), (-3, 2.8), (2.8, -2), (-1.5, -4.5), (-4.5, 2.8)];
        private readonly Point _along;
        private readonly Point _away;
        private readonly Point _start;
        private readonly Point _end;
        private readonly Point _tip;

        public Run(WallFacts facts, Func<Point, Point> placed)
        {
            var frame = facts.Wall.Frame;
            var corners = Footprint(facts.Whole);
            Facts = facts;
            _along = new Point(frame.Direction.X, frame.Direction.Y);
            _away = new Point(frame.Normal.X, frame.Normal.Y) * -1;
            (_start, _end) = (placed(corners[0]), placed(corners[(corners.Length / 2) - 1]));
            var middle = facts.Stretch is null ? frame.Length / 2 : Units.Length.FromMm((facts.Left + facts.Right) / 2);
            _tip = placed(Plan(frame.PointAt(middle, frame.Thickness, Units.Length.Zero))) + (_away * 1.5);
        }

        public WallFacts Facts { get; }

        /// <summary>Of the arrow.</summary>
        public Point Tail => _tip + (_away * 4);

        public void Arrow(Canvas canvas)
        {
            var line = new LineItem(Pen.Text, _tip, Tail);
            canvas.Add(line);
            canvas.TakeLine(line);
            canvas.Add(new HatchItem(
                Pen.Text, [[_tip, _tip + (_away * 1.8) + (_along * 0.7), _tip + (_away * 1.8) - (_along * 0.7)]], HatchKind.Solid));
        }

        /// <summary>Places for the letter of each end, the best first: before the end or beside it, on the viewer's side, then on the other.</summary>
        public IEnumerable<IEnumerable<TextItem>> Ends => [Places("A", _start, -1), Places("B", _end, 1)];

        private IEnumerable<TextItem> Places(string letter, Point end, int outwards) =>
            _places.Select(place => new TextItem(Pen.Heading, end + (_along * (place.Before * outwards)) + (_away * place.Aside), letter, 2.5, TextAnchor.Middle));

        private static Point Plan(Vector3 p) => new(p.X, p.Y);
    }
}
