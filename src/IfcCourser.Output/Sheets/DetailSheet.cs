using IfcCourser.Layouts;
using IfcCourser.Output.Sheets.Details;
using IfcCourser.Output.Sheets.Panels;
using IfcCourser.Walls;

namespace IfcCourser.Output.Sheets;

/// <summary>Details that occur in the set, each drawn from a place of its layout and the blocks of its catalog.</summary>
internal static class DetailSheet
{
    /// <summary>All on one sheet where a paper holds them, else on as many of the largest as they take.</summary>
    /// <param name="papers">Sizes to choose from, smallest first.</param>
    public static ImmutableArray<DetailPage> Pages(Layout layout, ImmutableArray<PaperSize> papers)
    {
        var units = layout.Rules.Catalog.Units;
        Detail[] details =
        [
            .. SectionDetail.Of(layout), .. CourseDetail.Of(layout, JunctionKind.Corner), .. CourseDetail.Of(layout, JunctionKind.Tee), .. FaceDetail.Of(layout),
        ];
        ImmutableArray<Panel> panels = [WordList.Of(SheetText.Notes, DetailText.Notes(units)), Cautions.Panel];
        var scales = DrawingScale.LargeFor(units).Take(2).ToArray();
        var one = from scale in scales
                  from paper in papers.Take(Math.Max(1, papers.Length - 1))
                  select DetailPage.Of(paper, scale, Drawn(scale), panels);
        var several = scales.Select(scale => DetailPage.Several(papers[^1], scale, Drawn(scale), panels[..1]));
        var rolls = papers[^1].Larger().Concat(papers[^1].Rolls()).Prepend(papers[^1]).Select(paper => DetailPage.Of(paper, scales[1], Drawn(scales[1]), panels));
        return one.Select(page => page is null ? default(ImmutableArray<DetailPage>?) : [page]).Concat(several)
            .Concat(rolls.Select(page => page is null ? default(ImmutableArray<DetailPage>?) : [page])).OfType<ImmutableArray<DetailPage>>().First();

        // The highest first, so that rows are of like height.
        DrawnDetail[] Drawn(DrawingScale scale) => [.. details.Select(detail => new DrawnDetail(detail, detail.At(scale))).OrderByDescending(one => one.Canvas.Extent.Height)];
    }

    /// <param name="page">From 1.</param>
    public static Sheet Compose(Layout layout, DetailPage drawn, int page, int count, SheetContext context)
    {
        var (number, name) = (DetailText.Number(page), DetailText.Page(page, count));
        var views = drawn.Details.Zip(drawn.At, (one, at) => new View(one.Detail.Title, drawn.Scale, one.Canvas.Extent, at, one.Canvas.Drawn()));
        var title = SheetFrame.Title(layout) with { IdentificationNumber = number, Title = name, DocumentType = DetailText.DocumentType, Scale = drawn.Scale.Label };
        return SheetFrame.Assembled(SheetText.SheetName(number, name), drawn.Paper, layout.Rules.Catalog.Units, context, title, [.. views], drawn.Panels);
    }
}
