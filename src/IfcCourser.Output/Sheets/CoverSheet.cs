using IfcCourser.Layouts;
using IfcCourser.Output.Sheets.Covers;
using IfcCourser.Output.Sheets.Panels;
using IfcCourser.Output.Sheets.Sets;

namespace IfcCourser.Output.Sheets;

/// <summary>The first sheet of a set: what it is for, its sheets and issues, what was laid out and what was not, how to read it.</summary>
public static class CoverSheet
{
    public const string Number = "C01";

    public const string Title = "Cover";

    public const string DocumentType = "Cover sheet";

    private const double Head = 46;

    /// <summary>On one page where a paper holds all, else on as many of the last as that takes.</summary>
    /// <param name="sheets">All of the set, those of the cover included.</param>
    internal static (PaperSize Paper, ImmutableArray<ImmutableArray<SheetItem>> Pages) Pages(Layout layout, ImmutableArray<SetSheet> sheets, ImmutableArray<PaperSize> papers) =>
        PanelPages.Of(papers, CoverPanels.Of(layout, sheets), Head);

    /// <param name="items">Of the first page.</param>
    internal static Sheet Compose(Layout layout, PaperSize paper, ImmutableArray<SheetItem> items, SheetContext context)
    {
        var title = SheetFrame.Title(layout) with { IdentificationNumber = Number, Title = Title, DocumentType = DocumentType };
        return PanelPages.Sheet(SheetText.SheetName(Number, Title), paper, [.. CoverHead.Of(layout, paper), .. items], layout.Rules.Catalog.Units, context, title);
    }
}
