using IfcCourser.Layouts;
using IfcCourser.Output.Sheets.Walls;
using IfcCourser.Units;

namespace IfcCourser.Output.Sheets.Plans;

/// <summary>Running dimensions along all four sides of a course's plan: faces of walls, jambs and ends of masonry, from the plan's zero lines.</summary>
internal static class CourseTiers
{
    public static void Draw(Canvas canvas, PlanFacts facts)
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
            new PlanTier(DimensionAxis.Horizontal, isFirst ? outer.Bottom : outer.Top, side).Draw(canvas, facts.Text, xs);
            new PlanTier(DimensionAxis.Vertical, isFirst ? outer.Left : outer.Right, side).Draw(canvas, facts.Text, ys);
        }
    }

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
            return jambs.Concat(ends).Select(place => new PlanStation(facts.At(wall, place.At, middle), [], place.Word));
        }

        var foot = new[] { Length.Zero, wall.Frame.Length }.Select(s => (S: s, At: facts.At(wall, s, middle)))
            .OrderBy(end => axis == DimensionAxis.Horizontal ? end.At.Y : end.At.X).First().S;
        return new[] { Length.Zero, wall.Frame.Thickness }.Select(t => new PlanStation(facts.At(wall, foot, t), [], facts.NumberOf(wall)));
    }
}
