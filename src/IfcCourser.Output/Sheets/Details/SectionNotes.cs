using IfcCourser.Output.Sheets.Walls;

namespace IfcCourser.Output.Sheets.Details;

/// <summary>Words beside a section, one below the other in the order of the points they lead to.</summary>
/// <param name="left">Where the words begin, real millimetres.</param>
internal sealed class SectionNotes(Canvas canvas, double left)
{
    private const double TextHeight = 2.5;
    private const double Pitch = 5;

    /// <summary>Width of a line of words, paper millimetres.</summary>
    private const double Width = 58;

    private readonly List<(Point At, string Text)> _notes = [];

    public void Add(Point at, string text) => _notes.Add((at, text));

    public void Draw()
    {
        var mm = canvas.PerPaper;
        var ordered = _notes.OrderByDescending(note => note.At.Y).Select(note => (note.At, Lines: TextMetrics.Wrap(note.Text, TextHeight, Width))).ToArray();
        var x = left + (10 * mm);
        var y = ordered[0].At.Y + (4 * mm);
        foreach (var (at, lines) in ordered)
        {
            y = Math.Min(y, at.Y + (Pitch * (lines.Length - 1) / 2 * mm));
            canvas.Add(new PolylineItem(Pen.Dimension, [at, new Point(left + (4 * mm), y), new Point(x - mm, y)], PathEnd.Open));
            canvas.Add(ArcItem.Circle(Pen.Dimension, at, 0.5 * mm));
            foreach (var line in lines)
            {
                canvas.Write(new TextItem(Pen.Text, new Point(x, y), line, TextHeight, TextAnchor.MiddleLeft));
                y -= Pitch * mm;
            }

            y -= 1.5 * mm;
        }
    }
}
