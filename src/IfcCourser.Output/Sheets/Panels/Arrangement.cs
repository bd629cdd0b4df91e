namespace IfcCourser.Output.Sheets.Panels;

/// <summary>Where the view and the panels of a sheet lie.</summary>
/// <param name="View">Lower left corner of the view, paper millimetres.</param>
/// <param name="Panels">Placed items of the panels.</param>
internal sealed record Arrangement(PaperSize Paper, Point View, ImmutableArray<SheetItem> Panels)
{
    private const double Step = Panel.Width + Panel.Gap;

    /// <summary>Where views and panels may lie.</summary>
    public static Box SpaceOf(PaperSize paper) => paper.Space;

    /// <summary>Lower left corner of the title block.</summary>
    public Point Title => TitleAt(Paper);

    /// <summary>
    /// Tries the panels beside the view, over the title block, then in a band under it, then in both; null where nothing fits.
    /// </summary>
    /// <param name="width">Of the view on the paper.</param>
    /// <param name="height">Of the view on the paper.</param>
    public static Arrangement? TryFit(PaperSize paper, double width, double height, ImmutableArray<Panel> panels)
    {
        var space = SpaceOf(paper);
        return width > space.Width || height > space.Height
            ? null
            : Beside(paper, space, width, height, panels) ?? Below(paper, space, width, height, panels)
                ?? Around(paper, space, width, height, panels);
    }

    private static Arrangement? Beside(PaperSize paper, Box space, double width, double height, ImmutableArray<Panel> panels)
    {
        var room = space.Width - width;
        for (var count = 2; count <= (int)(room / Step); count++)
        {
            if (Flow(paper, space, space.Top, count, panels) is { } items)
            {
                var left = space.Right + Panel.Gap - (count * Step);
                return new Arrangement(paper, Centred(new Box(space.Left, space.Bottom, left, space.Top), width, height), items);
            }
        }

        return null;
    }

    private static Arrangement? Below(PaperSize paper, Box space, double width, double height, ImmutableArray<Panel> panels)
    {
        var top = space.Top - height - Panel.Gap;
        return top - space.Bottom >= TitleBlockDrawing.Height
            && Flow(paper, space, top, (int)((space.Width + Panel.Gap) / Step), panels) is { } items
            ? new Arrangement(paper, new Point(space.Left + ((space.Width - width) / 2), space.Top - height), items)
            : null;
    }

    /// <summary>
    /// The view with as many of the panels as it has room for, in order of weight, and the others; null where the paper does not hold the view and the title block.
    /// </summary>
    /// <inheritdoc cref="TryFit"/>
    public static (Arrangement Arrangement, ImmutableArray<Panel> Left)? TryMost(PaperSize paper, double width, double height, ImmutableArray<Panel> panels)
    {
        if (TryFit(paper, width, height, []) is not { } placed)
        {
            return null;
        }

        ImmutableArray<Panel> kept = [], left = [];
        foreach (var panel in panels)
        {
            if (TryFit(paper, width, height, kept.Add(panel)) is { } more)
            {
                (placed, kept) = (more, kept.Add(panel));
            }
            else
            {
                left = left.Add(panel);
            }
        }

        return (placed, left);
    }

    /// <summary>The view in the upper left corner, columns beside it as high as the paper and columns under it.</summary>
    private static Arrangement? Around(PaperSize paper, Box space, double width, double height, ImmutableArray<Panel> panels)
    {
        var view = new Box(space.Left, space.Top - height, space.Left + width, space.Top);
        var title = new Box(TitleAt(paper).X, TitleAt(paper).Y, paper.Frame.Right, TitleAt(paper).Y + TitleBlockDrawing.Height);
        return !view.Grown(Panel.Gap).Overlaps(title) && Flow(paper, space, view, (int)((space.Width + Panel.Gap) / Step), panels) is { } items
            ? new Arrangement(paper, new Point(view.Left, view.Bottom), items)
            : null;
    }

    private static ImmutableArray<SheetItem>? Flow(PaperSize paper, Box space, double top, int count, ImmutableArray<Panel> panels) =>
        Flow(paper, space, space with { Bottom = top + Panel.Gap }, count, panels);

    /// <summary>Columns flush with the title block's right edge, under the view or beside it; the two over the title block end above it.</summary>
    private static ImmutableArray<SheetItem>? Flow(PaperSize paper, Box space, Box view, int count, ImmutableArray<Panel> panels)
    {
        var right = space.Right;
        var columns = Enumerable.Range(0, count).Select(i =>
        {
            var left = right - ((count - i) * Step) + Panel.Gap;
            var bottom = i >= count - 2 ? TitleAt(paper).Y + TitleBlockDrawing.Height + Panel.Gap : space.Bottom;
            return new Box(left, bottom, left + Panel.Width, left < view.Right + Panel.Gap ? view.Bottom - Panel.Gap : space.Top);
        });
        return Columns.Pack(panels, [.. columns]);
    }

    private static Point TitleAt(PaperSize paper) =>
        new(paper.Frame.Right - TitleBlockDrawing.Width, paper.Frame.Bottom);

    private static Point Centred(Box room, double width, double height) =>
        new(room.Left + ((room.Width - width) / 2), room.Bottom + ((room.Height - height) / 2));
}
