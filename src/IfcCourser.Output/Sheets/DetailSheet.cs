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
        var number = DetailText.Number(1);
        foreach (var scale in DrawingScale.LargeFor(units))
        {
            var drawings = details.Select(detail => detail.At(scale)).ToArray();
            foreach (var paper in context.Papers)
            {
                if (On(paper, drawings, panels) is { } placed)
                {
                    ImmutableArray<View> views = [.. drawings.Zip(placed.Views, (drawing, at) => (drawing, at))
                        .Select((view, i) => new View(details[i].Title, scale, view.drawing.Extent, view.at, [.. view.drawing.Items]))];
                    var title = SheetFrame.Title(layout) with { IdentificationNumber = number, Title = DetailText.Title, DocumentType = DetailText.DocumentType, Scale = scale.Label };
                    return SheetFrame.Assembled(SheetText.SheetName(number, DetailText.Title), paper, units, context, title, views, placed.Panels);
                }
            }
        }

        throw new InvalidOperationException("Details do not fit on the largest paper at the smallest scale.");
    }

    /// <summary>Details left of the title block's column, notes over it.</summary>
    private static (ImmutableArray<Point> Views, ImmutableArray<SheetItem> Panels)? On(PaperSize paper, IReadOnlyList<Canvas> drawings, ImmutableArray<Panel> panels)
    {
        var space = paper.Frame.Grown(-Inset);
        var left = paper.Frame.Right - TitleBlockDrawing.Width;
        Box[] columns = [.. new[] { left, left + Panel.Width + Panel.Gap }.Select(x => new Box(x, paper.Frame.Bottom + TitleBlockDrawing.Height + Panel.Gap, x + Panel.Width, space.Top))];
        return ViewRows.Place(drawings, space with { Right = left - (2 * Panel.Gap) }) is { } views && Columns.Pack(panels, columns) is { } items ? (views, items) : null;
    }
}
