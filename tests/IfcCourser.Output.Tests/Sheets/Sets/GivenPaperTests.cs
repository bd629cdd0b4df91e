using IfcCourser.Output.Sheets;
using IfcCourser.Output.Sheets.Sets;
using IfcCourser.Output.Tests.Support;

namespace IfcCourser.Output.Tests.Sheets.Sets;

/// <summary>Sets whose sheets all take a paper that was given, of houses in millimetres and in inches: what is read must be legible and apart on each.</summary>
public static class GivenPaperTests
{
    public static TheoryData<string, string, string, string> Sets => new()
    {
        { "sorrel/sorrel", "aac-mm", "eu", "A3" }, { "sorrel/sorrel", "aac-mm", "eu", "A1" }, { "teasel/teasel", "octametric", "de", "A3" },
        { "yarrow/yarrow", "aac-in", "us", "ARCH D" }, { "yarrow/yarrow", "aac-in", "us", "ARCH B" },
        { "sorrel/sorrel", "aac-mm", "eu", "A4" }, { "yarrow/yarrow", "aac-in", "us", "ANSI A" },
    };

    [Theory]
    [MemberData(nameof(Sets))]
    public static void Texts_and_dimensions_lie_apart_and_inside_the_frame(string house, string catalog, string rules, string paper)
    {
        foreach (var entry in DrawingSet.Of(FixtureLayouts.Of(house, catalog, rules), [PaperSize.Named(paper)!]))
        {
            var sheet = entry.Compose();
            Assert.True(paper == sheet.Paper.Name || paper is "A4" or "ANSI A", $"{entry.Number} takes {sheet.Paper.Name}");
            var boxes = Lowering.Lower(sheet).OfType<TextItem>().Select(text => (text.Text, text.Height, Box: TextMetrics.BoxOf(text).Grown(-0.05))).OrderBy(text => text.Box.Left).ToArray();
            Assert.Empty(TextCrossings.Of(entry.Number, sheet));
            Assert.All(boxes, text => Assert.True(text.Height >= 2.5 - 1e-9 && sheet.Paper.Frame.Contains(text.Box), $"{entry.Number}: {text.Text}"));
            Assert.Empty(boxes.SelectMany((text, i) => boxes.Skip(i + 1).TakeWhile(other => other.Box.Left < text.Box.Right).Where(other => other.Box.Overlaps(text.Box))
                .Select(other => $"{entry.Number}: {text.Text} / {other.Text}")));
        }
    }

    /// <summary>At 1:100, or 1/8" = 1'-0", a block of 600 mm is 6 mm long; at half of it the numbers of its marks are longer than what they mark.</summary>
    [Theory]
    [MemberData(nameof(Sets))]
    public static void No_plan_is_drawn_too_small_to_be_read(string house, string catalog, string rules, string paper) => Assert.All(
        DrawingSet.Of(FixtureLayouts.Of(house, catalog, rules), [PaperSize.Named(paper)!]).Where(entry => entry.Number[0] is 'P' or 'S').SelectMany(entry => entry.Compose().Views),
        view => Assert.InRange(view.Scale.Denominator, 1, 100));

    /// <summary>Cautions stand on the cover of each set: they fill no further sheet, and a sheet that has no room for them says where they are.</summary>
    [Theory]
    [MemberData(nameof(Sets))]
    public static void Cautions_take_no_further_sheet(string house, string catalog, string rules, string paper)
    {
        var sheets = DrawingSet.Of(FixtureLayouts.Of(house, catalog, rules), [PaperSize.Named(paper)!])
            .Select(entry => (entry.Number, Words: entry.Compose().Items.OfType<TextItem>().Select(text => text.Text).ToArray())).ToArray();
        Assert.All(sheets.Where(sheet => sheet.Number[0] != 'C' && sheet.Number.Contains(".T", StringComparison.Ordinal)), sheet => Assert.DoesNotContain(SheetText.Cautions, sheet.Words, StringComparer.Ordinal));
        Assert.All(sheets.Where(sheet => "WPSM".Contains(sheet.Number[0], StringComparison.Ordinal)).GroupBy(sheet => sheet.Number.Split(".T")[0], StringComparer.Ordinal), sheet =>
            Assert.Contains(sheet.SelectMany(one => one.Words), word => word == SheetText.Cautions || word.EndsWith($"{SheetText.Cautions}: sheet {CoverSheet.Number}", StringComparison.Ordinal)));
    }

    /// <summary>What a sheet on the largest paper says beside its view, one on a small paper says too, there, on the sheets of its tables or, of cautions, on the cover: word for word.</summary>
    [Fact]
    public static void Tables_that_go_on_lose_no_word()
    {
        var layout = FixtureLayouts.Of("sorrel/sorrel", "aac-mm", "eu");
        var (small, large) = (Words("A4"), Words("A0"));
        var cover = small.Where(sheet => sheet.Key.StartsWith(CoverSheet.Number, StringComparison.Ordinal)).SelectMany(sheet => sheet.Value).ToArray();
        Assert.Contains(small.Keys, number => number.Contains(".T", StringComparison.Ordinal));
        foreach (var plan in large.Where(sheet => sheet.Key[0] is 'P' or 'M'))
        {
            var parts = small.Where(sheet => sheet.Key == plan.Key || sheet.Key.StartsWith(plan.Key + ".", StringComparison.Ordinal)).SelectMany(sheet => sheet.Value).Concat(cover).ToHashSet(StringComparer.Ordinal);
            Assert.Subset(parts, plan.Value);
        }

        Dictionary<string, HashSet<string>> Words(string paper) => DrawingSet.Of(layout, [PaperSize.Named(paper)!]).ToDictionary(
            entry => entry.Number, entry => entry.Compose().Items.Where(item => item is TextItem).Select(item => ((TextItem)item).Text).ToHashSet(StringComparer.Ordinal), StringComparer.Ordinal);
    }

    /// <summary>A course of 250 mm, or of 8 in, has room for its number of 2.5 mm at 1:50, or at 1/4" = 1'-0"; not at half of it.</summary>
    [Theory]
    [MemberData(nameof(Sets))]
    public static void No_wall_is_drawn_too_small_to_be_read(string house, string catalog, string rules, string paper) => Assert.All(
        DrawingSet.Of(FixtureLayouts.Of(house, catalog, rules), [PaperSize.Named(paper)!]).Where(entry => entry.Number.StartsWith('W')).SelectMany(entry => entry.Compose().Views),
        view => Assert.InRange(view.Scale.Denominator, 1, 50));
}
