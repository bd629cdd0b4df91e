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

    /// <summary>A cover is one sheet: where no paper holds it, it takes a roll, one of the first so many that can be tried.</summary>
    private const int MostRolls = 400;

    /// <param name="sheets">All of the set, this one included.</param>
    public static Sheet Compose(Layout layout, ImmutableArray<SetSheet> sheets, SheetContext context)
    {
        var (paper, pages) = PanelPages.Of([.. context.Papers, .. context.Papers[^1].Rolls().Take(MostRolls)], CoverPanels.Of(layout, sheets), Head);
        var title = SheetFrame.Title(layout) with { IdentificationNumber = Number, Title = Title, DocumentType = DocumentType };
        return PanelPages.Sheet(
            SheetText.SheetName(Number, Title), paper, [.. CoverHead.Of(layout, paper), .. pages[0]], layout.Rules.Catalog.Units, context, title);
    }
}
