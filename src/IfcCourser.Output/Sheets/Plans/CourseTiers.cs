using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Output.Sheets.Walls;
using IfcCourser.Units;

namespace IfcCourser.Output.Sheets.Plans;

/// <summary>Running dimensions along all four sides of a course's plan: faces of walls, jambs and ends of masonry, from the plan's zero lines.</summary>
internal static class CourseTiers
{
    /// <param name="checks">Further points of the tiers at the foot and at the left, by axis.</param>
    public static void Draw(Canvas canvas, PlanFacts facts, Func<DimensionAxis, IEnumerable<PlanStation>>? checks = null)
    {
        var mm = canvas.PerPaper;
        var (box, outer) = (canvas.Extent, canvas.Extent.Grown(7 * mm));
        var across = facts.Walls.SelectMany(wall => Stations(facts, wall, DimensionAxis.Horizontal)).ToArray();
        var up = facts.Walls.SelectMany(wall => Stations(facts, wall, DimensionAxis.Vertical)).ToArray();
        foreach (var side in new[] { TextSide.Before, TextSide.After })
        {
            var isFirst = side == TextSide.Before;
            var xs = across.Where(station => station.At.Y - box.Bottom <= box.Top - station.At.Y == isFirst);
            var ys = up.Where(station => station.At.X - box.Left <= box.Right - station.At.X == isFirst);
            Tier(facts.Part, DimensionAxis.Horizontal, side, outer).Draw(canvas, facts.Text, [.. xs, .. Further(DimensionAxis.Horizontal, isFirst ? box.Bottom : box.Top, isFirst)]);
            Tier(facts.Part, DimensionAxis.Vertical, side, outer).Draw(canvas, facts.Text, [.. ys, .. Further(DimensionAxis.Vertical, isFirst ? box.Left : box.Right, isFirst)]);
        }

        IEnumerable<PlanStation> Further(DimensionAxis axis, double from, bool isFirst) =>
            PlanPart.Matches(facts.Part, axis, from).Concat(isFirst ? checks?.Invoke(axis) ?? [] : []);
    }

    /// <summary>A tier beside a plan, as far as a part of it goes.</summary>
    /// <param name="outer">Where the tiers' lines lie.</param>
    public static PlanTier Tier(PlanPart? part, DimensionAxis axis, TextSide side, Box outer)
    {
        var (low, high) = axis == DimensionAxis.Horizontal ? (outer.Bottom, outer.Top) : (outer.Left, outer.Right);
        return new PlanTier(axis, side == TextSide.Before ? low : high, side) { Shown = PlanPart.Shown(part, axis) };
    }

    /// <summary>Whether a face lies past a match line across the tier, for a block that the line crosses.</summary>
    private static bool Past(PlanEdge edge, Point at, DimensionAxis axis, PlanPart part) => edge.IsUpright == (axis == DimensionAxis.Horizontal)
        && (axis == DimensionAxis.Horizontal ? at.X < part.Window.Left || at.X > part.Window.Right : at.Y < part.Window.Bottom || at.Y > part.Window.Top);

    /// <summary>Along the axis: where masonry of walls along it stops, and the faces of walls across it.</summary>
    private static IEnumerable<PlanStation> Stations(PlanFacts facts, WallLayout wall, DimensionAxis axis)
    {
        if (facts.AxisOf(wall) is not { } own)
        {
            return [];
        }

        var middle = wall.Frame.Thickness / 2;
        if (own == axis)
        {
            var jambs = facts.OpeningsIn(wall)
                .SelectMany(pair => new[] { pair.Opening.Placed.Left, pair.Opening.Placed.Right }.Select(s => (At: s, Word: $"{facts.NumberOf(wall)} {pair.Tag}")));
            var ends = new[] { Length.Zero, wall.Frame.Length }.Select(s => (At: s, Word: string.Empty));
            return jambs.Concat(ends).Select(place => new PlanStation(facts.At(wall, place.At, middle), [], place.Word)).Where(station => facts.Shows(station.At));
        }

        var shown = facts.CourseOf(wall).Spans.Select(span => span.Run).ToArray();
        var run = facts.Part is null || shown.Length == 0 ? new Interval(Length.Zero, wall.Frame.Length) : new Interval(shown.Min(one => one.From), shown.Max(one => one.To));
        var foot = new[] { run.From, run.To }.Select(s => (S: s, At: facts.At(wall, s, middle)))
            .OrderBy(end => axis == DimensionAxis.Horizontal ? end.At.Y : end.At.X).First().S;
        return new[] { Length.Zero, wall.Frame.Thickness }.Select(t => new PlanStation(facts.At(wall, foot, t), [], facts.NumberOf(wall)))
            .Where(station => facts.Part?.Edges.Any(edge => Past(edge, station.At, axis, facts.Part)) != true);
    }
}
