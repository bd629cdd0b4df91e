namespace IfcCourser.Output.Sheets.Walls;

/// <summary>A wall's elevation with its dimensions, its strips in plan and its name over them.</summary>
internal sealed record WallView(WallFacts Facts, Canvas Canvas)
{
    private const double TitleHeight = 5;

    public static WallView Draw(WallFacts facts, DrawingScale scale)
    {
        var canvas = new Canvas(scale.Denominator);
        Elevation.Draw(canvas, facts);
        Runs.Draw(canvas, facts);
        Heights.Draw(canvas, facts);
        Matches.Draw(canvas, facts);
        Strips.Draw(canvas, facts);
        RevisionClouds.Draw(canvas, facts);
        var title = TextMetrics.Fit(facts.Title, TitleHeight, canvas.Extent.Width / canvas.PerPaper);
        canvas.Write(new TextItem(Pen.Heading, new Point(canvas.Extent.Left, canvas.Extent.Top + (3 * canvas.PerPaper)), title, TitleHeight));
        return new WallView(facts, canvas);
    }
}
