using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Output.Sheets.Walls;
using IfcCourser.Units;

namespace IfcCourser.Output.Sheets.Plans;

/// <summary>The blocks of a storey's course as bonded, seen from above, with openings, bars and movement joints.</summary>
internal static class CoursePlan
{
    private const double TextHeight = 2.5;
    private static readonly double[] _shares = [0.5, 0.35, 0.65, 0.25, 0.75];

    public static void Draw(Canvas canvas, PlanFacts facts)
    {
        foreach (var wall in facts.Walls)
        {
            Blocks(canvas, facts, wall);
        }

        foreach (var wall in facts.Walls)
        {
            Cores(canvas, facts, wall);
            EmbedMarks.Draw(canvas, wall, (s, t) => facts.At(wall, s, t));
            Joints(canvas, facts, wall);
            JambsOver(canvas, facts, wall);
        }

        foreach (var wall in facts.Walls)
        {
            Cuts(canvas, facts, wall);
        }
    }

    /// <summary>Numbers of walls and tags of openings, once all else has its place.</summary>
    public static void Tag(Canvas canvas, PlanFacts facts)
    {
        foreach (var wall in facts.Walls)
        {
            foreach (var (opening, tag) in facts.OpeningsIn(wall).Concat(facts.OpeningsOver(wall)))
            {
                var (from, to) = (opening.Placed.Left, opening.Placed.Right);
                var middle = facts.At(wall, (from + to) / 2, wall.Frame.Thickness / 2);
                var inside = new TextItem(Pen.Text, middle, tag, TextHeight, TextAnchor.Middle);
                if (canvas.IsFree(ItemBox.Of(inside, canvas.PerPaper)) && facts.OpeningsIn(wall).Any(pair => pair.Opening == opening))
                {
                    canvas.Write(inside);
                    continue;
                }

                PlanTag.Place(canvas, middle, tag, Pen.Text);
            }

            PlanTag.Place(canvas, facts.At(wall, LongestSpan(facts, wall), wall.Frame.Thickness / 2), facts.NumberOf(wall), Pen.Heading);
        }
    }

    /// <summary>The middle of the longest stretch of the wall that the sheet shows.</summary>
    public static Length LongestSpan(PlanFacts facts, WallLayout wall)
    {
        var spans = facts.CourseOf(wall).Spans;
        return spans.IsEmpty ? wall.Frame.Length / 2 : spans.Select(span => span.Run).MaxBy(run => run.Size) is var run ? (run.From + run.To) / 2 : default;
    }

    private static void Blocks(Canvas canvas, PlanFacts facts, WallLayout wall)
    {
        var course = facts.CourseOf(wall);
        canvas.AddRange(course.Pieces.Select(piece => new PolylineItem(
            PieceBlock.IsWhole(piece) ? Pen.WholeBlock : Pen.CutBlock, LoopOf(facts, wall, piece), PathEnd.Closed)));
        foreach (var span in course.Spans)
        {
            var loop = PlanShape.Loop(wall, span.Run, facts.At);
            canvas.Add(new PolylineItem(Pen.OuterEdge, loop, PathEnd.Closed));
            PlanShape.Take(canvas, loop);
        }
    }

    private static void Cores(Canvas canvas, PlanFacts facts, WallLayout wall)
    {
        var course = facts.CourseOf(wall);
        foreach (var core in wall.Cores.Where(core => core.Bottom < course.Top && core.Top > course.Bottom))
        {
            var at = facts.At(wall, core.At, core.Across);
            var (radius, half) = (core.Diameter.Mm / 2, (core.Diameter.Mm / 2) + canvas.PerPaper);
            canvas.Add(ArcItem.Circle(Pen.Core, at, radius));
            canvas.Add(new LineItem(Pen.Core, at - new Point(half, 0), at + new Point(half, 0)));
            canvas.Add(new LineItem(Pen.Core, at - new Point(0, half), at + new Point(0, half)));
            canvas.Take(Box.At(at, 2 * radius, 2 * radius));
        }
    }

    /// <summary>Both faces, a little past the wall.</summary>
    private static void Joints(Canvas canvas, PlanFacts facts, WallLayout wall)
    {
        var course = facts.CourseOf(wall);
        var past = Length.FromMm(2 * canvas.PerPaper);
        foreach (var rect in wall.MovementJoints.Select(joint => joint.Rect).Where(rect => rect.Bottom < course.Top && rect.Top > course.Bottom))
        {
            canvas.AddRange(new[] { rect.Left, rect.Right }
                .Select(s => new LineItem(Pen.MovementJoint, facts.At(wall, s, -past), facts.At(wall, s, wall.Frame.Thickness + past))));
            PlanTag.Place(canvas, facts.At(wall, rect.Left, -past), PlanText.MovementJoint, Pen.Text);
        }
    }

    private static void JambsOver(Canvas canvas, PlanFacts facts, WallLayout wall) => canvas.AddRange(
        from pair in facts.OpeningsOver(wall)
        from s in new[] { pair.Opening.Placed.Left, pair.Opening.Placed.Right }
        select new LineItem(Pen.OpeningAbove, facts.At(wall, s, Length.Zero), facts.At(wall, s, wall.Frame.Thickness)));

    /// <summary>Sawn pieces: hatched, with their length where there is room; the wall's sheet has them all.</summary>
    private static void Cuts(Canvas canvas, PlanFacts facts, WallLayout wall)
    {
        foreach (var piece in facts.CourseOf(wall).Pieces.Where(piece => piece.Cut != Layouts.Cuts.None))
        {
            if (piece.Cut.HasFlag(Layouts.Cuts.Length) && Label(canvas, facts, wall, piece) is { } label)
            {
                canvas.Write(label);
            }

            canvas.Add(new HatchItem(Pen.CutHatch, [LoopOf(facts, wall, piece)], HatchKind.Cut));
        }
    }

    /// <summary>Along the wall, or across it in a short piece; null where neither fits or the wall is askew.</summary>
    private static TextItem? Label(Canvas canvas, PlanFacts facts, WallLayout wall, Piece piece)
    {
        if (facts.AxisOf(wall) is not { } axis)
        {
            return null;
        }

        var box = Box.Around(LoopOf(facts, wall, piece));
        var along = axis == DimensionAxis.Horizontal ? 0.0 : 90.0;
        var places = from degrees in new[] { along, 90 - along }
                     from share in _shares
                     let at = facts.At(wall, piece.From + Length.FromMm(share * piece.Length.Mm), wall.Frame.Thickness / 2)
                     select new TextItem(Pen.CutLength, at, facts.Text.Piece(piece.Length), TextHeight, TextAnchor.Middle, degrees);
        return places.FirstOrDefault(text =>
            ItemBox.Of(text, canvas.PerPaper) is var taken && box.Contains(taken.Grown(0.2 * canvas.PerPaper)) && canvas.IsFreeOfText(taken));
    }

    private static ImmutableArray<Point> LoopOf(PlanFacts facts, WallLayout wall, Piece piece) =>
        PlanShape.Loop(wall, new Interval(piece.From, piece.To), facts.At);
}
