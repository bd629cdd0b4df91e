using IfcCourser.Output.Sheets.Panels;

namespace IfcCourser.Output.Sheets.Details;

/// <summary>Details on a sheet, placed.</summary>
/// <param name="At">Lower left corners of the views, paper millimetres.</param>
/// <param name="Further">Pages of notes that the sheet has no room for.</param>
internal sealed record DetailPage(
    PaperSize Paper, DrawingScale Scale, ImmutableArray<DrawnDetail> Details, ImmutableArray<Point> At, ImmutableArray<SheetItem> Panels, ImmutableArray<ImmutableArray<SheetItem>> Further)
{
    /// <summary>Details left of the title block's column, notes over it; null where the paper does not hold them.</summary>
    public static DetailPage? Of(PaperSize paper, DrawingScale scale, IReadOnlyList<DrawnDetail> details, ImmutableArray<Panel> panels)
    {
        var left = paper.Frame.Right - TitleBlockDrawing.Width;
        Box[] columns = [.. new[] { left, left + Panel.Width + Panel.Gap }.Select(x => new Box(x, Above(paper), x + Panel.Width, paper.Space.Top))];
        return DetailRows.Place([.. details.Select(one => one.Canvas)], paper.Space with { Right = left - (2 * Panel.Gap) }) is { } views && Columns.Pack(panels, columns) is { } items
            ? new DetailPage(paper, scale, [.. details], views, items, [])
            : null;
    }

    /// <summary>Details over the title block, as many on a page as it holds, notes left of the last title block, else on pages behind it; null where a page can't hold one of them.</summary>
    public static ImmutableArray<DetailPage>? Several(PaperSize paper, DrawingScale scale, IReadOnlyList<DrawnDetail> details, ImmutableArray<Panel> panels)
    {
        var space = paper.Space with { Bottom = Above(paper) };
        var pages = new List<(List<DrawnDetail> Details, ImmutableArray<Point> At)>();
        foreach (var detail in details)
        {
            if (pages.Count > 0 && Place([.. pages[^1].Details, detail]) is { } more)
            {
                pages[^1] = ([.. pages[^1].Details, detail], more);
            }
            else if (Place([detail]) is { } alone)
            {
                pages.Add(([detail], alone));
            }
            else
            {
                return null;
            }
        }

        if (pages.Count == 0)
        {
            return null;
        }

        var notes = Columns.Pack(panels, [.. LeftOfTitle(paper)]);
        return notes is not null ? Numbered(notes.Value, []) : PanelPages.On(paper, panels) is { } further ? Numbered([], further) : null;

        ImmutableArray<DetailPage> Numbered(ImmutableArray<SheetItem> items, ImmutableArray<ImmutableArray<SheetItem>> further) =>
            [.. pages.Select((page, i) => i == pages.Count - 1 ? new DetailPage(paper, scale, [.. page.Details], page.At, items, further) : new DetailPage(paper, scale, [.. page.Details], page.At, [], []))];

        ImmutableArray<Point>? Place(IReadOnlyList<DrawnDetail> some) => DetailRows.Place([.. some.Select(one => one.Canvas)], space);
    }

    private static IEnumerable<Box> LeftOfTitle(PaperSize paper)
    {
        var right = paper.Frame.Right - TitleBlockDrawing.Width - Panel.Gap;
        for (var left = paper.Space.Left; left + Panel.Width <= right; left += Panel.Width + Panel.Gap)
        {
            yield return new Box(left, paper.Space.Bottom, left + Panel.Width, paper.Frame.Bottom + TitleBlockDrawing.Height);
        }
    }

    private static double Above(PaperSize paper) => paper.Frame.Bottom + TitleBlockDrawing.Height + Panel.Gap;
}
