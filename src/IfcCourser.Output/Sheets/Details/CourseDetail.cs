using IfcCourser.Layouts;
using IfcCourser.Output.Sheets.Plans;
using IfcCourser.Output.Sheets.Walls;
using IfcCourser.Walls;

namespace IfcCourser.Output.Sheets.Details;

/// <summary>Where two walls meet, in plan: its first and its second course beside each other.</summary>
internal static class CourseDetail
{
    /// <summary>The first junction of a kind whose walls run along the plan's axes.</summary>
    public static IEnumerable<Detail> Of(Layout layout, JunctionKind kind)
    {
        var places = from junction in layout.Junctions
                     where junction.Kind == kind && junction.Walls.Length == 2
                     let walls = junction.Walls.Select(id => layout.Walls.FirstOrDefault(wall => string.Equals(wall.Identity.GlobalId, id, StringComparison.Ordinal))).OfType<WallLayout>().ToArray()
                     where walls.Length == 2 && walls.All(wall => wall.Courses.Length > 1) && string.Equals(walls[0].Identity.Storey, walls[1].Identity.Storey, StringComparison.Ordinal)
                     let facts = new PlanFacts(layout, walls[0].Identity.Storey, 0)
                     where walls.All(wall => facts.AxisOf(wall) is not null) && facts.AxisOf(walls[0]) != facts.AxisOf(walls[1])
                     orderby junction.How == JunctionHow.Butted
                     select (Junction: junction, Walls: walls);
        return places.Take(1).Select(place => new Detail(
            DetailText.Junction(place.Junction, WallNumbers.Sheet(layout, place.Walls[0]), WallNumbers.Sheet(layout, place.Walls[1])),
            canvas => Draw(canvas, layout, place.Walls, kind)));
    }

    private static void Draw(Canvas canvas, Layout layout, WallLayout[] walls, JunctionKind kind)
    {
        foreach (var index in new[] { 0, 1 })
        {
            var plan = new Canvas(canvas.PerPaper);
            Course(plan, new PlanFacts(layout, walls[0].Identity.Storey, index), walls, kind);
            var left = index == 0 ? 0 : canvas.Extent.Right + (6 * canvas.PerPaper);
            canvas.AddRange(plan.Items.Select(item => item.MovedBy(new Point(left - plan.Extent.Left, -plan.Extent.Top))));
        }
    }

    private static void Course(Canvas canvas, PlanFacts facts, WallLayout[] walls, JunctionKind kind)
    {
        var mm = canvas.PerPaper;
        var (origin, window) = WindowOf(facts, walls, kind);
        foreach (var wall in walls)
        {
            foreach (var piece in facts.CourseOf(wall).Pieces)
            {
                var loop = PlanShape.Loop(wall, new Geometry.Interval(piece.From, piece.To), facts.At);
                if (piece.Cut != Cuts.None && Clip.Face(loop, window) is { IsEmpty: false } face)
                {
                    canvas.Add(new HatchItem(Pen.CutHatch, [face], HatchKind.Cut));
                }

                canvas.AddRange(Clip.Edges(PieceBlock.IsWhole(piece) ? Pen.WholeBlock : Pen.CutBlock, loop, window));
            }

            foreach (var core in wall.Cores.Where(core => core.Bottom < facts.CourseOf(wall).Top && core.Top > facts.CourseOf(wall).Bottom))
            {
                var at = facts.At(wall, core.At, core.Across);
                if (window.Grown(-core.Diameter.Mm).Contains(Box.At(at, 1, 1)))
                {
                    canvas.Add(ArcItem.Circle(Pen.Core, at, core.Diameter.Mm / 2));
                }
            }

            Tier(canvas, facts, wall, walls.Single(other => other != wall), origin, window);
        }

        canvas.Add(PolylineItem.Rectangle(Pen.Table, window));
        canvas.Write(new TextItem(Pen.Text, new Point(window.Left, window.Top + (2 * mm)), PlanText.Course(facts.Index), Panels.Table.TextHeight));
    }

