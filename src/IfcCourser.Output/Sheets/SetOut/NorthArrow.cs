using IfcCourser.Geometry;
using IfcCourser.Output.Sheets.Walls;
using IfcCourser.Walls;

namespace IfcCourser.Output.Sheets.SetOut;

/// <summary>North in the storey's axes: of the map, else true north, else the model's y axis, saying which; under it the bench mark.</summary>
internal static class NorthArrow
{
    private const double TextHeight = 2.5;

    public static void Draw(Canvas canvas, SetOutFacts facts)
    {
        var mm = canvas.PerPaper;
        var (north, words) = North(facts.Layout.SetOut);
        var along = facts.Storey.Axes.Along;
        var way = new Point(Vector2.Dot(north, along), Vector2.Dot(north, along.Left));
        var side = new Point(-way.Y, way.X);
        var middle = new Point(canvas.Extent.Right + (26 * mm), canvas.Extent.Top - (14 * mm));
        var (tip, tail) = (middle + (way * (9 * mm)), middle - (way * (9 * mm)));
        canvas.Add(new LineItem(Pen.Text, tail, tip));
        canvas.Add(new HatchItem(Pen.Text, [[tip, tip - (way * (4 * mm)) + (side * (1.5 * mm)), tip - (way * (4 * mm)) - (side * (1.5 * mm))]], HatchKind.Solid));
        canvas.Write(new TextItem(Pen.Heading, tip + (way * (3 * mm)), "N", 3.5, TextAnchor.Middle));
        var below = Math.Min(tail.Y, tip.Y) - (6 * mm);
        Write(canvas, new Point(middle.X, below), words);
        BenchMark(canvas, new Point(middle.X, below - (9 * mm)));
    }

    /// <summary>A levelling mark whose number and height are written in on site.</summary>
    private static void BenchMark(Canvas canvas, Point at)
    {
        var half = 2 * canvas.PerPaper;
        canvas.Add(new PolylineItem(Pen.Text, [at, at + new Point(half, 1.6 * half), at + new Point(-half, 1.6 * half)], PathEnd.Closed));
        canvas.Add(new LineItem(Pen.Text, at - new Point(4 * half, 0), at + new Point(4 * half, 0)));
        foreach (var (line, i) in SetOutText.BenchMark.Select((line, i) => (line, i)))
        {
            Write(canvas, at - new Point(0, (4 + (4.5 * i)) * canvas.PerPaper), line);
        }
    }

    private static void Write(Canvas canvas, Point at, string text) => canvas.Write(new TextItem(Pen.Text, at, text, TextHeight, TextAnchor.Middle));

    private static (Vector2 North, string Words) North(Layouts.SetOut setOut) =>
        setOut.Survey.Kind == SurveyKind.Map ? (setOut.Survey.East.Left, SetOutText.MapNorth)
        : setOut.TrueNorth is { } north ? (north, SetOutText.TrueNorth)
        : (new Vector2(0, 1), SetOutText.ModelNorth);
}
