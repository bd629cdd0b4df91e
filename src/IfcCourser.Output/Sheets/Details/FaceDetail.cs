using IfcCourser.Layouts;
using IfcCourser.Output.Sheets.Walls;
using IfcCourser.Units;

namespace IfcCourser.Output.Sheets.Details;

/// <summary>Places of a wall's face: jamb and sill, a lintel's bearing, a movement joint.</summary>
internal static class FaceDetail
{
    public static IEnumerable<Detail> Of(Layout layout) => Sills(layout).Concat(Bearings(layout)).Concat(MovementJoints(layout));

    private static IEnumerable<Detail> Sills(Layout layout)
    {
        var (pitch, course) = (layout.Rules.Catalog.Pitch.Mm, layout.Rules.Catalog.CoursePitch.Mm);
        var places = from wall in layout.Walls
                     from pair in wall.Openings.Zip(OpeningTags.Of(wall.Openings))
                     where pair.First is { Interrupts: true, Outline: null } && pair.First.Placed.Bottom > wall.Courses[0].Top && pair.First.Placed.Left.Mm > pitch
                     select (Wall: wall, pair.First.Placed, Tag: pair.Second);
        return places.Take(1).Select(place => new Detail(
            DetailText.Sill(WallNumbers.Sheet(layout, place.Wall), place.Tag),
            canvas =>
            {
                var facts = new WallFacts(layout, place.Wall);
                var (left, sill) = (place.Placed.Left.Mm, place.Placed.Bottom.Mm);
                var window = new Box(left - (1.4 * pitch), sill - (1.6 * course), left + (0.7 * pitch), sill + (2.6 * course));
                Masonry(canvas, facts, window);
                Widths(canvas, facts, window, left, facts.Wall.Courses.Where(c => c.Bottom.Mm < window.Top && c.Bottom.Mm >= sill - 1).Take(2));
                Levels(canvas, facts, window, [sill, .. facts.Wall.Courses.Select(c => c.Top.Mm)]);
                canvas.Write(new TextItem(Pen.Text, new Point(left + (0.35 * pitch), sill + (0.6 * course)), place.Tag, 3.5, TextAnchor.Middle));
            }));
    }

    private static IEnumerable<Detail> Bearings(Layout layout)
    {
        var (pitch, course) = (layout.Rules.Catalog.Pitch.Mm, layout.Rules.Catalog.CoursePitch.Mm);
        var places = from wall in layout.Walls
                     from lintel in wall.Lintels
                     where lintel.Kind != Catalogs.LintelKind.Formed && lintel.From.Mm > 0.8 * pitch
                     select (Wall: wall, Lintel: lintel);
        return places.Take(1).Select(place => new Detail(
            DetailText.Bearing(WallNumbers.Sheet(layout, place.Wall), place.Lintel, new SheetLengths(layout.Rules.Catalog.Units)),
            canvas =>
            {
                var facts = new WallFacts(layout, place.Wall);
                var lintel = place.Lintel;
                var jamb = (lintel.From + lintel.BearingLeft).Mm;
                var window = new Box(lintel.From.Mm - (0.8 * pitch), lintel.Bottom.Mm - (2.4 * course), jamb + (0.7 * pitch), lintel.Top.Mm + (0.8 * course));
                Masonry(canvas, facts, window);
                var tier = new RunningTier(DimensionAxis.Horizontal, jamb, window.Bottom, window.Bottom - (4 * canvas.PerPaper), TextSide.Before);
                tier.Draw(canvas, facts.Text, [new Station(lintel.From.Mm, lintel.Id + "  ")]);
                Levels(canvas, facts, window, [lintel.Bottom.Mm, lintel.Top.Mm, .. facts.Wall.Courses.Select(c => c.Top.Mm)]);
            }));
    }

    private static IEnumerable<Detail> MovementJoints(Layout layout)
    {
        var (pitch, course) = (layout.Rules.Catalog.Pitch.Mm, layout.Rules.Catalog.CoursePitch.Mm);
        var text = new SheetLengths(layout.Rules.Catalog.Units);
        var places = from wall in layout.Walls
                     from joint in wall.MovementJoints
                     select (Wall: wall, Joint: joint);
        return places.Take(1).Select(place => new Detail(
            DetailText.MovementJoint(WallNumbers.Sheet(layout, place.Wall), place.Joint, text),
            canvas =>
            {
                var facts = new WallFacts(layout, place.Wall);
                var rect = place.Joint.Rect;
                var window = new Box(rect.Left.Mm - (1.2 * pitch), facts.Bottom - 30, rect.Right.Mm + (1.2 * pitch), facts.Bottom + (3.4 * course));
                Masonry(canvas, facts, window);
                canvas.AddRange(new[] { rect.Left.Mm, rect.Right.Mm }
                    .Select(s => Clip.Line(new LineItem(Pen.MovementJoint, new Point(s, facts.Bottom), new Point(s, rect.Top.Mm)), window)).OfType<LineItem>());
                Widths(canvas, facts, window, rect.Left.Mm, facts.Wall.Courses.Take(2));
                Levels(canvas, facts, window, facts.Wall.Courses.Select(c => c.Top.Mm));
            }));
    }

