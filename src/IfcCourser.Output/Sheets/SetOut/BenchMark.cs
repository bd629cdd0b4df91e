using IfcCourser.Output.Sheets.Walls;

namespace IfcCourser.Output.Sheets.SetOut;

/// <summary>A levelling mark whose number and height are written in on site.</summary>
internal static class BenchMark
{
    private const double TextHeight = 2.5;

    public static void Draw(Canvas canvas, Point at)
    {
        var half = 2 * canvas.PerPaper;
        canvas.Add(new PolylineItem(Pen.Text, [at, at + new Point(half, 1.6 * half), at + new Point(-half, 1.6 * half)], PathEnd.Closed));
        canvas.Add(new LineItem(Pen.Text, at - new Point(4 * half, 0), at + new Point(4 * half, 0)));
        foreach (var (line, i) in SetOutText.BenchMark.Select((line, i) => (line, i)))
        {
            canvas.Write(new TextItem(Pen.Text, at - new Point(0, (4 + (4.5 * i)) * canvas.PerPaper), line, TextHeight, TextAnchor.Middle));
        }
    }
}
