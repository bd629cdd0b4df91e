using IfcCourser.Layouts;
using IfcCourser.Output.Sheets.Panels;
using IfcCourser.Output.Sheets.Walls;
using IfcCourser.Units;

namespace IfcCourser.Output.Sheets;

/// <summary>A view at a standard scale, with its panels, on a standard paper.</summary>
/// <param name="Further">Pages of the same paper with the panels that the view has no room for; none where all stand beside it.</param>
internal sealed record SheetFit(DrawingScale Scale, Canvas Canvas, Arrangement Arrangement, ImmutableArray<ImmutableArray<SheetItem>> Further)
{
    /// <summary>1:24 is the first scale that the largest paper is taken for.</summary>
    private const int FirstForLargest = 24;

    public PaperSize Paper => Arrangement.Paper;

    /// <summary>
    /// The largest scale whose paper is not the largest size, on the smallest paper that holds it; what no paper holds with its panels takes a
    /// larger one of the same series, else a roll as long as that takes, at the largest scale whose view the largest paper holds, else at the smallest; what would take more than twenty papers goes on by tenths of that.
    /// </summary>
    /// <param name="papers">Smallest first; the largest only holds what is too long for the others at a smaller scale.</param>
    /// <param name="scales">Largest first.</param>
    /// <param name="draw">The view at a scale.</param>
    /// <param name="panels">Beside the view.</param>
    public static SheetFit Of(ImmutableArray<PaperSize> papers, ImmutableArray<DrawingScale> scales, Func<DrawingScale, Canvas> draw, ImmutableArray<Panel> panels)
    {
        var drawn = new List<(DrawingScale Scale, Canvas Canvas)>();
        foreach (var scale in scales)
        {
            var canvas = draw(scale);
            drawn.Add((scale, canvas));
            var fit = For(papers, scale).Select(paper => On(paper, scale, canvas, panels)).FirstOrDefault(a => a is not null);
            if (fit is not null)
            {
                return fit;
            }
        }

        var room = Arrangement.SpaceOf(papers[^1]);
        var (rolled, view) = drawn.Find(one => one.Canvas.Extent.Width <= room.Width * one.Scale.Denominator && one.Canvas.Extent.Height <= room.Height * one.Scale.Denominator) is { Canvas: not null } held
            ? held
            : drawn[^1];
        const int MostPapers = 20;
        if (view.Extent.Width > room.Width * MostPapers * rolled.Denominator || view.Extent.Height > room.Height * MostPapers * rolled.Denominator)
        {
            // Walls a country apart, as where one placement is wrong: no roll holds them at a scale of buildings.
            return Of(papers, [rolled.Tenth], draw, panels);
        }

        var larger = papers[^1].Larger().Select(paper => On(paper, rolled, view, panels) ?? On(paper, rolled, view, Brief(panels)) ?? Flowing(paper, rolled, view, Brief(panels)));
        return larger.Concat(papers[^1].Rolls().Select(paper => On(paper, rolled, view, panels))).First(fit => fit is not null)!;
    }

    /// <summary>
    /// With all its panels, else without those that stand on the cover, else with what it has room for while the others go on to further pages: at the largest scale that leaves room for the first of them, else at the
    /// largest that a paper holds. Null where no paper holds the view at any of the scales.
    /// </summary>
    /// <param name="scales">At which the view can be read, largest first.</param>
    /// <param name="crowding">Whether a view is taken whose texts lie over each other.</param>
    /// <inheritdoc cref="Of"/>
    public static SheetFit? Flowing(ImmutableArray<PaperSize> papers, ImmutableArray<DrawingScale> scales, Func<DrawingScale, Canvas> draw, ImmutableArray<Panel> panels, Crowding crowding)
    {
        var drawn = new List<(DrawingScale Scale, Canvas Canvas)>();
        foreach (var scale in scales)
        {
            var canvas = draw(scale);
            if (crowding == Crowding.Refused && canvas.IsCrowded())
            {
                continue;
            }

            drawn.Add((scale, canvas));
            var whole = For(papers, scale).Select(paper => On(paper, scale, canvas, panels)).FirstOrDefault(fit => fit is not null);
            if (whole is not null)
            {
                return whole;
            }
        }

        // What the cover says too would fill further sheets with nothing else.
        var brief = Brief(panels);
        var without = from one in drawn
                      from paper in For(papers, one.Scale)
                      select On(paper, one.Scale, one.Canvas, brief);
        if (without.FirstOrDefault(fit => fit is not null) is { } held)
        {
            return held;
        }

        var flowing = drawn.SelectMany(one => For(papers, one.Scale).Reverse().Select(paper => Flowing(paper, one.Scale, one.Canvas, brief))).OfType<SheetFit>().ToArray();
        return Array.Find(flowing, fit => !fit.Arrangement.Panels.IsEmpty) ?? flowing.FirstOrDefault();
    }

    /// <summary>The panels that only the sheet has, and a line for those that stand on the cover.</summary>
    private static ImmutableArray<Panel> Brief(ImmutableArray<Panel> panels)
    {
        var words = panels.Select(panel => panel.OnCover).OfType<string>().ToArray();
        return words.Length == 0 ? panels : [.. panels.Where(panel => panel.OnCover is null), new Panel([], [Table.Heading(SheetText.OnCover(words))])];
    }

    private static SheetFit? Flowing(PaperSize paper, DrawingScale scale, Canvas canvas, ImmutableArray<Panel> panels)
    {
        var (width, height) = (canvas.Extent.Width / scale.Denominator, canvas.Extent.Height / scale.Denominator);
        return Arrangement.TryMost(paper, width, height, panels) is { } most && PanelPages.On(paper, most.Left) is { } further
            ? new SheetFit(scale, canvas, most.Arrangement, further)
            : null;
    }

    /// <summary>The papers that are taken for a scale.</summary>
    public static IEnumerable<PaperSize> For(ImmutableArray<PaperSize> papers, DrawingScale scale) =>
        papers.Take(scale.Denominator < FirstForLargest ? Math.Max(1, papers.Length - 1) : papers.Length);

    /// <summary>The view and its panels on a paper; null where it does not hold them.</summary>
    public static SheetFit? On(PaperSize paper, DrawingScale scale, Canvas canvas, ImmutableArray<Panel> panels)
    {
        var (width, height) = (canvas.Extent.Width / scale.Denominator, canvas.Extent.Height / scale.Denominator);
        return Arrangement.TryFit(paper, width, height, panels) is { } arrangement ? new SheetFit(scale, canvas, arrangement, []) : null;
    }

    /// <summary>The sheet with its frame and title block.</summary>
    public Sheet Assembled(string name, string view, UnitSystem units, SheetContext context, TitleBlock title)
    {
        var shown = new View(view, Scale, Canvas.Extent, Arrangement.View, Canvas.Drawn());
        return SheetFrame.Assembled(name, Paper, units, context, title, [shown], Arrangement.Panels);
    }

    /// <summary>A title block with what all sheets of a run share.</summary>
    public TitleBlock Title(Layout layout, string? storey) => SheetFrame.Title(layout, storey) with { Scale = Scale.Label };
}
