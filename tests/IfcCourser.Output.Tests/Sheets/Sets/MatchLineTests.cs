using IfcCourser.Layouts;
using IfcCourser.Output.Sheets;
using IfcCourser.Output.Sheets.Sets;
using IfcCourser.Output.Tests.Support;
using IfcCourser.Units;

namespace IfcCourser.Output.Tests.Sheets.Sets;

/// <summary>A wall of 62.5 m on A3, which has room for some 18 m of it at 1:50: courses of 250 mm are 5 mm high there, 2.5 mm at 1:100.</summary>
public static class MatchLineTests
{
    private static readonly Layout _layout = Samples.Long;
    private static readonly WallLayout _wall = _layout.Walls[0];
    private static readonly SheetLengths _lengths = new(UnitSystem.Metric);
    private static readonly Sheet[] _sheets = [.. DrawingSet.Of(_layout, [PaperSize.Iso[0]]).Where(sheet => sheet.Number.StartsWith("W001", StringComparison.Ordinal) && !sheet.Number.Contains('T', StringComparison.Ordinal)).Select(sheet => sheet.Compose())];

    [Fact]
    public static void A_wall_that_one_sheet_would_take_too_small_is_parted_at_a_legible_scale()
    {
        Assert.InRange(_sheets.Length, 4, 6);
        Assert.All(_sheets, (sheet, i) =>
        {
            Assert.Equal((50, "A3", FormattableString.Invariant($"W001.{i + 1}")), (sheet.Views[0].Scale.Denominator, sheet.Paper.Name, sheet.Title.IdentificationNumber));
            Assert.True(sheet.Paper.Frame.Contains(sheet.Views[0].PaperBox));
        });
    }

    [Fact]
    public static void Each_block_stands_on_one_sheet()
    {
        var wanted = _wall.Courses.SelectMany(course => course.Pieces).Select(piece => new Point(piece.From.Mm, piece.Bottom.Mm));
        var drawn = _sheets.SelectMany(sheet => sheet.Views[0].Items.OfType<BlockItem>()).Select(block => block.At);
        Assert.Equal(wanted.OrderBy(p => p.Y).ThenBy(p => p.X), drawn.OrderBy(p => p.Y).ThenBy(p => p.X));
    }

    /// <summary>No block of a sheet crosses its match lines, and each line names the sheet on its other side.</summary>
    [Fact]
    public static void A_match_line_runs_between_blocks_and_names_the_sheet_where_the_wall_goes_on()
    {
        for (var i = 0; i < _sheets.Length; i++)
        {
            var items = _sheets[i].Views[0].Items;
            var names = items.OfType<TextItem>().Where(text => text.Text.StartsWith("Match line", StringComparison.Ordinal)).Select(text => text.Text);
            Assert.Equal(new[] { i, i + 2 }.Where(n => n > 0 && n <= _sheets.Length).Select(n => FormattableString.Invariant($"Match line: see W001.{n}")), names, StringComparer.Ordinal);
            var lines = items.OfType<PolylineItem>().Where(path => path.Pen == Pen.MatchLine).ToArray();
            Assert.Equal(names.Count(), lines.Length);
            var steps = lines.SelectMany(path => path.Points.Zip(path.Points.Skip(1))).Where(step => step.First.X == step.Second.X);
            Assert.All(steps, step => Assert.DoesNotContain(items.OfType<BlockItem>(), block => ItemBox.Of(block, 50).Grown(-0.01).Overlaps(
                new Box(step.First.X, step.First.Y, step.First.X, step.Second.Y))));
        }
    }

    /// <summary>Measured from the wall's start on every sheet, and the line's own place is the same on both.</summary>
    [Fact]
    public static void Running_dimensions_go_on_from_the_start_of_the_wall()
    {
        var runs = _sheets.Select(sheet => sheet.Views[0].Items.OfType<DimensionItem>().Where(d => d.Axis == DimensionAxis.Horizontal && d.Kind == DimensionKind.Running).ToArray()).ToArray();
        Assert.All(runs.SelectMany(run => run), d => Assert.Equal((0d, d.Prefix + _lengths.Dimension(d.To.X)), (d.From.X, d.Text)));
        Assert.Equal(Matches(^2, runs[0]), Matches(0, runs[1]));
        var starts = _wall.Courses.Take(2).SelectMany(course => course.Pieces).Select(piece => piece.From.Mm).Where(s => s > 0);
        Assert.Subset(runs.SelectMany(run => run).Select(d => d.Measured).ToHashSet(), starts.ToHashSet());

        static string Matches(Index at, DimensionItem[] run)
        {
            var texts = run.Where(d => d.Text.StartsWith("match", StringComparison.Ordinal)).Select(d => d.Text).Distinct(StringComparer.Ordinal).ToArray();
            return texts.Length == 1 ? texts[0] : texts[at];
        }
    }

    [Fact]
    public static void No_text_of_a_part_overlaps_another_or_leaves_the_frame() => Assert.All(_sheets, sheet =>
    {
        var texts = Lowering.Lower(sheet).OfType<TextItem>().Select(text => (text.Text, Box: TextMetrics.BoxOf(text).Grown(-0.05))).ToArray();
        Assert.All(texts, text => Assert.True(sheet.Paper.Frame.Contains(text.Box), text.Text));
        Assert.Empty(from i in Enumerable.Range(0, texts.Length) from j in Enumerable.Range(0, i) where texts[i].Box.Overlaps(texts[j].Box) select texts[i].Text + " / " + texts[j].Text);
    });

    /// <summary>Counts of the parts' tables add up to the wall's, under the wall's marks.</summary>
    [Fact]
    public static void Marks_are_those_of_the_whole_wall()
    {
        var whole = PieceSchedule.Of(_wall);
        var marks = _sheets.SelectMany(sheet => sheet.Views[0].Items.OfType<BlockItem>()).Select(block => block.Values[0]).Where(mark => mark.Length > 0);
        Assert.Equal(whole.Rows.Select(row => (row.Mark, row.Count)), marks.CountBy(mark => mark, StringComparer.Ordinal).Select(pair => (pair.Key, pair.Value)).OrderBy(pair => whole.Rows.Select(row => row.Mark).ToList().IndexOf(pair.Key)));
    }
}
