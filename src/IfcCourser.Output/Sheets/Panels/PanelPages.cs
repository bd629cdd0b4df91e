using IfcCourser.Units;

namespace IfcCourser.Output.Sheets.Panels;

/// <summary>Sheets that hold panels and no view: cover and schedules.</summary>
internal static class PanelPages
{
    private const double Step = Panel.Width + Panel.Gap;

    /// <summary>
    /// Panels in columns on one page of the first paper that holds them all, else on as many pages of the last as they take.
    /// </summary>
    /// <param name="papers">Smallest first.</param>
    /// <param name="panels">In order of weight.</param>
    /// <param name="head">Kept free at the top of the first page, paper millimetres.</param>
    /// <returns>The paper, and the items of each page.</returns>
    public static (PaperSize Paper, ImmutableArray<ImmutableArray<SheetItem>> Pages) Of(ImmutableArray<PaperSize> papers, ImmutableArray<Panel> panels, double head = 0)
    {
        foreach (var paper in papers)
        {
            if (Pack(paper, panels, head, 1) is { } page)
            {
                return (paper, page);
            }
        }

        for (var count = 2; ; count++)
        {
            if (Pack(papers[^1], panels, head, count) is { } pages)
            {
                return (papers[^1], pages);
            }
        }
    }

    /// <summary>Panels on as many pages of a paper as they take; null where a row of one is higher than the paper.</summary>
    public static ImmutableArray<ImmutableArray<SheetItem>>? On(PaperSize paper, ImmutableArray<Panel> panels)
    {
        if (panels.IsEmpty)
        {
            return [];
        }

        var highest = ColumnsOf(paper, 0).Select(column => column.Height).DefaultIfEmpty(0).Max();
        return panels.Any(panel => panel.Rows.Any(row => panel.HeadHeight + row.Height > highest))
            ? null
            : Enumerable.Range(1, int.MaxValue - 1).Select(count => Pack(paper, panels, 0, count)).First(pages => pages is not null);
    }

    /// <summary>A sheet with its frame and title block around a page.</summary>
    public static Sheet Sheet(string name, PaperSize paper, ImmutableArray<SheetItem> items, UnitSystem units, SheetContext context, TitleBlock title) =>
        SheetFrame.Assembled(name, paper, units, context, title, [], items);

    /// <summary>Pages beside each other in one long row of columns; items are taken back to their page by where they lie.</summary>
    private static ImmutableArray<ImmutableArray<SheetItem>>? Pack(PaperSize paper, ImmutableArray<Panel> panels, double head, int count)
    {
        var columns = Enumerable.Range(0, count).SelectMany(page => ColumnsOf(paper, page == 0 ? head : 0).Select(column => column.Moved(new Point(page * paper.Width, 0))));
        if (Columns.Pack(panels, [.. columns], paper.Width) is not { } items)
        {
            return null;
        }

        var byPage = items.ToLookup(item => (int)(ItemBox.Of(item, 1).Left / paper.Width));
        return [.. Enumerable.Range(0, count).Select(page => byPage[page].Select(item => item.MovedBy(new Point(-page * paper.Width, 0))).ToImmutableArray())];
    }

    /// <summary>As wide as a panel each, from the left; the last ones end over the title block.</summary>
    private static IEnumerable<Box> ColumnsOf(PaperSize paper, double head)
    {
        var space = paper.Space;
        var title = new Box(paper.Frame.Right - TitleBlockDrawing.Width, paper.Frame.Bottom, paper.Frame.Right, paper.Frame.Bottom + TitleBlockDrawing.Height);
        for (var left = space.Left; left + Panel.Width <= space.Right; left += Step)
        {
            var bottom = left + Panel.Width > title.Left ? title.Top + Panel.Gap : space.Bottom;
            yield return new Box(left, bottom, left + Panel.Width, space.Top - head);
        }
    }
}
