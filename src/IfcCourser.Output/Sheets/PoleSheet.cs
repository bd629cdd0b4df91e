using IfcCourser.Layouts;
using IfcCourser.Output.Sheets.Schedules;

namespace IfcCourser.Output.Sheets;

/// <summary>A page of the storey poles of a set at their full heights: what a mason marks on a lath.</summary>
internal static class PoleSheet
{
    /// <param name="pages">All of the set.</param>
    /// <param name="page">From 1.</param>
    /// <param name="number">Of the sheet, such as Q02.</param>
    public static Sheet Compose(Layout layout, ImmutableArray<PolePage> pages, int page, string number, SheetContext context)
    {
        var (shown, title) = (pages[page - 1], ScheduleText.PolesPage(page, pages.Length));
        return shown.Fit.Assembled(SheetText.SheetName(number, title), ScheduleText.Poles, layout.Rules.Catalog.Units, context, shown.Fit.Title(layout, shown.Storey) with
        {
            IdentificationNumber = number,
            Title = title,
            DocumentType = ScheduleText.PolesType,
        });
    }
}
