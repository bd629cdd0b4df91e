using DocumentFormat.OpenXml.Spreadsheet;

namespace IfcCourser.Output.Workbooks;

/// <summary>The cell styles of our workbooks: one for each role and format.</summary>
internal static class WorkbookStyles
{
    private const uint FirstOwnFormat = 164;
    private const uint Bold = 1;
    private const uint Large = 2;
    private const uint Grey = 3;
    private const uint HeaderFill = 2;
    private const uint InputFill = 3;
    private const uint LineUnder = 1;
    private const uint LineOver = 2;

    private static readonly CellFormat[] _formats = Enum.GetValues<CellFormat>();

    private static readonly string[] _codes = ["@", "General", "0", "0.0", "0.00", "# ??/??", "#,##0.00"];

    /// <summary>Number of the style.</summary>
    public static uint Of(CellRole role, CellFormat format) => (uint)(((int)role * _formats.Length) + (int)format);

    public static Stylesheet Sheet() => new(
        new NumberingFormats(_codes.Select((code, i) => new NumberingFormat { NumberFormatId = FirstOwnFormat + (uint)i, FormatCode = code })),
        new Fonts(Font(10), Font(10, new Bold()), Font(14, new Bold()), Font(9, new Color { Rgb = "FF595959" })),
        new Fills(Fill(PatternValues.None), Fill(PatternValues.Gray125), Fill(PatternValues.Solid, "FFD9D9D9"), Fill(PatternValues.Solid, "FFFFF7D6")),
        new Borders(new Border(), new Border(new BottomBorder { Style = BorderStyleValues.Thin }), new Border(new TopBorder { Style = BorderStyleValues.Thin })),
        new CellStyleFormats(new DocumentFormat.OpenXml.Spreadsheet.CellFormat()),
        new CellFormats(Enum.GetValues<CellRole>().SelectMany(role => _formats.Select(format => Style(role, format)))),
        new CellStyles(new CellStyle { Name = "Normal", FormatId = 0, BuiltinId = 0 }));

    private static Font Font(double size, params DocumentFormat.OpenXml.OpenXmlElement[] before) =>
        new([.. before.OfType<Bold>(), new FontSize { Val = size }, .. before.OfType<Color>(), new FontName { Val = "Arial" }]);

    private static Fill Fill(PatternValues pattern, string? colour = null)
    {
        var fill = new PatternFill { PatternType = pattern };
        if (colour is not null)
        {
            fill.ForegroundColor = new ForegroundColor { Rgb = colour };
        }

        return new Fill(fill);
    }

    private static DocumentFormat.OpenXml.Spreadsheet.CellFormat Style(CellRole role, CellFormat format) => new(
        new Alignment
        {
            Vertical = VerticalAlignmentValues.Top,
            Horizontal = format is CellFormat.Text ? HorizontalAlignmentValues.Left : HorizontalAlignmentValues.Right,
            Indent = role is CellRole.Body or CellRole.Header && format is CellFormat.Text ? 1U : 0,
            WrapText = role is CellRole.Header || (role is CellRole.Body && format is CellFormat.Text),
        })
    {
        FormatId = 0,
        NumberFormatId = format is CellFormat.Text or CellFormat.Plain ? 0 : FirstOwnFormat + (uint)format,
        FontId = role switch { CellRole.Header or CellRole.Total => Bold, CellRole.Title => Large, CellRole.Note => Grey, _ => 0 },
        FillId = role switch { CellRole.Header => HeaderFill, CellRole.Input => InputFill, _ => 0 },
        BorderId = role switch { CellRole.Header => LineUnder, CellRole.Total => LineOver, _ => 0 },
        ApplyNumberFormat = true,
        ApplyFont = true,
        ApplyFill = true,
        ApplyBorder = true,
        ApplyAlignment = true,
        // A text that looks like a formula stays a text when the cell is edited.
        QuotePrefix = role is CellRole.Body && format is CellFormat.Text,
    };
}
