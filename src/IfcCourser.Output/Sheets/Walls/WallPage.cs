using IfcCourser.Output.Sheets.Panels;

namespace IfcCourser.Output.Sheets.Walls;

/// <summary>Walls that share a sheet, drawn and placed.</summary>
/// <param name="Views">In the order of the walls' numbers.</param>
/// <param name="At">Lower left corners of the views, paper millimetres.</param>
/// <param name="Further">Pages of tables that the sheet has no room for.</param>
internal sealed record WallPage(
    DrawingScale Scale, PaperSize Paper, ImmutableArray<WallView> Views, ImmutableArray<Point> At, ImmutableArray<SheetItem> Panels, ImmutableArray<ImmutableArray<SheetItem>> Further)
{
    public IEnumerable<WallFacts> Walls => Views.Select(view => view.Facts);

    /// <summary>Of the sheet.</summary>
    public string Number => Views is [{ Facts: { Stretch: { } stretch } facts }]
        ? SheetText.PartNumber(facts.Number, stretch.Index)
        : WallNumbers.Sheet(Walls.Select(wall => wall.Number));

    /// <summary>
    /// One wall at the largest standard scale whose paper is not the largest size, on the smallest paper that holds it; longer walls take a smaller scale
    /// as long as it can be read, then tables go on to further sheets; what is too long then takes a roll.
    /// </summary>
    /// <param name="papers">Smallest first.</param>
    public static WallPage Alone(WallFacts facts, ImmutableArray<PaperSize> papers)
    {
        var (scales, panels) = (LegibleFor(facts), WallPanels.Of([facts]));
        return Of(facts, SheetFit.Flowing(papers, scales, Drawn, panels, Crowding.Refused) ?? SheetFit.Flowing(papers, scales, Drawn, panels, Crowding.Borne) ?? SheetFit.Of(papers, scales, Drawn, panels));

        Canvas Drawn(DrawingScale scale) => WallView.Draw(facts, scale).Canvas;
    }

    private static WallPage Of(WallFacts facts, SheetFit fit) =>
        new(fit.Scale, fit.Paper, [new WallView(facts, fit.Canvas)], [fit.Arrangement.View], fit.Arrangement.Panels, fit.Further);

    /// <summary>The scales at which each course has room for its number, largest first; the largest of all where none has.</summary>
    public static ImmutableArray<DrawingScale> LegibleFor(WallFacts facts)
    {
        var scales = DrawingScale.For(facts.Text.Units);
        return [scales[0], .. scales.Skip(1).Where(scale => facts.Layout.Rules.Catalog.CoursePitch.Mm / scale.Denominator >= RunningTier.Pitch)];
    }

    /// <summary>A stretch of a wall at a scale on the smallest paper that holds it, with tables on further sheets where it must be; null where no paper holds the view.</summary>
    /// <param name="papers">Smallest first.</param>
    public static WallPage? On(WallFacts facts, DrawingScale scale, ImmutableArray<PaperSize> papers) =>
        SheetFit.Flowing(papers, [scale], _ => WallView.Draw(facts, scale).Canvas, WallPanels.Of([facts]), Crowding.Borne) is { } fit ? Of(facts, fit) : null;

    /// <summary>
    /// The walls of both pages on one sheet; null where they are not drawn to one scale, a sheet shows part of a wall only or has tables on further ones, no paper for that scale holds them, or the sheet's number has no room for theirs.
    /// </summary>
    /// <param name="papers">Smallest first.</param>
    public static WallPage? Joined(WallPage first, WallPage second, ImmutableArray<PaperSize> papers)
    {
        ImmutableArray<WallView> views = [.. first.Views, .. second.Views];
        if (first.Scale != second.Scale || views.Any(view => view.Facts.Stretch is not null) || first.Further.Length + second.Further.Length > 0 || !TitleBlockDrawing.HoldsNumber(WallNumbers.Sheet(views.Select(view => view.Facts.Number))))
        {
            return null;
        }

        var rows = ViewRows.Of([.. views.Select(view => view.Canvas)]).ToArray();
        // Most papers are too small for the views alone: then no table is set.
        var roomy = (from paper in SheetFit.For(papers, first.Scale)
                     from some in rows
                     where Arrangement.TryFit(paper, some.Width, some.Height, []) is not null
                     select (Paper: paper, Rows: some)).ToArray();
        if (roomy.Length == 0)
        {
            return null;
        }

        var panels = WallPanels.Of([.. views.Select(view => view.Facts)]);
        var places = from one in roomy
                     let place = Arrangement.TryFit(one.Paper, one.Rows.Width, one.Rows.Height, panels)
                     where place is not null
                     select new WallPage(first.Scale, one.Paper, views, [.. one.Rows.At.Select(at => place.View + at)], place.Panels, []);
        return places.FirstOrDefault();
    }
}
