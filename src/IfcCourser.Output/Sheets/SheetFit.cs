using IfcCourser.Layouts;
using IfcCourser.Output.Sheets.Panels;
using IfcCourser.Output.Sheets.Walls;
using IfcCourser.Units;

namespace IfcCourser.Output.Sheets;

/// <summary>A view at a standard scale, with its panels, on a standard paper.</summary>
internal sealed record SheetFit(DrawingScale Scale, Canvas Canvas, Arrangement Arrangement)
{
    /// <summary>1:24 is the first scale that the largest paper is taken for.</summary>
    private const int FirstForLargest = 24;

    public PaperSize Paper => Arrangement.Paper;

    /// <summary>
    /// The largest scale whose paper is not the largest size, on the smallest paper that holds it; what is too long for every
    /// standard sheet takes the smallest scale on a roll that is as long as it takes.
    /// </summary>
    /// <param name="papers">Smallest first; the largest only holds what is too long for the others at a smaller scale.</param>
    /// <param name="scales">Largest first.</param>
    /// <param name="draw">The view at a scale.</param>
    /// <param name="panels">Beside the view.</param>
    public static SheetFit Of(ImmutableArray<PaperSize> papers, ImmutableArray<DrawingScale> scales, Func<DrawingScale, Canvas> draw, ImmutableArray<Panel> panels)
    {
        foreach (var scale in scales)
        {
            var canvas = draw(scale);
            var fit = For(papers, scale).Select(paper => On(paper, scale, canvas, panels)).FirstOrDefault(a => a is not null);
            if (fit is not null)
            {
                return fit;
            }
        }

        var smallest = draw(scales[^1]);
        return papers[^1].Rolls().Select(paper => On(paper, scales[^1], smallest, panels)).First(fit => fit is not null)!;
    }

    /// <summary>The papers that are taken for a scale.</summary>
    public static IEnumerable<PaperSize> For(ImmutableArray<PaperSize> papers, DrawingScale scale) =>
        papers.Take(scale.Denominator < FirstForLargest ? Math.Max(1, papers.Length - 1) : papers.Length);

    /// <summary>The view and its panels on a paper; null where it does not hold them.</summary>
    public static SheetFit? On(PaperSize paper, DrawingScale scale, Canvas canvas, ImmutableArray<Panel> panels)
    {
        var (width, height) = (canvas.Extent.Width / scale.Denominator, canvas.Extent.Height / scale.Denominator);
        return Arrangement.TryFit(paper, width, height, panels) is { } arrangement ? new SheetFit(scale, canvas, arrangement) : null;
    }

    /// <summary>The sheet with its frame and title block.</summary>
    public Sheet Assembled(string name, string view, UnitSystem units, SheetContext context, TitleBlock title)
    {
        var shown = new View(view, Scale, Canvas.Extent, Arrangement.View, [.. Canvas.Items]);
        return SheetFrame.Assembled(name, Paper, units, context, title, [shown], Arrangement.Panels);
    }

    /// <summary>A title block with what all sheets of a run share.</summary>
    public TitleBlock Title(Layout layout, string? storey) => SheetFrame.Title(layout, storey) with { Scale = Scale.Label };
}
