using System.Globalization;
using System.IO.Compression;
using System.Security;
using System.Text;
using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;
using IfcCourser.Output.Packing;
using IfcCourser.Units;

namespace IfcCourser.Output.Workbooks;

/// <summary>
/// Writes workbooks (ECMA-376, xlsx). The package is made by the library with ids of our own, then packed anew: what the library and the runtime pack
/// holds the clock and depends on the machine.
/// </summary>
internal static class WorkbookWriter
{
    private const string WorkbookType = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml";

    /// <param name="sheets">In their order; the first is shown.</param>
    /// <param name="title">Of the document's properties.</param>
    /// <param name="date">ISO 8601; stamps the zip entries and the properties.</param>
    /// <param name="units">Decides the paper.</param>
    public static void Write(ImmutableArray<WorkbookSheet> sheets, string title, string date, UnitSystem units, Stream stream)
    {
        using var package = new MemoryStream();
        using (var document = SpreadsheetDocument.Create(package, SpreadsheetDocumentType.Workbook))
        {
            var workbook = document.AddNewPart<WorkbookPart>(WorkbookType, "rId1");
            Properties(document.AddNewPart<CoreFilePropertiesPart>("rId2"), title, date);
            workbook.AddNewPart<WorkbookStylesPart>("rId1").Stylesheet = WorkbookStyles.Sheet();
            for (var i = 0; i < sheets.Length; i++)
            {
                WorkbookSheetPart.Write(workbook.AddNewPart<WorksheetPart>(Id(i)), sheets[i], units);
            }

            workbook.Workbook = new Workbook(
                new DocumentFormat.OpenXml.Spreadsheet.Sheets(sheets.Select((sheet, i) => new Sheet { Name = sheet.Name, SheetId = (uint)i + 1, Id = Id(i) })),
                new DefinedNames(sheets.SelectMany((sheet, i) => Names(sheet, (uint)i))),
                // So that a reader works out every formula itself on opening.
                new CalculationProperties { FullCalculationOnLoad = true });
        }

        package.Position = 0;
        using var made = new ZipArchive(package, ZipArchiveMode.Read);
        var zip = new ZipWriter(stream, StampTime.Of(date));
        foreach (var entry in made.Entries.OrderBy(entry => entry.FullName, StringComparer.Ordinal))
        {
            zip.Add(entry.FullName, Content(entry));
        }

        zip.Close();
    }

    private static string Id(int sheet) => FormattableString.Invariant($"rId{sheet + 2}");

    private static IEnumerable<DefinedName> Names(WorkbookSheet sheet, uint place)
    {
        if (sheet.LastRow > sheet.Header)
        {
            yield return new DefinedName($"'{sheet.Name}'!{WorkbookSheetPart.FilterRange(sheet)}") { Name = "_xlnm._FilterDatabase", LocalSheetId = place, Hidden = true };
        }

        yield return new DefinedName(FormattableString.Invariant($"'{sheet.Name}'!${sheet.Header}:${sheet.Header}")) { Name = "_xlnm.Print_Titles", LocalSheetId = place };
    }

    private static void Properties(CoreFilePropertiesPart part, string title, string date)
    {
        var created = DateTimeOffset.TryParse(date, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out var at)
            ? $"<dcterms:created xsi:type=\"dcterms:W3CDTF\">{at.DateTime.ToString("yyyy-MM-dd'T'HH:mm:ss'Z'", CultureInfo.InvariantCulture)}</dcterms:created>"
            : string.Empty;
        using var stream = part.GetStream(FileMode.Create);
        stream.Write(Encoding.UTF8.GetBytes(
            "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n<cp:coreProperties xmlns:cp=\"http://schemas.openxmlformats.org/package/2006/metadata/core-properties\" "
            + "xmlns:dc=\"http://purl.org/dc/elements/1.1/\" xmlns:dcterms=\"http://purl.org/dc/terms/\" xmlns:xsi=\"http://www.w3.org/2001/XMLSchema-instance\">"
            + $"<dc:title>{SecurityElement.Escape(WorkbookText.Clean(title))}</dc:title><dc:creator>IfcCourser</dc:creator>{created}</cp:coreProperties>"));
    }

    private static byte[] Content(ZipArchiveEntry entry)
    {
        using var opened = entry.Open();
        using var copy = new MemoryStream();
        opened.CopyTo(copy);
        return copy.ToArray();
    }
}
