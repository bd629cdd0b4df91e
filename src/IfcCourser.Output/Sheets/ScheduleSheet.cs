using IfcCourser.Layouts;
using IfcCourser.Output.Sheets.Panels;
using IfcCourser.Output.Sheets.Schedules;

namespace IfcCourser.Output.Sheets;

/// <summary>Pieces, cuts, lintels, openings and bars of all walls, on as many pages as they take.</summary>
public static class ScheduleSheet
{
    public static int PagesOf(Layout layout, ImmutableArray<PaperSize> papers) => Pages(layout, papers).Pages.Length;

    /// <param name="page">From 1; the sheet has the same number.</param>
    public static Sheet Compose(Layout layout, int page, SheetContext context)
    {
        var (paper, pages) = Pages(layout, context.Papers);
        var (number, title) = (ScheduleText.Number(page), ScheduleText.Page(page, pages.Length));
        var block = SheetFrame.Title(layout) with { IdentificationNumber = number, Title = title, DocumentType = ScheduleText.DocumentType };
        return SheetFrame.Assembled(SheetText.SheetName(number, title), paper, layout.Rules.Catalog.Units, context, block, [], pages[page - 1]);
    }

    /// <summary>On papers up to the middle size: tables on larger ones can't be read without walking along them. Common practice, no source.</summary>
    private static (PaperSize Paper, ImmutableArray<ImmutableArray<SheetItem>> Pages) Pages(Layout layout, ImmutableArray<PaperSize> papers) =>
        PanelPages.Of([.. papers.Take((papers.Length + 1) / 2)], SchedulePanels.Of(layout));
}