    /// <summary>Blocks, lintels, cores and edges of openings inside the window, and the window's edge.</summary>
    private static void Masonry(Canvas canvas, WallFacts facts, Box window)
    {
        foreach (var piece in facts.Wall.Courses.SelectMany(course => course.Pieces))
        {
            ImmutableArray<Point> corners = [.. PieceShape.CornersOf(piece).Select(corner => corner + new Point(piece.From.Mm, piece.Bottom.Mm))];
            if (piece.Cut != Cuts.None)
            {
                Hatch(canvas, Pen.CutHatch, corners, HatchKind.Cut, window);
            }

            canvas.AddRange(Clip.Edges(PieceBlock.IsWhole(piece) ? Pen.WholeBlock : Pen.CutBlock, corners, window));
        }

        foreach (var lintel in facts.Wall.Lintels)
        {
            var corners = new Box(lintel.From.Mm, lintel.Bottom.Mm, lintel.To.Mm, lintel.Top.Mm).Corners();
            Hatch(canvas, Pen.LintelHatch, corners, Lintels.KindOf(lintel), window);
            canvas.AddRange(Clip.Edges(Pen.Lintel, corners, window));
        }

        canvas.AddRange(facts.Wall.Openings.Where(opening => opening.Interrupts)
            .SelectMany(opening => Clip.Edges(Pen.OuterEdge, Openings.BoxOf(opening.Placed).Corners(), window)));
        canvas.AddRange(facts.Wall.Cores
            .Select(core => Clip.Line(new LineItem(Pen.Core, new Point(core.At.Mm, core.Bottom.Mm), new Point(core.At.Mm, core.Top.Mm)), window)).OfType<LineItem>());
        canvas.Add(PolylineItem.Rectangle(Pen.Table, window));
    }

    private static void Hatch(Canvas canvas, Pen pen, ImmutableArray<Point> corners, HatchKind kind, Box window)
    {
        if (Clip.Face(corners, window) is { IsEmpty: false } face)
        {
            canvas.Add(new HatchItem(pen, [face], kind));
        }
    }

    /// <summary>Far ends of the blocks of two courses from an origin, the lower course nearer.</summary>
    private static void Widths(Canvas canvas, WallFacts facts, Box window, double origin, IEnumerable<Course> courses)
    {
        var mm = canvas.PerPaper;
        foreach (var course in courses)
        {
            var ends = course.Pieces.Select(piece => piece.To.Mm <= origin ? piece.From.Mm : piece.To.Mm).Where(s => s > window.Left + 1 && s < window.Right - 1);
            var heading = canvas.Extent.Bottom - (4 * mm);
            canvas.Write(new TextItem(Pen.Text, new Point(window.Left, heading), DetailText.Course(course.Number), Panels.Table.TextHeight));
            new RunningTier(DimensionAxis.Horizontal, origin, heading - (2 * mm), heading - (4 * mm), TextSide.Before)
                .Draw(canvas, facts.Text, ends.Select(s => new Station(s)));
        }
    }

    /// <summary>Heights from the level line, left of the window; those that would touch step aside.</summary>
    private static void Levels(Canvas canvas, WallFacts facts, Box window, IEnumerable<double> heights)
    {
        var mm = canvas.PerPaper;
        var (near, far) = (window.Left - (3 * mm), window.Left - (6 * mm));
        ImmutableArray<double> inside = [.. heights.Where(z => z > window.Bottom && z < window.Top).Distinct().Order()];
        foreach (var (z, place) in inside.Zip(RunningTier.Spread(inside, RunningTier.Pitch * mm)))
        {
            canvas.Add(new LineItem(Pen.Dimension, new Point(window.Left, z), new Point(near, z)));
            canvas.Add(new LineItem(Pen.Dimension, new Point(near, z), new Point(far, place)));
            canvas.Write(new TextItem(
                Pen.Dimension, new Point(far - (0.5 * mm), place), facts.Text.Height(Length.FromMm(z - facts.LevelLine)), Panels.Table.TextHeight, TextAnchor.MiddleRight));
        }
    }
}
