using System.Globalization;

namespace IfcCourser.Output.Sheets.Walls;

/// <summary>
/// Left of the wall its course numbers and the storey pole: one column from the level line, one from the slab. Right of it the
/// heights of sills, heads and edges from the level line.
/// </summary>
internal static class Heights
{
    private const double TextHeight = 2.5;

    public static void Draw(Canvas canvas, WallFacts facts)
    {
        Numbers(canvas, facts);
        var levelColumn = LeftOf(canvas, facts) - (11 * canvas.PerPaper);
        Column(canvas, facts, levelColumn, facts.LevelLine, Shown(canvas, facts), SheetText.AboveLevelLine);
        var slabColumn = canvas.Extent.Left - (3 * canvas.PerPaper);
        var fromSlab = Shown(canvas, facts).Prepend(facts.Wall.Courses[0].Bottom.Mm);
        Column(canvas, facts, slabColumn, facts.Bottom, fromSlab, SheetText.AboveSlab);
        LevelLine(canvas, facts, levelColumn);
        OpeningHeights(canvas, facts);
    }

    /// <summary>Keeps the room of course numbers and pole, so that no mark of a narrow piece is set there.</summary>
    public static void Keep(Canvas canvas, WallFacts facts)
    {
        const double Wide = 40;
        var right = LeftOf(canvas, facts) - (0.5 * canvas.PerPaper);
        canvas.Take(new Box(right - (Wide * canvas.PerPaper), facts.Bottom, right, facts.Top));
    }

    /// <summary>Where what stands left of the wall begins.</summary>
    private static double LeftOf(Canvas canvas, WallFacts facts) => facts.Left - (facts.Stretch?.Before is null ? 0 : Matches.Room * canvas.PerPaper);

    /// <summary>Tops of courses; where the paper is too small for all, every second, fifth ... and the last.</summary>
    private static IEnumerable<double> Shown(Canvas canvas, WallFacts facts)
    {
        var courses = facts.Wall.Courses;
        var pitch = facts.Layout.Rules.Catalog.CoursePitch.Mm / canvas.PerPaper;
        var step = pitch >= RunningTier.Pitch ? 1 : (int)Math.Ceiling(RunningTier.Pitch / pitch);
        return courses.Where((_, i) => i % step == 0 || i == courses.Length - 1).Select(course => course.Top.Mm);
    }

    private static void Numbers(Canvas canvas, WallFacts facts)
    {
        foreach (var course in facts.Wall.Courses.Where(course => (course.Top - course.Bottom).Mm / canvas.PerPaper > TextHeight))
        {
            var at = new Point(LeftOf(canvas, facts) - (4.5 * canvas.PerPaper), (course.Bottom.Mm + course.Top.Mm) / 2);
            var text = course.Number.ToString(CultureInfo.InvariantCulture);
            canvas.Write(new TextItem(Pen.Heading, at, text, TextHeight, TextAnchor.Middle));
        }
    }

    private static void Column(
        Canvas canvas, WallFacts facts, double x, double origin, IEnumerable<double> heights, string heading)
    {
        var mm = canvas.PerPaper;
        var tier = new RunningTier(DimensionAxis.Vertical, origin, x, x, TextSide.Before);
        tier.Draw(canvas, facts.Text, heights.Select(height => new Station(height)));
        canvas.Write(new TextItem(
            Pen.Text, new Point(x, facts.Top + (4 * mm)), heading, TextHeight, TextAnchor.MiddleLeft, 90));
    }

    private static void LevelLine(Canvas canvas, WallFacts facts, double outer)
    {
        var left = new LineItem(
            Pen.LevelLine,
            new Point(outer + (2 * canvas.PerPaper), facts.LevelLine),
            new Point(facts.Left - (1.5 * canvas.PerPaper), facts.LevelLine));
        canvas.Add(left);
    }

    private static void OpeningHeights(Canvas canvas, WallFacts facts)
    {
        var edges = facts.Wall.Openings
            .SelectMany(opening => new[] { opening.Placed.Bottom.Mm, opening.Placed.Top.Mm })
            .Concat(facts.Wall.Outline.Select(p => p.Z.Mm))
            .Concat(facts.Wall.Lintels.Select(lintel => lintel.Top.Mm));
        var x = facts.Right + (8 * canvas.PerPaper);
        var tier = new RunningTier(DimensionAxis.Vertical, facts.LevelLine, x, x, TextSide.After);
        tier.Draw(canvas, facts.Text, edges.Select(z => new Station(z, z < facts.LevelLine ? "-" : z > facts.LevelLine ? "+" : string.Empty)));
        canvas.Write(new TextItem(
            Pen.Text, new Point(x, facts.Top + (4 * canvas.PerPaper)), SheetText.OpeningHeights, TextHeight, TextAnchor.MiddleLeft, 90));
    }
}
