using IfcCourser.Layouts;
using IfcCourser.Output.Sheets.Details;
using IfcCourser.Output.Sheets.Panels;
using IfcCourser.Output.Sheets.Walls;
using IfcCourser.Walls;

namespace IfcCourser.Output.Sheets;

/// <summary>Details that occur in the set, each drawn from a place of its layout and the blocks of its catalog.</summary>
public static class DetailSheet
{
    private const double Inset = 4;

    public static Sheet Compose(Layout layout, SheetContext context)
    {
        var units = layout.Rules.Catalog.Units;
        Detail[] details =
        [
            .. SectionDetail.Of(layout), .. CourseDetail.Of(layout, JunctionKind.Corner), .. CourseDetail.Of(layout, JunctionKind.Tee), .. FaceDetail.Of(layout),
        ];
        ImmutableArray<Panel> panels = [WordList.Of(SheetText.Notes, DetailText.Notes(units)), WordList.Of(SheetText.Cautions, SheetText.CautionTexts)];
        var (number, scales) = (DetailText.Number(1), DrawingScale.LargeFor(units));
        var places = scales.Take(2).SelectMany(scale => context.Papers.Take(Math.Max(1, context.Papers.Length - 1)).Select(paper => (Scale: scale, Paper: paper)))
            .Concat(context.Papers[^1].Rolls().Prepend(context.Papers[^1]).Select(paper => (Scale: scales[1], Paper: paper)));
        foreach (var (scale, paper) in places)
        {
            // The highest first, so that rows are of like height.
            var drawn = details.Select(detail => (Detail: detail, Canvas: detail.At(scale))).OrderByDescending(one => one.Canvas.Extent.Height).ToArray();
            if (On(paper, [.. drawn.Select(one => one.Canvas)], panels) is { } placed)
            {
                var views = drawn.Zip(placed.Views, (one, at) => new View(one.Detail.Title, scale, one.Canvas.Extent, at, [.. one.Canvas.Items]));
                var title = SheetFrame.Title(layout) with { IdentificationNumber = number, Title = DetailText.Title, DocumentType = DetailText.DocumentType, Scale = scale.Label };
                return SheetFrame.Assembled(SheetText.SheetName(number, DetailText.Title), paper, units, context, title, [.. views], placed.Panels);
            }
        }

        throw new InvalidOperationException("Papers grow without end.");
    }

    /// <summary>Details left of the title block's column, notes over it.</summary>
    private static (ImmutableArray<Point> Views, ImmutableArray<SheetItem> Panels)? On(PaperSize paper, IReadOnlyList<Canvas> drawings, ImmutableArray<Panel> panels)
    {
        var space = paper.Frame.Grown(-Inset);
        var left = paper.Frame.Right - TitleBlockDrawing.Width;
        Box[] columns = [.. new[] { left, left + Panel.Width + Panel.Gap }.Select(x => new Box(x, paper.Frame.Bottom + TitleBlockDrawing.Height + Panel.Gap, x + Panel.Width, space.Top))];
        return DetailRows.Place(drawings, space with { Right = left - (2 * Panel.Gap) }) is { } views && Columns.Pack(panels, columns) is { } items ? (views, items) : null;
    }
}
