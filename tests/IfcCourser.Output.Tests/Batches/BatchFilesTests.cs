using System.Collections.Immutable;
using System.Text;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;
using DocumentFormat.OpenXml.Validation;
using IfcCourser.Findings;
using IfcCourser.Layouts;
using IfcCourser.Output.Batches;
using IfcCourser.Output.Ordering;
using IfcCourser.Output.Tests.Page;
using IfcCourser.Output.Tests.Support;
using IfcCourser.Units;

namespace IfcCourser.Output.Tests.Batches;

/// <summary>Page, workbook and tables over three lots: two of a plan in phase A, one of them mirrored, and one that failed in B.</summary>
public sealed class BatchFilesTests
{
    private static readonly PlainOrderLine _pallet = new("aac-mm", OrderItem.Pallet, "unit 624 x 249 mm", "unit", 240, "pallet", 2, 0, 40) { WidthUnit = "mm" };

    private static readonly PlainOrderLine _units = new("aac-mm", OrderItem.FullUnit, "unit 624 x 249 mm", "unit", 240, "pcs", 50, 0, null) { WidthUnit = "mm" };

    private static readonly BatchSummary _batch = Batch("7", "house.ifc");

    [Fact]
    public void The_page_says_what_failed_what_is_ordered_and_how_often_something_was_found()
    {
        var page = new PageReading(Page(_batch));

        Assert.Contains("9 broken.ifc B line 3: cut off", page.Section("failures"), StringComparison.Ordinal);
        // 2 x 50 units are three pallets of 40, not twice two.
        Assert.Contains("Pallet unit 624 x 249 mm, 3 whole pallets of 40 for 100, 20 left over aac-mm 240 mm 3 0 3 pallet 3", page.Section("order"), StringComparison.Ordinal);
        Assert.Contains("Lots that failed are in no line: 9.", page.Section("order"), StringComparison.Ordinal);
        Assert.Contains("opening-moved note 6 2", page.Section("findings"), StringComparison.Ordinal);
        Assert.Contains("house.ifc, mirrored 1 0 10 9 100 80 20 25", page.Section("plans"), StringComparison.Ordinal);
        Assert.Contains("The job 3 1 20 18 200 160 40 50", page.Section("phases"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_lot_is_linked_to_its_page_or_else_to_its_folder()
    {
        var html = Page(Batch("7 #2", "house.ifc"));

        Assert.Contains("<a href=\"lots/7%20%232/report.html\">", html, StringComparison.Ordinal);
        Assert.Contains("<a href=\"lots/8/\">", html, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("</script><script>alert(1)</script>")]
    [InlineData("\" onmouseover=\"alert(1)")]
    public void Names_are_text_wherever_they_stand(string name)
    {
        var (plain, page) = (Page(_batch), Page(Batch("7", name)));

        Assert.Equal(plain.Split('<').Length, page.Split('<').Length);
        Assert.Equal(plain.Split('"').Length, page.Split('"').Length);
    }

    [Fact]
    public void The_workbook_is_valid_and_has_the_order_of_each_phase_first()
    {
        using var stream = Workbook(_batch);
        using var document = SpreadsheetDocument.Open(stream, isEditable: false);
        var workbook = document.WorkbookPart!;
        var order = ((WorksheetPart)workbook.GetPartById(workbook.Workbook!.Descendants<Sheet>().First().Id!.Value!)).Worksheet!.Descendants<Row>()
            .Select(row => string.Join('|', row.Descendants<Cell>().Select(cell => cell.CellFormula?.Text ?? cell.InnerText))).ToList();

        Assert.Empty(new OpenXmlValidator(DocumentFormat.OpenXml.FileFormatVersions.Office2019).Validate(document, TestContext.Current.CancellationToken).Select(error => $"{error.Part?.Uri}: {error.Description}"));
        Assert.Equal(["Order", "Phases", "Plan types", "Findings", "Lots"], workbook.Workbook!.Descendants<Sheet>().Select(sheet => sheet.Name!.Value), StringComparer.Ordinal);
        Assert.Contains(order, row => row.StartsWith("A|aac-mm|Pallet|unit 624 x 249 mm, 3 whole pallets of 40 for 100, 20 left over|240|mm|pallet|3|0|H", StringComparison.Ordinal));
    }

    [Fact]
    public void The_same_batch_gives_the_same_bytes_in_every_culture() => Assert.Single(
        Cultures.Each(() => Convert.ToHexString(Workbook(_batch).ToArray()) + Page(_batch) + BatchTotals.Of(_batch) + BatchCsv.Of(_batch, withTimes: false)).Distinct(StringComparer.Ordinal));

    private static BatchSummary Batch(string lot, string plan)
    {
        var counts = new LotCounts(10, 9, 100, 80, 20, 25, 0, 4, 0, 0, 3);
        ImmutableArray<FindingCount> findings = [new(FindingCodes.OpeningMoved.Id, Severity.Note, 3)];
        return new BatchSummary("rise", "2026-03-02", UnitSystem.Metric,
        [
            new LotSummary(lot, plan, LotSiting.AsDrawn, "A", null, IsReused: false, HasPage: true, null, counts, findings, [_units, _pallet]),
            new LotSummary("8", plan, LotSiting.Of(isMirrored: true, 0), "A", null, IsReused: false, HasPage: false, null, counts, findings, [_units, _pallet]),
            new LotSummary("9", "broken.ifc", LotSiting.AsDrawn, "B", "line 3: cut off", IsReused: false, HasPage: false, null, LotCounts.None, [], []),
        ]);
    }

    private static string Page(BatchSummary batch)
    {
        using var stream = new MemoryStream();
        BatchPage.Write(batch, stream);
        return Encoding.UTF8.GetString(stream.ToArray());
    }

    private static MemoryStream Workbook(BatchSummary batch)
    {
        var stream = new MemoryStream();
        BatchWorkbook.Write(batch, stream);
        return stream;
    }
}
