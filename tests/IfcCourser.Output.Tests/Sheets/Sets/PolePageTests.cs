using IfcCourser.Layouts;
using IfcCourser.Output.Sheets;
using IfcCourser.Output.Sheets.Sets;
using IfcCourser.Output.Tests.Support;
using IfcCourser.Units;

namespace IfcCourser.Output.Tests.Sheets.Sets;

/// <summary>Many storey poles: forty walls on two storeys, each with a level line of its own.</summary>
public static class PolePageTests
{
    private const int Walls = 40;

    private static readonly Layout _layout = Samples.Metric with
    {
        Walls = [.. Enumerable.Range(0, Walls).Select(i => Samples.Metric.Walls[2] with
        {
            Wall = Samples.Metric.Walls[2].Wall with
            {
                Identity = Samples.Metric.Walls[2].Identity with { StepId = i + 1, GlobalId = FormattableString.Invariant($"0Wall{i}"), Storey = i % 2 == 0 ? "Ground" : "Upper" },
            },
            LevelLine = Samples.Metric.Walls[2].LevelLine + Length.FromMm(i),
        })],
    };

    private static readonly Sheet[] _pages =
        [.. DrawingSet.Of(_layout, PaperSize.Iso).Where(sheet => sheet.Title.StartsWith("Storey poles", StringComparison.Ordinal)).Select(sheet => sheet.Compose())];

    [Fact]
    public static void Every_pole_is_on_one_page_and_the_pages_are_numbered_on()
    {
        var poles = _pages.SelectMany(page => page.Views[0].Items.OfType<TextItem>()).Where(text => text.Text.StartsWith("Pole ", StringComparison.Ordinal)).Select(text => text.Text.Split(' ')[1]);
        Assert.Equal(Enumerable.Range(1, Walls).Select(number => FormattableString.Invariant($"{number}")), poles, StringComparer.Ordinal);
        Assert.True(_pages.Length > 1);
        Assert.Equal(Enumerable.Range(1, _pages.Length).Select(page => FormattableString.Invariant($"Storey poles, page {page} of {_pages.Length}")), _pages.Select(page => page.Title.Title), StringComparer.Ordinal);
        var numbers = _pages.Select(page => int.Parse(page.Title.IdentificationNumber[1..], System.Globalization.CultureInfo.InvariantCulture)).ToArray();
        Assert.Equal(Enumerable.Range(numbers[0], numbers.Length), numbers);
    }

    /// <summary>Of ISO 216, as large as a single pole would be drawn, a storey together.</summary>
    [Fact]
    public static void Pages_are_standard_sheets_of_one_storey_at_the_scale_of_one_pole()
    {
        Assert.All(_pages, page => Assert.Contains(page.Paper, PaperSize.Iso));
        Assert.All(_pages, page => Assert.Equal(10, page.Views[0].Scale.Denominator));
        Assert.All(_pages, page => Assert.Single(page.Views[0].Items.OfType<TextItem>().Where(text => text.Text.StartsWith("Pole ", StringComparison.Ordinal)).Select(text => text.Text.Split("  ")[1]).Distinct(StringComparer.Ordinal)));
    }

    [Fact]
    public static void A_roll_is_lengthened_before_it_is_widened()
    {
        var rolls = PaperSize.Iso[^1].Rolls().Take(200).ToArray();
        Assert.Equal((2 * 1189d, 841d), (rolls[0].Width, rolls[0].Height));
        Assert.All(rolls.Zip(rolls.Skip(1)), pair => Assert.True(pair.Second.Height > pair.First.Height || (pair.Second.Height == pair.First.Height && pair.Second.Width > pair.First.Width)));
        Assert.All(rolls.Where(roll => roll.Width <= 40 * 1189 && roll.Height <= 841), roll => Assert.Equal(841, roll.Height));
        Assert.Equal(914.4, PaperSize.Arch[0].Rolls().First(roll => roll.Height > PaperSize.Arch[0].Height).Height);
    }
}
