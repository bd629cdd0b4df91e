using IfcCourser.Output.Sheets;
using IfcCourser.Output.Sheets.Sets;
using IfcCourser.Output.Tests.Support;

namespace IfcCourser.Output.Tests.Sheets.Sets;

/// <summary>Houses on a paper so small that no plan of a storey has room on it at 1:100, or 1/8" = 1'-0": plans and set-out sheets in parts.</summary>
public static class PlanPartTests
{
    private static readonly PaperSize _paper = new("small", 235, 240);

    private static readonly Dictionary<string, Lazy<(SetSheet Entry, Sheet Sheet)[]>> _sets = new[] { ("sorrel/sorrel", "aac-mm", "eu"), ("yarrow/yarrow", "aac-in", "us") }.ToDictionary(
        house => house.Item1,
        house => new Lazy<(SetSheet, Sheet)[]>(() => [.. DrawingSet.Of(FixtureLayouts.Of(house.Item1, house.Item2, house.Item3), [_paper]).Where(entry => entry.Number[0] is 'P' or 'S').Select(entry => (entry, entry.Compose()))]),
        StringComparer.Ordinal);

    public static TheoryData<string> Houses => new(_sets.Keys);

    [Theory]
    [MemberData(nameof(Houses))]
    public static void Plans_are_parted_at_a_scale_that_can_be_read(string house)
    {
        Assert.Contains(_sets[house].Value, sheet => sheet.Entry.Number == "P01.2");
        Assert.All(_sets[house].Value, drawn => Assert.Equal("small", drawn.Sheet.Paper.Name));
        Assert.All(_sets[house].Value.SelectMany(drawn => drawn.Sheet.Views), view => Assert.InRange(view.Scale.Denominator, 48, 100));
    }

    /// <summary>Each block of a course on one sheet, or whole on both sides of a match line that it crosses.</summary>
    [Theory]
    [MemberData(nameof(Houses))]
    public static void No_block_is_lost_between_parts(string house)
    {
        var layout = house[0] == 's' ? FixtureLayouts.Of(house, "aac-mm", "eu") : FixtureLayouts.Of(house, "aac-in", "us");
        foreach (var plan in _sets[house].Value.Where(drawn => drawn.Entry.Number[0] == 'P' && drawn.Sheet.Views.Length > 0).GroupBy(drawn => drawn.Entry.Number[..3], StringComparer.Ordinal))
        {
            var index = plan.First().Entry.Title.Contains("second course", StringComparison.Ordinal) ? 1 : 0;
            var wanted = layout.Walls.Where(wall => wall.Identity.Storey == plan.First().Entry.Section && wall.Courses.Length > index).Sum(wall => wall.Courses[index].Pieces.Length);
            var drawn = plan.SelectMany(part => part.Sheet.Views[0].Items.OfType<PolylineItem>().Where(path => path.Pen is Pen.WholeBlock or Pen.CutBlock)
                .Select(path => (Part: part.Entry.Number, Box: Box.Around(path.Points), Lines: part.Sheet.Views[0].Items.OfType<LineItem>().Where(line => line.Pen == Pen.MatchLine).ToArray()))).ToArray();
            var blocks = drawn.GroupBy(block => (Math.Round(block.Box.Left), Math.Round(block.Box.Bottom), Math.Round(block.Box.Right), Math.Round(block.Box.Top))).ToArray();
            Assert.Equal(wanted, blocks.Length);
            Assert.All(blocks.Where(block => block.Count() > 1), block => Assert.All(block, one => Assert.Contains(one.Lines, line => one.Box.Grown(1).On(line.From, line.To) is not null)));
        }
    }

    /// <summary>Each match line names a sheet that names this one.</summary>
    [Theory]
    [MemberData(nameof(Houses))]
    public static void Match_lines_name_each_other(string house)
    {
        var names = _sets[house].Value.Where(drawn => drawn.Sheet.Views.Length > 0).ToDictionary(
            drawn => drawn.Entry.Number,
            drawn => drawn.Sheet.Views[0].Items.OfType<TextItem>().Select(text => text.Text.Split("see ")).Where(words => words.Length == 2).Select(words => words[1]).ToArray(),
            StringComparer.Ordinal);
        Assert.Contains(names, sheet => sheet.Value.Length > 0);
        Assert.All(names, sheet => Assert.All(sheet.Value, other => Assert.Contains(sheet.Key, names[other], StringComparer.Ordinal)));
    }

    /// <summary>Numbers of walls stand beside what the sheet shows of them, on its own side of the match lines but for what a leader reaches.</summary>
    [Theory]
    [MemberData(nameof(Houses))]
    public static void Numbers_of_walls_stand_on_the_part(string house) => Assert.All(_sets[house].Value.SelectMany(drawn => drawn.Sheet.Views), view =>
    {
        const double Leader = 45;
        var blocks = Box.Around(view.Items.OfType<PolylineItem>().Where(path => path.Pen is Pen.OuterEdge or Pen.Gone).SelectMany(path => path.Points)).Grown(Leader * view.Scale.Denominator);
        Assert.All(view.Items.OfType<TextItem>().Where(text => text.Text.StartsWith('W') && text.Text.Length == 4), text => Assert.True(blocks.Contains(Box.Around([text.At])), text.Text));
    });

    [Theory]
    [MemberData(nameof(Houses))]
    public static void Dimensions_run_on_from_the_same_zero(string house) => Assert.All(_sets[house].Value.SelectMany(drawn => drawn.Sheet.Views), view =>
    {
        var lengths = new SheetLengths(house[0] == 's' ? Units.UnitSystem.Metric : Units.UnitSystem.Inch);
        Assert.All(view.Items.OfType<DimensionItem>(), d => Assert.Equal(d.Prefix + lengths.Dimension(d.Measured), d.Text));
    });

    [Theory]
    [MemberData(nameof(Houses))]
    public static void Texts_lie_apart_and_inside_the_frame(string house) => Assert.All(_sets[house].Value, drawn =>
    {
        var texts = Lowering.Lower(drawn.Sheet).OfType<TextItem>().Select(text => (text.Text, Box: TextMetrics.BoxOf(text).Grown(-0.05))).ToArray();
        Assert.All(texts, text => Assert.True(drawn.Sheet.Paper.Frame.Contains(text.Box), drawn.Entry.Number + ": " + text.Text));
        Assert.Empty(from i in Enumerable.Range(0, texts.Length) from j in Enumerable.Range(0, i) where texts[i].Box.Overlaps(texts[j].Box) select $"{drawn.Entry.Number}: {texts[i].Text} / {texts[j].Text}");
    });

    /// <summary>Each bar that is cast in has its mark on a part, and each of its dimensions on the sheet with its mark.</summary>
    [Fact]
    public static void Each_bar_stands_on_a_part()
    {
        var bars = FixtureLayouts.Of("yarrow/yarrow", "aac-in", "us").SetOut.Storeys[0].Bars.Where(bar => bar.IsCastIn).Select(bar => bar.Number.ToString(System.Globalization.CultureInfo.InvariantCulture));
        var marks = _sets["yarrow/yarrow"].Value.Where(drawn => drawn.Entry.Number.StartsWith("S01", StringComparison.Ordinal)).SelectMany(drawn => drawn.Sheet.Views)
            .SelectMany(view => view.Items.OfType<BlockItem>()).Select(block => block.Values[0]);
        Assert.Equal(bars.Order(StringComparer.Ordinal), marks.Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal), StringComparer.Ordinal);
    }
}
