using IfcCourser.Layouts;
using IfcCourser.Output.Sheets.Walls;

namespace IfcCourser.Output.Sheets.Schedules;

/// <summary>Storey poles that share a sheet, drawn and placed.</summary>
internal sealed record PolePage(SheetFit Fit, ImmutableArray<Pole> Poles)
{
    /// <summary>Null where poles of several storeys share the page.</summary>
    public string? Storey => Poles.Select(pole => pole.Storey).Distinct(StringComparer.Ordinal).Count() == 1 ? Poles[0].Storey : null;

    /// <summary>
    /// At the largest scale at which some standard paper takes each pole, on the paper that takes fewest pages; a pole too high for all of them makes rolls.
    /// </summary>
    /// <param name="papers">Smallest first.</param>
    public static ImmutableArray<PolePage> Of(Layout layout, ImmutableArray<PaperSize> papers)
    {
        var text = new SheetLengths(layout.Rules.Catalog.Units);
        var (poles, scales) = (Pole.Of(layout), DrawingScale.LargeFor(text.Units));
        foreach (var scale in scales)
        {
            var drawn = Drawn(scale);
            var best = SheetFit.For(papers, scale).Select(paper => Pages(layout, drawn, text, paper)).Where(pages => pages is not null).MinBy(pages => pages!.Length);
            if (best is not null)
            {
                return [.. best];
            }
        }

        var smallest = Drawn(scales[^1]);
        return [.. papers[^1].Larger().Concat(papers[^1].Rolls()).Select(paper => Pages(layout, smallest, text, paper)).First(pages => pages is not null)!];

        Drawing[] Drawn(DrawingScale scale) => [.. poles.Select(pole => new Drawing(pole, scale, PoleDrawing.Draw(layout, pole, text, scale)))];
    }

    /// <summary>
    /// In order, as many on a page as it holds; a storey begins on a new page where the page before has no room for all of its poles. Null where a page can't hold one pole.
    /// </summary>
    private static PolePage[]? Pages(Layout layout, Drawing[] poles, SheetLengths text, PaperSize paper)
    {
        var pages = new List<List<Drawing>>();
        foreach (var storey in poles.GroupBy(one => one.Pole.Storey, StringComparer.Ordinal))
        {
            var begins = pages.Count == 0 || On(layout, [.. pages[^1], .. storey], text, paper) is null;
            foreach (var pole in storey)
            {
                if (begins || On(layout, [.. pages[^1], pole], text, paper) is null)
                {
                    pages.Add([]);
                    begins = false;
                }

                pages[^1].Add(pole);
            }
        }

        var placed = pages.Select(page => On(layout, page, text, paper)).OfType<PolePage>().ToArray();
        return placed.Length == pages.Count ? placed : null;
    }

    private static PolePage? On(Layout layout, List<Drawing> some, SheetLengths text, PaperSize paper)
    {
        ImmutableArray<Pole> poles = [.. some.Select(one => one.Pole)];
        var row = PoleDrawing.Row(some.Select(one => one.Canvas), some[0].Scale);
        return SheetFit.On(paper, some[0].Scale, row, PolePanels.Of(layout, poles, text)) is { } fit ? new PolePage(fit, poles) : null;
    }

    private sealed record Drawing(Pole Pole, DrawingScale Scale, Canvas Canvas);
}
