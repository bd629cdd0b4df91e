using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Output.Sheets.SetOut;
using IfcCourser.Output.Sheets.Walls;
using IfcCourser.Walls;

namespace IfcCourser.Output.Sheets.Plans;

/// <summary>North in a plan's axes: of the map, else true north, else the model's y axis, saying which.</summary>
internal static class NorthArrow
{
    private const double TextHeight = 2.5;

    /// <summary>Draws it at the plan's upper right; the middle of its lowest line.</summary>
    public static Point Draw(Canvas canvas, Layouts.SetOut setOut, SetOutAxes axes)
    {
        var mm = canvas.PerPaper;
        var (north, words) = North(setOut);
        var along = axes.Along;
        var way = new Point(Vector2.Dot(north, along), Vector2.Dot(north, along.Left));
        var side = new Point(-way.Y, way.X);
        var middle = new Point(canvas.Extent.Right + (26 * mm), canvas.Extent.Top - (14 * mm));
        var (tip, tail) = (middle + (way * (9 * mm)), middle - (way * (9 * mm)));
        canvas.Add(new LineItem(Pen.Text, tail, tip));
        canvas.Add(new HatchItem(Pen.Text, [[tip, tip - (way * (4 * mm)) + (side * (1.5 * mm)), tip - (way * (4 * mm)) - (side * (1.5 * mm))]], HatchKind.Solid));
        var letter = tip + (way * (3 * mm));
        canvas.Write(new TextItem(Pen.Heading, letter, "N", 3.5, TextAnchor.Middle));
        var below = Math.Min(Math.Min(tail.Y, tip.Y) - (6 * mm), letter.Y - (5 * mm));
        Write(canvas, new Point(middle.X, below), words);
        return new Point(middle.X, below);
    }

    private static void Write(Canvas canvas, Point at, string text) => canvas.Write(new TextItem(Pen.Text, at, text, TextHeight, TextAnchor.Middle));

    private static (Vector2 North, string Words) North(Layouts.SetOut setOut) =>
        setOut.Survey.Kind == SurveyKind.Map ? (setOut.Survey.East.Left, SetOutText.MapNorth)
        : setOut.TrueNorth is { } north ? (north, SetOutText.TrueNorth)
        : (new Vector2(0, 1), SetOutText.ModelNorth);
}
