using IfcCourser.Units;

namespace IfcCourser.Output.Sheets.Panels;

/// <summary>Frame and title block around what a sheet shows.</summary>
internal static class SheetFrame
{
    /// <param name="items">On the paper, paper millimetres.</param>
    public static Sheet Assembled(
        string name, PaperSize paper, UnitSystem units, SheetContext context, TitleBlock title, ImmutableArray<View> views, ImmutableArray<SheetItem> items)
    {
        var placed = title with { SheetNumber = context.Place, PaperSize = paper.Name };
        var trimmed = PolylineItem.Rectangle(Pen.NotPrinted, new Box(0, 0, paper.Width, paper.Height));
        var frame = PolylineItem.Rectangle(Pen.Frame, paper.Frame);
        var at = new Point(paper.Frame.Right - TitleBlockDrawing.Width, paper.Frame.Bottom);
        return new Sheet(name, paper, units, context.Pens, placed, views, [trimmed, frame, .. items, TitleBlockDrawing.At(at, placed, units)]);
    }

    /// <summary>A title block with what all sheets of a run share.</summary>
    /// <param name="storey">Of all that the sheet shows; null for sheets of the whole set.</param>
    public static TitleBlock Title(Layouts.Layout layout, string? storey) => Title(layout) with
    {
        SupplementaryTitle = string.Join(", ", new[] { layout.Model.Siting.Label, storey }.Where(part => !string.IsNullOrEmpty(part))),
    };

    /// <inheritdoc cref="Title(Layouts.Layout, string)"/>
    public static TitleBlock Title(Layouts.Layout layout) => new()
    {
        LegalOwner = string.Empty,
        Project = layout.Job.Project ?? layout.Model.ProjectName ?? string.Empty,
        Client = layout.Job.Client ?? string.Empty,
        IdentificationNumber = string.Empty,
        DateOfIssue = SheetText.Day(layout.Model.Date),
        SheetNumber = string.Empty,
        Title = string.Empty,
        ApprovalPerson = layout.Job.CheckedBy ?? string.Empty,
        Creator = layout.Job.Author ?? SheetText.Creator,
        DocumentType = string.Empty,
        Revision = layout.Job.Revisions.IsEmpty ? string.Empty : layout.Job.Revisions[^1].Mark,
        SupplementaryTitle = string.Empty,
        DocumentStatus = SheetText.Status,
        Scale = SheetText.NoScale,
        PaperSize = string.Empty,
    };
}
