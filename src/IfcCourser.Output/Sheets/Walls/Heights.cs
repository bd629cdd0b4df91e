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

    /// <summary>Keeps the room of course numbers, pole, heights and names of match lines, so that no mark of a narrow piece is set there.</summary>
    public static void Keep(Canvas canvas, WallFacts facts)
    {
        const double Wide = 40;
        var right = facts.Left - (0.5 * canvas.PerPaper);
        canvas.Take(new Box(right - ((Wide + Matches.Room) * canvas.PerPaper), facts.Bottom, right, facts.Top));
        var left = facts.Stretch?.After is null ? RightOf(canvas, facts) - canvas.PerPaper : facts.Right + (0.5 * canvas.PerPaper);
        canvas.Take(new Box(left, facts.Bottom, left + (Wide * canvas.PerPaper), facts.Top));
    }

    /// <summary>Where what stands left of the wall begins.</summary>
    private static double LeftOf(Canvas canvas, WallFacts facts) => facts.Left - (facts.Stretch?.Before is null ? 0 : Matches.Room * canvas.PerPaper);

    /// <summary>Where heights stand right of the wall.</summary>
    private static double RightOf(Canvas canvas, WallFacts facts) => facts.Right + (8 * canvas.PerPaper);

    /// <summary>Tops of courses; where the paper is too small for all, every second, fifth ... and the last.</summary>
    private static IEnumerable<double> Shown(Canvas canvas, WallFacts facts)
    {
        var courses = facts.Wall.Courses;
        var pitch = facts.Layout.Rules.Catalog.CoursePitch.Mm / canvas.PerPaper;
        var step = pitch >= RunningTier.Pitch ? 1 : (int)Math.Ceiling(RunningTier.Pitch / pitch);
        return courses.Where((_, i) => i % step == 0 || i == courses.Length - 1).Select(course => course.Top.Mm);
    }

    /// <summary>Of each course that is not lower than what two columns of numbers can keep apart.</summary>
    private static void Numbers(Canvas canvas, WallFacts facts)
    {
        var (mm, left) = (canvas.PerPaper, LeftOf(canvas, facts));
        new CourseNumbers(left - (4.5 * mm), left - (8 * mm), left - (2.9 * mm)).Draw(
            canvas, facts.Wall.Courses.Where(course => (course.Top - course.Bottom).Mm / mm > TextHeight * 0.65), course => (course.Bottom.Mm + course.Top.Mm) / 2);
    }

    private static void Column(
        Canvas canvas, WallFacts facts, double x, double origin, IEnumerable<double> heights, string heading)
    {
        var mm = canvas.PerPaper;
        var tier = new RunningTier(DimensionAxis.Vertical, origin, x, x, TextSide.Before);
        tier.Draw(canvas, facts.Text, heights.Select(height => new Station(height)));
        Heading(canvas, x, facts.Top, heading);
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
        var x = RightOf(canvas, facts);
        var tier = new RunningTier(DimensionAxis.Vertical, facts.LevelLine, x, x, TextSide.After);
        tier.Draw(canvas, facts.Text, edges.Select(z => new Station(z, z < facts.LevelLine ? "-" : z > facts.LevelLine ? "+" : string.Empty)));
        Heading(canvas, x, facts.Top, SheetText.OpeningHeights);
    }

    /// <summary>Over a column, as low as other texts leave room for it.</summary>
    private static void Heading(Canvas canvas, double x, double top, string heading)
    {
        var mm = canvas.PerPaper;
        var places = Enumerable.Range(8, int.MaxValue - 8).Select(step => new TextItem(Pen.Text, new Point(x, top + (step * mm / 2)), heading, TextHeight, TextAnchor.MiddleLeft, 90));
        canvas.Write(places.First(text => canvas.IsFreeOfText(ItemBox.Of(text, mm))));
    }
}