    /// <summary>Far ends of blocks from the outer face of the other wall, or at a tee from its middle, and that wall's faces.</summary>
    private static void Tier(Canvas canvas, PlanFacts facts, WallLayout wall, WallLayout other, Point origin, Box window)
    {
        var mm = canvas.PerPaper;
        var isLevel = facts.AxisOf(wall) == DimensionAxis.Horizontal;
        var from = isLevel ? origin.X : origin.Y;
        var ends = facts.CourseOf(wall).Pieces
            .Select(piece => new[] { piece.From, piece.To }.Select(s => facts.At(wall, s, wall.Frame.Thickness / 2)).MaxBy(p => Math.Abs((isLevel ? p.X : p.Y) - from)))
            .Where(p => window.Grown(-1).Contains(Box.At(p, 0.1, 0.1)))
            .Select(p => new Station(isLevel ? p.X : p.Y));
        var met = Box.Around(other.Wall.Footprint().Select(facts.At));
        var faces = (isLevel ? new[] { met.Left, met.Right } : [met.Bottom, met.Top])
            .Where(face => Math.Abs(face - from) > 1)
            .Select(face => new Station(face, $"{facts.NumberOf(other)}  "));
        var tier = isLevel
            ? new RunningTier(DimensionAxis.Horizontal, from, window.Bottom, window.Bottom - (4 * mm), TextSide.Before)
            : new RunningTier(DimensionAxis.Vertical, from, window.Left, window.Left - (4 * mm), TextSide.Before);
        tier.Draw(canvas, facts.Text, faces.Concat(ends));
    }

    /// <summary>Around the junction: at a corner from its outer faces inwards, at a tee to both sides.</summary>
    private static (Point Origin, Box Window) WindowOf(PlanFacts facts, WallLayout[] walls, JunctionKind kind)
    {
        var reach = (kind == JunctionKind.Corner ? 1.4 : 1.1) * facts.Layout.Rules.Catalog.Pitch.Mm;
        var margin = 4 * facts.Layout.Rules.Catalog.HeadJoint.Nominal.Mm + 40;
        var boxes = walls.Select(wall => Box.Around(wall.Wall.Footprint().Select(facts.At))).ToArray();
        var level = facts.AxisOf(walls[0]) == DimensionAxis.Horizontal ? 0 : 1;
        var (across, up) = (boxes[level], boxes[1 - level]);
        var isUpper = Math.Abs(up.Bottom - across.Bottom) <= Math.Abs(up.Top - across.Top) || Math.Abs(up.Bottom - across.Top) < Math.Abs(up.Top - across.Bottom);
        var isRight = Math.Abs(across.Left - up.Left) <= Math.Abs(across.Right - up.Right) || Math.Abs(across.Left - up.Right) < Math.Abs(across.Right - up.Left);
        if (kind != JunctionKind.Corner)
        {
            // The host runs past the abutting wall on both sides.
            var middle = new Point(up.Middle.X, across.Middle.Y);
            var isHostLevel = level == 0;
            var window = isHostLevel
                ? new Box(middle.X - reach, isUpper ? across.Bottom - margin : across.Top + margin - reach, middle.X + reach, isUpper ? across.Bottom - margin + reach : across.Top + margin)
                : new Box(isRight ? up.Left - margin : up.Right + margin - reach, middle.Y - reach, isRight ? up.Left - margin + reach : up.Right + margin, middle.Y + reach);
            return (middle, window);
        }

        var corner = new Point(isRight ? Math.Min(up.Left, across.Left) : Math.Max(up.Right, across.Right), isUpper ? Math.Min(up.Bottom, across.Bottom) : Math.Max(up.Top, across.Top));
        return (corner, new Box(
            isRight ? corner.X - margin : corner.X + margin - reach,
            isUpper ? corner.Y - margin : corner.Y + margin - reach,
            isRight ? corner.X - margin + reach : corner.X + margin,
            isUpper ? corner.Y - margin + reach : corner.Y + margin));
    }
}
