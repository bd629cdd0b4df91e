using System.Globalization;
using IfcCourser.Layouts;
using IfcCourser.Output.Sheets.Details;
using IfcCourser.Output.Sheets.Plans;
using IfcCourser.Output.Sheets.Walls;

namespace IfcCourser.Output.Sheets.SetOut;

/// <summary>Bars in plan, with their running dimensions along all four sides.</summary>
internal static class SetOutBars
{
    public static void Draw(Canvas canvas, SetOutFacts facts)
    {
        foreach (var bar in facts.CastIn)
        {
            canvas.Add(Symbol(canvas, facts, bar));
            canvas.Take(Box.At(SetOutFacts.At(bar), 2.2 * canvas.PerPaper, 2.2 * canvas.PerPaper));
        }

        if (facts.Whole.Bars.Any(bar => bar.IsCastIn))
        {
            Tiers(canvas, facts);
        }
        else
        {
            CourseTiers.Draw(canvas, facts.Course, axis => Checks(facts, axis == DimensionAxis.Horizontal));
        }
    }

    public static BlockItem Symbol(Canvas canvas, SetOutFacts facts, BarSetOut bar, Point? at = null)
    {
        var core = facts.CoreOf(bar);
        string[] values = [Number(bar.Number), facts.WallNumber(bar.Wall), core.Id, core.Bar, facts.Text.Dimension(bar.X), facts.Text.Dimension(bar.Y)];
        return new BlockItem(Pen.Core, Definition((int)canvas.PerPaper), at ?? SetOutFacts.At(bar), [.. values]);
    }

    private static BlockDefinition Definition(int perPaper)
    {
        const int Corners = 16;
        var (radius, arm) = (0.75 * perPaper, 1.5 * perPaper);
        var disc = Enumerable.Range(0, Corners).Select(i => ArcItem.Circle(Pen.Core, default, radius).PointAt(360.0 * i / Corners)).ToImmutableArray();
        (string Tag, string Prompt)[] attributes =
            [("NUMBER", "Number of the bar"), ("WALL", "Sheet of its wall"), ("CORE", "Core in that wall"), ("SIZE", "Size of the bar"), ("X", "From the left"), ("Y", "From the bottom")];
        return new BlockDefinition(
            string.Create(CultureInfo.InvariantCulture, $"STARTER-BAR-{perPaper}"),
            [
                new HatchItem(Pen.Text, [disc], HatchKind.Solid),
                new LineItem(Pen.Text, new Point(-arm, 0), new Point(arm, 0)),
                new LineItem(Pen.Text, new Point(0, -arm), new Point(0, arm)),
            ],
            [.. attributes.Select(a => new BlockAttribute(a.Tag, a.Prompt, Pen.Text, default, 2.5, TextAnchor.Left, AttributeDisplay.Hidden))]);
    }

    /// <summary>
    /// Bars of a wall that share an x, or a y, are one station, on the side that they lie nearer to; edges, faces and grid lines
    /// are checks at the foot and at the left.
    /// </summary>
    private static void Tiers(Canvas canvas, SetOutFacts facts)
    {
        var (mm, box) = (canvas.PerPaper, facts.Edges.With(Box.Around(facts.CastIn.Select(SetOutFacts.At))));
        var across = facts.CastIn.GroupBy(bar => (bar.Wall, bar.X)).Select(Station).ToLookup(
            group => group.Min(p => p.At.Y) - box.Bottom <= box.Top - group.Max(p => p.At.Y) ? TextSide.Before : TextSide.After);
        var up = facts.CastIn.GroupBy(bar => (bar.Wall, bar.Y)).Select(Station).ToLookup(
            group => group.Min(p => p.At.X) - box.Left <= box.Right - group.Max(p => p.At.X) ? TextSide.Before : TextSide.After);
        var (ends, outer) = (canvas.Extent, canvas.Extent.Grown(7 * mm));
        foreach (var side in new[] { TextSide.Before, TextSide.After })
        {
            var isFirst = side == TextSide.Before;
            var xs = across[side].SelectMany(group => group).Concat(isFirst ? Checks(facts, isUpright: true) : []).Concat(PlanPart.Matches(facts.Part, DimensionAxis.Horizontal, isFirst ? ends.Bottom : ends.Top));
            var ys = up[side].SelectMany(group => group).Concat(isFirst ? Checks(facts, isUpright: false) : []).Concat(PlanPart.Matches(facts.Part, DimensionAxis.Vertical, isFirst ? ends.Left : ends.Right));
            CourseTiers.Tier(facts.Part, DimensionAxis.Horizontal, side, outer).Draw(canvas, facts.Text, xs);
            CourseTiers.Tier(facts.Part, DimensionAxis.Vertical, side, outer).Draw(canvas, facts.Text, ys);
        }
    }

    private static ImmutableArray<PlanStation> Station<T>(IGrouping<T, BarSetOut> bars) =>
        [.. bars.Select(bar => new PlanStation(SetOutFacts.At(bar), [bar.Number], string.Empty))];

    private static IEnumerable<PlanStation> Checks(SetOutFacts facts, bool isUpright) => facts.Storey.CheckLines
        .Where(check => check.IsUpright == isUpright)
        .Select(check => new PlanStation(Lower(check, facts), [], SetOutText.Of(check.Line)));

    /// <summary>The end of a line nearer to the tier.</summary>
    private static Point Lower(CheckLine check, SetOutFacts facts)
    {
        var whole = new LineItem(Pen.GridLine, facts.At(check.From), facts.At(check.To));
        var (from, to) = facts.Part is { } part && Clip.Line(whole, part.Window) is { } shown ? (shown.From, shown.To) : (whole.From, whole.To);
        return check.IsUpright ? new Point(check.At.Mm, Math.Min(from.Y, to.Y)) : new Point(Math.Min(from.X, to.X), check.At.Mm);
    }

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
