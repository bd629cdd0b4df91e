using IfcCourser.Layouts;
using IfcCourser.Output.Sheets;
using IfcCourser.Output.Sheets.Sets;
using IfcCourser.Output.Tests.Support;

namespace IfcCourser.Output.Tests.Sheets.Sets;

/// <summary>Walls that share sheets: eight returns of 1.25 m on two storeys, the fifth of them laid out as a long wall.</summary>
public static class WallPageTests
{
    private static readonly Layout _layout = Samples.Metric with
    {
        Walls = [.. Enumerable.Range(1, 8).Select(i => Numbered(i == 5 ? Samples.Metric.Walls[0] : Samples.Metric.Walls[2], i, i <= 6 ? "Ground" : "Upper"))],
    };

    private static readonly (SetSheet Entry, Sheet Sheet)[] _sheets =
        [.. DrawingSet.Of(_layout, PaperSize.Iso).Where(sheet => sheet.Number.StartsWith('W')).Select(sheet => (sheet, sheet.Compose()))];

    /// <summary>Six of one storey and two of another: no sheet holds walls of both.</summary>
    [Fact]
    public static void Neighbours_of_a_storey_share_a_sheet_that_bears_the_number_of_each()
    {
        Assert.Equal(["Elevation W001", "Elevation W002", "Elevation W003", "Elevation W004", "Elevation W005", "Elevation W006", "Elevation W007", "Elevation W008"],
            _sheets.SelectMany(sheet => sheet.Sheet.Views.Select(view => view.Name)), StringComparer.Ordinal);
        Assert.Equal("W007 W008", _sheets[^1].Entry.Number);
        Assert.Equal("Upper", _sheets[^1].Entry.Section);
        Assert.All(_sheets, sheet => Assert.Equal(sheet.Entry.Number, sheet.Sheet.Title.IdentificationNumber));
        Assert.Equal("W007 W008 Return", _sheets[^1].Sheet.Name);
    }

    /// <summary>As each wall has it on a sheet of its own.</summary>
    [Fact]
    public static void No_wall_is_drawn_smaller_or_otherwise_for_sharing_a_sheet()
    {
        foreach (var (view, wall) in _sheets.SelectMany(sheet => sheet.Sheet.Views).Zip(_layout.Walls))
        {
            var alone = WallSheet.Compose(_layout, wall).Views[0];
            Assert.Equal(alone.Scale, view.Scale);
            Assert.Equal(alone.Items.Length, view.Items.Length);
            Assert.Equal(alone.Items.OfType<DimensionItem>().Select(item => item.Text), view.Items.OfType<DimensionItem>().Select(item => item.Text), StringComparer.Ordinal);
        }
    }

    [Fact]
    public static void Views_lie_inside_the_frame_and_apart()
    {
        foreach (var sheet in _sheets.Select(sheet => sheet.Sheet))
        {
            var boxes = sheet.Views.Select(view => view.PaperBox.Grown(-0.01)).ToArray();
            Assert.All(boxes, box => Assert.True(sheet.Paper.Frame.Contains(box)));
            Assert.All(boxes, box => Assert.Single(boxes, box.Overlaps));
            var texts = Lowering.Lower(sheet).OfType<TextItem>().Select(text => (text.Text, Box: TextMetrics.BoxOf(text).Grown(-0.05))).ToArray();
            Assert.Empty(from i in Enumerable.Range(0, texts.Length) from j in Enumerable.Range(0, i) where texts[i].Box.Overlaps(texts[j].Box) select texts[i].Text + " / " + texts[j].Text);
        }
    }

    /// <summary>Cautions and the legend stand once, tables under the number of their wall.</summary>
    [Fact]
    public static void Tables_bear_the_number_of_their_wall()
    {
        var words = _sheets[^1].Sheet.Items.OfType<TextItem>().Select(text => text.Text).ToArray();
        Assert.Single(words, SheetText.Cautions);
        Assert.Single(words, SheetText.Legend);
        Assert.Single(words, "W007: " + SheetText.Notes);
        Assert.Single(words, "W008: " + SheetText.Notes);
    }

    /// <summary>Longer rows of numbers are written as first and last; gaps are kept.</summary>
    [Theory]
    [InlineData("W001", 1)]
    [InlineData("W001 W002 W003", 1, 2, 3)]
    [InlineData("W001-W004", 1, 2, 3, 4)]
    [InlineData("W001-W004 W006", 1, 2, 3, 4, 6)]
    [InlineData("W009 W011", 9, 11)]
    public static void Numbers_of_sheets(string expected, params int[] numbers) => Assert.Equal(expected, WallNumbers.Sheet(numbers));

    private static WallLayout Numbered(WallLayout wall, int number, string storey) => wall with
    {
        Wall = wall.Wall with { Identity = wall.Identity with { StepId = number, GlobalId = FormattableString.Invariant($"0Wall{number}"), Storey = storey } },
    };
}
