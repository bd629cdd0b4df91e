using IfcCourser.Units;

namespace IfcCourser.Output.Sheets.Panels;

/// <summary>The title block: 180 mm wide, lower right (ISO 7200), one block reference whose attributes are the data fields.</summary>
internal static class TitleBlockDrawing
{
    public const double Width = 180;
    public const double Height = 57;
    private const double LabelHeight = 2.5;
    private const double ValueHeight = 3;
    private const double NumberWidth = 52;
    private const double NumberHeight = 3.5;

    /// <summary>Left and right of a value together.</summary>
    private const double Pad = 3;

    private static readonly ImmutableArray<Field> _fields =
    [
        new("TITLE", "Title", new Box(0, 45, 140, 57), 4, t => t.Title),
        new("SHEET_NUMBER", "Sheet", new Box(140, 45, 180, 57), 4, t => t.SheetNumber),
        new("PROJECT", "Project", new Box(0, 34, 110, 45), ValueHeight, t => t.Project),
        new("CLIENT", "Client", new Box(110, 34, 180, 45), ValueHeight, t => t.Client),
        new("SUPPLEMENTARY_TITLE", "Supplementary title", new Box(0, 23, 80, 34), ValueHeight, t => t.SupplementaryTitle),
        new("DOCUMENT_TYPE", "Document type", new Box(80, 23, 130, 34), ValueHeight, t => t.DocumentType),
        new("DOCUMENT_STATUS", "Status", new Box(130, 23, 180, 34), ValueHeight, t => t.DocumentStatus),
        new("LEGAL_OWNER", "Legal owner", new Box(0, 12, 55, 23), ValueHeight, t => t.LegalOwner),
        new("CREATOR", "Creator", new Box(55, 12, 125, 23), ValueHeight, t => t.Creator),
        new("APPROVAL_PERSON", "Approved by", new Box(125, 12, 180, 23), ValueHeight, t => t.ApprovalPerson),
        new("IDENTIFICATION_NUMBER", "Drawing", new Box(0, 0, NumberWidth, 12), NumberHeight, t => t.IdentificationNumber),
        new("REVISION", "Rev.", new Box(NumberWidth, 0, 64, 12), ValueHeight, t => t.Revision),
        new("DATE_OF_ISSUE", "Date of issue", new Box(64, 0, 93, 12), ValueHeight, t => t.DateOfIssue),
        new("SCALE", "Scale", new Box(93, 0, 130, 12), ValueHeight, t => t.Scale),
        new("PAPER_SIZE", "Paper", new Box(130, 0, 155, 12), ValueHeight, t => t.PaperSize),
        new("UNITS", "Lengths in", new Box(155, 0, 180, 12), ValueHeight, _ => string.Empty),
    ];

    /// <summary>Whether a sheet's number is printed in full.</summary>
    public static bool HoldsNumber(string number) => TextMetrics.Width(number, NumberHeight) <= NumberWidth - Pad;

    public static BlockItem At(Point lowerLeft, TitleBlock title, UnitSystem units)
    {
        var items = _fields.SelectMany(field => new SheetItem[]
        {
            PolylineItem.Rectangle(Pen.Table, field.Cell),
            new TextItem(Pen.Text, new Point(field.Cell.Left + 1.5, field.Cell.Top - 1 - LabelHeight), field.Label, LabelHeight),
        });
        var frame = PolylineItem.Rectangle(Pen.Frame, new Box(0, 0, Width, Height));
        var attributes = _fields.Select(field => new BlockAttribute(
            field.Tag,
            field.Label,
            Pen.Heading,
            new Point(field.Cell.Left + 1.5, field.Cell.Bottom + 1.8),
            field.TextHeight,
            TextAnchor.Left,
            AttributeDisplay.Shown));
        var unit = units == UnitSystem.Inch ? "ft, in" : "mm";
        var values = _fields.Select(field => field.Tag == "UNITS" ? unit : field.Value(title))
            .Zip(_fields, (value, field) => TextMetrics.Fit(value, field.TextHeight, field.Cell.Width - Pad));
        var definition = new BlockDefinition("TITLE-BLOCK", [.. items, frame], [.. attributes]);
        return new BlockItem(Pen.Frame, definition, lowerLeft, [.. values]);
    }

    private sealed record Field(string Tag, string Label, Box Cell, double TextHeight, Func<TitleBlock, string> Value);
}
