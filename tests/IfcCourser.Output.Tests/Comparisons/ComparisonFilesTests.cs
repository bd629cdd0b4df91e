using System.Text;
using System.Text.Json.Nodes;
using IfcCourser.Comparing;
using IfcCourser.Layouts;
using IfcCourser.Output.Comparisons;
using IfcCourser.Output.Sheets;
using IfcCourser.Output.Sheets.Sets;
using IfcCourser.Output.Tests.Page;
using IfcCourser.Output.Tests.Support;
using IfcCourser.Takeoff;

namespace IfcCourser.Output.Tests.Comparisons;

/// <summary>A house and the same house without its first wall's lowest course.</summary>
public sealed class ComparisonFilesTests
{
    private static readonly Layout _older = Orders.With(FixtureLayouts.Of("sorrel/sorrel"), OffcutReuse.Wall);

    private static readonly Layout _newer = Orders.With(
        _older with { Walls = _older.Walls.SetItem(0, _older.Walls[0] with { Courses = _older.Walls[0].Courses.RemoveAt(0) }) }, OffcutReuse.Wall);

    private static readonly int _fewer = _older.Walls[0].Courses[0].Pieces.Length;

    [Fact]
    public void A_wall_costs_the_pieces_that_it_takes_more_or_less()
    {
        var json = JsonNode.Parse(ComparisonJson.Of(_older, _newer, LayoutComparison.Of(_older, _newer), SupersededSheets.Of(_older, _newer, PaperSize.Iso)))!;
        var changed = Assert.Single(json["changed"]!.AsArray())!;

        Assert.Equal(-_fewer, (int)changed["cost"]!["fullUnits"]! + (int)changed["cost"]!["partUnits"]!);
        Assert.Equal(-_fewer, (int)json["totals"]!["pieces"]!["new"]! - (int)json["totals"]!["pieces"]!["old"]!);
        Assert.Contains(json["order"]!.AsArray(), line => (string?)line!["item"] is "full-unit" or "cut-unit" && (double)line["new"]! < (double)line["old"]!);
    }

    [Fact]
    public void A_layout_beside_itself_orders_the_same() => Assert.Empty(OrderDifference.Of(_older, _older));

    [Fact]
    public void The_page_names_the_wall_and_what_the_order_loses()
    {
        var page = new PageReading(Page(_older, _newer));

        Assert.Contains(_older.Walls[0].Identity.Name!, page.Section("changes"), StringComparison.Ordinal);
        Assert.Contains($"blocks {LayoutTotals.Of(_older).Pieces} {LayoutTotals.Of(_newer).Pieces} -{_fewer}", page.Section("totals"), StringComparison.Ordinal);
        Assert.Contains("Unit to saw", page.Section("order"), StringComparison.Ordinal);
        Assert.Contains("Nothing changed", new PageReading(Page(_older, _older)).Section("changes"), StringComparison.Ordinal);
    }

    private static string Page(Layout older, Layout newer)
    {
        using var stream = new MemoryStream();
        ComparisonPage.Write(older, newer, LayoutComparison.Of(older, newer), SupersededSheets.Of(older, newer, PaperSize.Iso), stream);
        return Encoding.UTF8.GetString(stream.ToArray());
    }
}
