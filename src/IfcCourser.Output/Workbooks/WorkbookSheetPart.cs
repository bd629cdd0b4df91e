using System.Globalization;
using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;
using IfcCourser.Units;

namespace IfcCourser.Output.Workbooks;

/// <summary>Writes a sheet as a part of a workbook, row by row.</summary>
internal static class WorkbookSheetPart
{
    private const uint Letter = 1;
    private const uint A4 = 9;

    /// <summary>Of a line of text, points.</summary>
    private const double LineHeight = 13.5;

    public static void Write(WorksheetPart part, WorkbookSheet sheet, UnitSystem units)
    {
        using var writer = OpenXmlWriter.Create(part);
        writer.WriteStartElement(new Worksheet());
        writer.WriteElement(new SheetProperties(new PageSetupProperties { FitToPage = true }));
        writer.WriteElement(View(sheet));
        writer.WriteElement(new Columns(sheet.Widths.Select((width, i) => new Column { Min = (uint)i + 1, Max = (uint)i + 1, Width = width, CustomWidth = true })));
        writer.WriteStartElement(new SheetData());
        for (var i = 0; i < sheet.Rows.Length; i++)
        {
            writer.WriteElement(Row(i + 1, sheet.Rows[i], sheet.Widths));
        }

        writer.WriteEndElement();
        if (sheet.LastRow > sheet.Header)
        {
            writer.WriteElement(new AutoFilter { Reference = FilterRange(sheet).Replace("$", string.Empty, StringComparison.Ordinal) });
        }

        writer.WriteElement(new PageMargins { Left = 0.5, Right = 0.5, Top = 0.6, Bottom = 0.6, Header = 0.3, Footer = 0.3 });
        writer.WriteElement(new PageSetup { PaperSize = units is UnitSystem.Inch ? Letter : A4, Orientation = OrientationValues.Landscape, FitToWidth = 1, FitToHeight = 0 });
        writer.WriteElement(new HeaderFooter(new OddFooter("&L&F&C&A&R&P / &N")));
        writer.WriteEndElement();
    }

    /// <summary>Header and table, as absolute references.</summary>
    public static string FilterRange(WorkbookSheet sheet) =>
        FormattableString.Invariant($"$A${sheet.Header}:${WorkbookSheet.Column(sheet.Widths.Length - 1)}${sheet.LastRow}");

    private static SheetViews View(WorkbookSheet sheet) => new(new SheetView(new Pane
    {
        VerticalSplit = sheet.Header,
        TopLeftCell = FormattableString.Invariant($"A{sheet.Header + 1}"),
        ActivePane = PaneValues.BottomLeft,
        State = PaneStateValues.Frozen,
    })
    { WorkbookViewId = 0 });

    private static Row Row(int number, ImmutableArray<WorkbookCell> cells, ImmutableArray<double> widths) => new(cells.Select((cell, i) => Cell(cell, FormattableString.Invariant($"{WorkbookSheet.Column(i)}{number}"))))
    {
        RowIndex = (uint)number,
        Height = cells.Select((cell, i) => Height(cell, widths[i])).DefaultIfEmpty(LineHeight).Max(),
        CustomHeight = true,
    };

    /// <summary>Points that a cell needs: readers do not all fit rows to texts that are broken into lines.</summary>
    private static double Height(WorkbookCell cell, double width)
    {
        // Columns are as wide as so many digits; letters are narrower in the mean.
        const double Indent = 1;
        const double LettersPerDigit = 1.2;
        var isWrapped = cell.Role is CellRole.Header or CellRole.Body && cell.Text is not null;
        return cell.Role is CellRole.Title ? LineHeight * 1.5 : LineHeight * (isWrapped ? Math.Max(1, Lines(cell.Text!, (width - Indent) * LettersPerDigit)) : 1);
    }

    /// <summary>Lines that a text takes, broken between words.</summary>
    private static int Lines(string text, double width)
    {
        var (lines, used) = (1, 0);
        foreach (var word in text.Split(' '))
        {
            (lines, used) = used > 0 && used + 1 + word.Length > width ? (lines + 1, word.Length) : (lines, used + 1 + word.Length);
        }

        return lines;
    }

    private static Cell Cell(WorkbookCell cell, string reference)
    {
        var written = new Cell { CellReference = reference, StyleIndex = WorkbookStyles.Of(cell.Role, cell.Format) };
        if (cell.Formula is { } formula)
        {
            written.CellFormula = new CellFormula(formula);
            written.DataType = cell.Value is null ? CellValues.String : null;
            written.CellValue = new CellValue(cell.Value is { } now ? Number(now) : string.Empty);
        }
        else if (cell.Value is { } value)
        {
            written.CellValue = new CellValue(Number(value));
        }
        else if (cell.Text is { Length: > 0 } text)
        {
            written.DataType = CellValues.InlineString;
            written.InlineString = new InlineString(new Text(WorkbookText.Clean(text)) { Space = SpaceProcessingModeValues.Preserve });
        }

        return written;
    }

    private static string Number(double value) => value.ToString("R", CultureInfo.InvariantCulture);
}
