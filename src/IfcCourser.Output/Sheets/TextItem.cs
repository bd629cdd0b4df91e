namespace IfcCourser.Output.Sheets;

/// <summary>One line of text.</summary>
/// <param name="Height">Of capitals, paper millimetres.</param>
/// <param name="Degrees">Counter-clockwise from the x axis.</param>
public sealed record TextItem(Pen Pen, Point At, string Text, double Height, TextAnchor Anchor = TextAnchor.Left, double Degrees = 0)
    : SheetItem(Pen)
{
    /// <summary>Share of the text's width that lies left of its place.</summary>
    public double ShareBefore => Anchor switch
    {
        TextAnchor.Centre or TextAnchor.Middle => 0.5,
        TextAnchor.Right or TextAnchor.MiddleRight => 1,
        _ => 0,
    };

    /// <summary>Whether the place is at half the capitals' height.</summary>
    public bool IsMiddle => Anchor is TextAnchor.Middle or TextAnchor.MiddleLeft or TextAnchor.MiddleRight;

    public override SheetItem MovedBy(Point by) => this with { At = At + by };
}
