using System.Collections.Immutable;
using IfcCourser.Output.Sheets;
using IfcCourser.Output.Sheets.Sets;
using IfcCourser.Output.Sheets.Walls;
using IfcCourser.Output.Tests.Support;

namespace IfcCourser.Output.Tests.Sheets.Sets;

public static class TextCrossingTests
{
    /// <summary>Capitals of 2.5 mm from the origin: "H" is 2.5775 mm wide (1031 thousandths of that). Lines half way up, over it, under it, and beside it.</summary>
    [Theory]
    [InlineData(-5, 1.25, 5, 1.25, true)]
    [InlineData(1.3, -5, 1.3, 5, true)]
    [InlineData(-5, 2.6, 5, 2.6, false)]
    [InlineData(-5, -0.1, 5, -0.1, false)]
    [InlineData(2.6, -5, 2.6, 5, false)]
    public static void A_line_through_a_text_is_counted_and_one_beside_it_is_not(double x1, double y1, double x2, double y2, bool isCounted)
    {
        SheetItem[] items = [new TextItem(Pen.Text, default, "H", 2.5), new LineItem(Pen.WholeBlock, new Point(x1, y1), new Point(x2, y2))];
        Assert.Equal(isCounted, TextCrossings.Of("1", Sheet([.. items])).Any());
    }

    /// <summary>A line, a ring, a face, a block and a dimension's extension line, each over a text of its own: what is drawn leaves all of them clear, and nothing else goes.</summary>
    [Fact]
    public static void What_is_drawn_is_broken_at_texts()
    {
        var canvas = new Canvas(1);
        canvas.Add(new LineItem(Pen.WholeBlock, new Point(-10, 1), new Point(10, 1)));
        canvas.Add(ArcItem.Circle(Pen.Core, new Point(20, -8.75), 10));
        canvas.Add(PolylineItem.Rectangle(Pen.OuterEdge, new Box(30, 1, 60, 20)));
        canvas.Add(new HatchItem(Pen.CutHatch, [new Box(65, -5, 80, 10).Corners()], HatchKind.Formed));
        var block = new BlockDefinition("B", [PolylineItem.Rectangle(Pen.WholeBlock, new Box(0, 0, 10, 10))], []);
        canvas.Add(new BlockItem(Pen.WholeBlock, block, new Point(89, -5), []));
        canvas.Add(new BlockItem(Pen.WholeBlock, block, new Point(89, 50), []));
        canvas.Add(new DimensionItem(DimensionKind.Single, DimensionAxis.Horizontal, new Point(110, -5), new Point(121, -5), 10, 110, new Point(115, 12), 0, string.Empty, "11"));
        foreach (var x in new[] { 0.0, 19, 40, 70, 88, 120 })
        {
            canvas.Write(new TextItem(Pen.Text, new Point(x, 0), "H", 2.5));
        }

        Assert.Equal(6, TextCrossings.Of("1", Sheet([.. canvas.Items])).Count());
        var drawn = canvas.Drawn();
        Assert.Empty(TextCrossings.Of("1", Sheet(drawn)));
        Assert.Equal([(-10.0, -0.4), (2.9775, 10.0)], drawn.OfType<LineItem>().Select(line => (Math.Round(line.From.X, 4), Math.Round(line.To.X, 4))));
        Assert.Equal(["B", "B-GAP"], drawn.OfType<BlockItem>().Select(item => item.Definition.Name.Split('_')[0]).Order(StringComparer.Ordinal), StringComparer.Ordinal);
        Assert.Equal(6, Assert.Single(drawn.OfType<PolylineItem>()).Points.Length);
    }

    /// <summary>Names of blocks end at 255 letters in DXF (from memory); blocks broken elsewhere are others.</summary>
    [Fact]
    public static void Blocks_broken_at_many_texts_have_names_of_their_own_that_DXF_takes()
    {
        var canvas = new Canvas(1);
        var block = new BlockDefinition("B", [PolylineItem.Rectangle(Pen.WholeBlock, new Box(0, 0, 400, 10))], []);
        foreach (var (low, step) in new[] { (0, 8), (100, 9) })
        {
            canvas.Add(new BlockItem(Pen.WholeBlock, block, new Point(0, low), []));
            foreach (var i in Enumerable.Range(1, 40))
            {
                canvas.Write(new TextItem(Pen.Text, new Point(i * step, low - 1), "H", 2.5));
            }
        }

        var names = canvas.Drawn().OfType<BlockItem>().Select(item => item.Definition.Name).ToList();
        Assert.Equal(2, names.Distinct(StringComparer.Ordinal).Count());
        Assert.All(names, name => Assert.InRange(name.Length, 2, 255));
    }

    /// <summary>Small models, each with what is odd about it.</summary>
    [Fact]
    public static void No_line_runs_through_a_text_of_any_fixture() => Assert.Empty(
        from model in FixtureLayouts.Models
        let layout = FixtureLayouts.Of(model, "aac-mm", "eu")
        from entry in DrawingSet.Of(layout, PaperSize.Iso)
        from crossing in TextCrossings.Of(entry.Number, entry.Compose())
        select $"{model} {crossing}");

    private static Sheet Sheet(ImmutableArray<SheetItem> items) => EveryItem.Sheet with { Views = [], Items = items };
}
