using System.Text;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;
using DocumentFormat.OpenXml.Validation;
using IfcCourser.Catalogs;
using IfcCourser.Layouts;
using IfcCourser.Output.Ordering;
using IfcCourser.Output.Tests.Json;
using IfcCourser.Output.Tests.Support;
using IfcCourser.Takeoff;

namespace IfcCourser.Output.Tests.Ordering;

public sealed class OrderFilesTests
{
    private static readonly Layout _house = Orders.With(FixtureLayouts.Of("yarrow/yarrow"), OffcutReuse.Wall);

    [Fact]
    public void The_takeoff_has_the_columns_of_the_contract_and_rows_of_pieces_add_up()
    {
        var rows = Rows(TakeoffCsv.Write, _house);
        var pieces = rows.Skip(1).Where(row => row[0] is "full-unit" or "part-unit" or "trough-unit" or "cored-unit").ToList();

        Assert.Equal("item,description,width,unit,net,waste,gross,packs", string.Join(',', rows[0]));
        Assert.All(rows, row => Assert.Equal(8, row.Length));
        Assert.Equal(LayoutTotals.Of(_house).FullUnits, pieces.Sum(row => Number(row[4])));
        Assert.All(rows.Skip(1), row => Assert.Equal(Number(row[6]), Number(row[4]) + Number(row[5]), 0.11));
    }

    /// <summary>A pallet whose content is not known leaves its cells empty and says so; it is not nought.</summary>
    [Fact]
    public void What_is_not_known_is_an_empty_cell_with_a_word()
    {
        var rules = SampleLayout.Full.Rules;
        var unknown = rules with { Catalog = rules.Catalog with { Ordering = OrderingData.Unknown } };
        var row = Assert.Single(Rows(TakeoffCsv.Write, Orders.With(SampleLayout.Full with { Rules = unknown }, OffcutReuse.Wall)), row => row[0] == "pallet");

        Assert.Equal([string.Empty, string.Empty, string.Empty, string.Empty], row[4..]);
        Assert.Contains("the catalog does not say how many are on a pallet", row[1], StringComparison.Ordinal);
    }

    [Fact]
    public void The_saw_list_has_the_columns_of_the_contract_and_a_row_for_each_sawn_piece()
    {
        var rows = Rows(SawListCsv.Write, _house);
        var reused = rows.Skip(1).Where(row => row[11].EndsWith(" offcut", StringComparison.Ordinal)).ToList();

        Assert.Equal("mark,wall,course,piece,product,width,length,height,angle,cut,quantity,from_unit,offcut_used_by", string.Join(',', rows[0]));
        Assert.Equal(LayoutTotals.Of(_house).PartUnits, rows.Count - 1);
        Assert.Equal(_house.Order!.Saw.Saved, reused.Count);
        Assert.Equal(reused.Count, rows.Skip(1).Count(row => row[12].Length > 0));
        Assert.All(rows.Skip(1), row => Assert.NotEmpty(row[0]));
    }

    /// <summary>The sample's C2P1 is raked: its outline falls 9 over 9 mm, 45 degrees.</summary>
    [Fact]
    public void A_raked_piece_bears_its_angle() => Assert.Equal(
        "45", Rows(SawListCsv.Write, Orders.With(SampleLayout.Full, OffcutReuse.Wall))[1][8]);

    [Fact]
    public void A_workbook_is_valid_and_its_names_are_never_formulas()
    {
        var walls = _house.Walls.Select((wall, i) => i > 0 ? wall : wall with { Wall = wall.Wall with { Identity = wall.Identity with { Name = "=1+1", Storey = "@SUM(A1)" } } });
        using var stream = Workbook(_house with { Walls = [.. walls] });
        using var document = SpreadsheetDocument.Open(stream, isEditable: false);
        var cells = document.WorkbookPart!.WorksheetParts.SelectMany(sheet => sheet.Worksheet!.Descendants<Cell>()).ToList();

        Assert.Empty(new OpenXmlValidator(DocumentFormat.OpenXml.FileFormatVersions.Office2019).Validate(document, TestContext.Current.CancellationToken).Select(error => $"{error.Part?.Uri} {error.Path?.XPath}: {error.Description}"));
        Assert.Contains(cells, cell => cell.InlineString?.InnerText == "=1+1" && cell.DataType?.Value == CellValues.InlineString);
        Assert.All(cells.Where(cell => cell.CellFormula is not null), cell => Assert.Matches(@"^(SUM\([A-Z]+\d+:[A-Z]+\d+\)|[A-Z]\d+[+*][A-Z]\d+|IF\(I\d+="""","""",I\d+\*IF\(H\d+="""",G\d+,H\d+\)\))$", cell.CellFormula!.Text));
    }

    [Fact]
    public void Sheets_freeze_their_headers_and_leave_prices_to_the_buyer()
    {
        using var stream = Workbook(_house);
        using var document = SpreadsheetDocument.Open(stream, isEditable: false);
        var workbook = document.WorkbookPart!;
        var sheets = workbook.Workbook!.Descendants<Sheet>().Select(sheet => (sheet.Name!.Value, ((WorksheetPart)workbook.GetPartById(sheet.Id!.Value!)).Worksheet!)).ToList();

        Assert.Equal(["Order", "By storey", "By wall", "Saw list", "Bars", "Bar stock"], sheets.Select(sheet => sheet.Item1), StringComparer.Ordinal);
        Assert.All(sheets, sheet => Assert.Equal(PaneStateValues.Frozen, Assert.Single(sheet.Item2.Descendants<Pane>()).State!.Value));
        Assert.DoesNotContain(sheets[0].Item2.Descendants<Cell>(), cell => cell.CellReference!.Value!.StartsWith('I') && cell.CellValue is not null);
    }

    [Fact]
    public void The_same_layout_gives_the_same_bytes_in_every_culture()
    {
        Assert.Single(Cultures.Each(() => Convert.ToHexString(Workbook(_house).ToArray())).Distinct(StringComparer.Ordinal));
        Assert.Single(Cultures.Each(() => Text(TakeoffCsv.Write, _house) + Text(SawListCsv.Write, _house)).Distinct(StringComparer.Ordinal));
    }

    private static MemoryStream Workbook(Layout layout)
    {
        var stream = new MemoryStream();
        TakeoffWorkbook.Write(layout, stream);
        return stream;
    }

    private static string Text(Action<Layout, Stream> write, Layout layout)
    {
        using var stream = new MemoryStream();
        write(layout, stream);
        return Encoding.UTF8.GetString(stream.ToArray());
    }

    /// <summary>Cells of rows; quotes only enclose and double.</summary>
    private static List<string[]> Rows(Action<Layout, Stream> write, Layout layout) =>
    [
        .. Text(write, layout).Split("\r\n", StringSplitOptions.RemoveEmptyEntries).Select(row =>
        {
            var (cells, isQuoted) = (new List<StringBuilder> { new() }, false);
            foreach (var letter in row)
            {
                isQuoted ^= letter == '"';
                if (letter == ',' && !isQuoted)
                {
                    cells.Add(new StringBuilder());
                }
                else if (letter != '"')
                {
                    cells[^1].Append(letter);
                }
            }

            return cells.Select(cell => cell.ToString()).ToArray();
        }),
    ];

    private static double Number(string text) => text.Length == 0 ? 0 : double.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
}
