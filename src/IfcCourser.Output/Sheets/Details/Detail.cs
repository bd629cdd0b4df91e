using IfcCourser.Output.Sheets.Walls;

namespace IfcCourser.Output.Sheets.Details;

/// <summary>A place of the layout, or a section of the catalog's pieces, at a large scale.</summary>
/// <param name="Title">What it shows, and where it is taken from.</param>
/// <param name="Draw">Draws it, in real millimetres.</param>
internal sealed record Detail(string Title, Action<Canvas> Draw)
{
    private const double TitleHeight = 3.5;

    /// <summary>With its title under it.</summary>
    public Canvas At(DrawingScale scale)
    {
        var canvas = new Canvas(scale.Denominator);
        Draw(canvas);
        var mm = canvas.PerPaper;
        canvas.Write(new TextItem(Pen.Heading, new Point(canvas.Extent.Left, canvas.Extent.Bottom - (6 * mm)), Title, TitleHeight));
        return canvas;
    }
}
