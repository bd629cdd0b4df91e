using IfcCourser.Output.Sheets.Panels;

namespace IfcCourser.Output.Sheets.Walls;

/// <summary>Walls that share a sheet, drawn and placed.</summary>
/// <param name="Views">In the order of the walls' numbers.</param>
/// <param name="At">Lower left corners of the views, paper millimetres.</param>
internal sealed record WallPage(DrawingScale Scale, PaperSize Paper, ImmutableArray<WallView> Views, ImmutableArray<Point> At, ImmutableArray<SheetItem> Panels)
{
    public IEnumerable<WallFacts> Walls => Views.Select(view => view.Facts);

    /// <summary>Of the sheet.</summary>
    public string Number => WallNumbers.Sheet(Walls.Select(wall => wall.Number));

    /// <summary>
    /// One wall at the largest standard scale whose paper is not the largest size, on the smallest paper that holds it; longer walls take a smaller scale.
    /// </summary>
    /// <param name="papers">Smallest first.</param>
    public static WallPage Alone(WallFacts facts, ImmutableArray<PaperSize> papers)
    {
        WallView? drawn = null;
        var fit = SheetFit.Of(papers, DrawingScale.For(facts.Text.Units), scale => (drawn = WallView.Draw(facts, scale)).Canvas, WallPanels.Of([facts]));
        return new WallPage(fit.Scale, fit.Paper, [drawn!], [fit.Arrangement.View], fit.Arrangement.Panels);
    }

    /// <summary>
    /// The walls of both pages on one sheet; null where they are not drawn to one scale, no paper for that scale holds them, or the sheet's number has no room for theirs.
    /// </summary>
    /// <param name="papers">Smallest first.</param>
    public static WallPage? Joined(WallPage first, WallPage second, ImmutableArray<PaperSize> papers)
    {
        ImmutableArray<WallView> views = [.. first.Views, .. second.Views];
        if (first.Scale != second.Scale || !TitleBlockDrawing.HoldsNumber(WallNumbers.Sheet(views.Select(view => view.Facts.Number))))
        {
            return null;
        }

        var panels = WallPanels.Of([.. views.Select(view => view.Facts)]);
        var rows = ViewRows.Of([.. views.Select(view => view.Canvas)]).ToArray();
        var places = from paper in SheetFit.For(papers, first.Scale)
                     from some in rows
                     let place = Arrangement.TryFit(paper, some.Width, some.Height, panels)
                     where place is not null
                     select new WallPage(first.Scale, paper, views, [.. some.At.Select(at => place.View + at)], place.Panels);
        return places.FirstOrDefault();
    }
}
