namespace IfcCourser.Output.Sheets;

/// <summary>A window of the sheet that shows a drawing at a scale.</summary>
/// <param name="Window">What is shown, real millimetres.</param>
/// <param name="PaperAt">Where the window's lower left corner lies on the paper.</param>
/// <param name="Items">In real millimetres.</param>
public sealed record View(string Name, DrawingScale Scale, Box Window, Point PaperAt, ImmutableArray<SheetItem> Items)
{
    /// <summary>The window on the paper, paper millimetres.</summary>
    public Box PaperBox => new(
        PaperAt.X, PaperAt.Y, PaperAt.X + (Window.Width / Scale.Denominator), PaperAt.Y + (Window.Height / Scale.Denominator));

    public Point ToPaper(Point real) =>
        PaperAt + ((real - new Point(Window.Left, Window.Bottom)) * (1.0 / Scale.Denominator));
}
