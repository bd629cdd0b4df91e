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
        var told = Math.Max(facts.Layout.Rules.Catalog.HeadJoint.Max.Mm + 1, canvas.PerPaper / 2);
        var (across, up) = (Stations(facts, DimensionAxis.Horizontal, told), Stations(facts, DimensionAxis.Vertical, told));
        // A wall may begin where its course does not.
        var box = canvas.Extent.With(Box.Around(across.Concat(up).Select(station => station.At)));
        var outer = box.Grown(7 * canvas.PerPaper);
        foreach (var side in new[] { TextSide.Before, TextSide.After })
        {
            var isFirst = side == TextSide.Before;
            var xs = across.Where(station => station.At.Y <= box.Middle.Y + 1 == isFirst);
            var ys = up.Where(station => station.At.X <= box.Middle.X + 1 == isFirst);
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

    /// <summary>Along the axis: ends and jambs of walls along it, the faces of walls across it, and where a course stops at none of these.</summary>
    /// <param name="told">What can be told apart on the paper and is wider than a joint, real millimetres.</param>
    private static PlanStation[] Stations(PlanFacts facts, DimensionAxis axis, double told)
    {
        var measured = facts.Walls.SelectMany(wall => Stations(facts, wall, axis)).ToArray();
        var stops = facts.Walls.Where(wall => facts.AxisOf(wall) == axis).SelectMany(wall => Stops(facts, wall));
        var lines = measured.Concat(PlanPart.Matches(facts.Part, axis, 0)).Select(Along).ToArray();
        return [.. measured, .. stops.Where(stop => lines.All(line => Math.Abs(line - Along(stop)) > told))];

        double Along(PlanStation station) => axis == DimensionAxis.Horizontal ? station.At.X : station.At.Y;
    }

    /// <summary>Where a course begins and ends, as under a slope or against a wall of another storey; not where a match line cuts it.</summary>
    private static IEnumerable<PlanStation> Stops(PlanFacts facts, WallLayout wall)
    {
        var runs = facts.CourseOf(wall).Spans.Select(span => span.Run).ToArray();
        (Length S, string Word)[] ends = runs.Length == 0 ? [] : [(runs.Min(run => run.From), PlanText.FirstBlock), (runs.Max(run => run.To), PlanText.LastBlock)];
        return ends.Select(end => new PlanStation(facts.At(wall, end.S, wall.Frame.Thickness / 2), [], $"{facts.NumberOf(wall)} {end.Word}"))
            .Where(station => facts.Shows(station.At));
    }

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
