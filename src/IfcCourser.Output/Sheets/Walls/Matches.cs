namespace IfcCourser.Output.Sheets.Walls;

/// <summary>Match lines of a wall that is parted over sheets, each with the number of the sheet where the wall goes on.</summary>
internal static class Matches
{
    /// <summary>Left of the wall between a match line and the course numbers, paper millimetres.</summary>
    public const double Room = 7;

    private const double TextHeight = 2.5;

    /// <summary>Along the joints of the elevation, its name outside.</summary>
    public static void Draw(Canvas canvas, WallFacts facts)
    {
        var mm = canvas.PerPaper;
        foreach (var (line, sheet, s) in Of(facts, facts.Left - (4 * mm), facts.Right + (4 * mm)))
        {
            var path = line.Path;
            var past = new Point(0, 3 * mm);
            canvas.Add(new PolylineItem(Pen.MatchLine, [path[0] - past, .. path, path[^1] + past], PathEnd.Open));
            var room = ((facts.Top - facts.LevelLine) / mm) - 2;
            var name = TextMetrics.Width(SheetText.MatchLine(sheet), TextHeight) <= room ? SheetText.MatchLine(sheet) : SheetText.MatchLineShort(sheet);
            canvas.Write(new TextItem(Pen.Heading, new Point(s, facts.LevelLine + (2 * mm)), name, TextHeight, TextAnchor.MiddleLeft, 90));
        }
    }

    /// <summary>Through a course in plan.</summary>
    public static void DrawInPlan(Canvas canvas, WallFacts facts, double height, double bottom, double top)
    {
        foreach (var (line, _, _) in Of(facts, 0, 0))
        {
            var s = line.AtHeight(height);
            canvas.Add(new LineItem(Pen.MatchLine, new Point(s, bottom), new Point(s, top)));
        }
    }

    /// <summary>The lines' own places in the running dimensions: the same number stands on both sheets.</summary>
    public static IEnumerable<Station> Stations(WallFacts facts) => Of(facts, 0, 0).Select(match => new Station(match.Line.At, SheetText.Match + "  "));

    private static IEnumerable<(MatchLine Line, string Sheet, double S)> Of(WallFacts facts, double before, double after)
    {
        if (facts.Stretch is { Before: { } start } right)
        {
            yield return (start, SheetText.PartNumber(facts.Number, right.Index - 1), before);
        }

        if (facts.Stretch is { After: { } end } left)
        {
            yield return (end, SheetText.PartNumber(facts.Number, left.Index + 1), after);
        }
    }
}
