using System.Collections.Immutable;
using IfcCourser.Output.Sheets;
using IfcCourser.Output.Sheets.Walls;

namespace IfcCourser.Output.Tests.Sheets;

public sealed class SheetFitTests
{
    /// <summary>One placement is wrong and a wall stands 33,400 km off: of 1:500 and its tenths 1:5,000,000 is the first at which that is less than twenty papers of 1.2 m, or of 0.8 m.</summary>
    [Theory]
    [InlineData(33_400e6, 5_500e6, 5_000_000)]
    [InlineData(10, 33_400e6, 5_000_000)]
    [InlineData(20_000, 10_000, 50)]
    public void A_view_of_any_size_comes_to_a_paper(double width, double height, int denominator)
    {
        var fit = SheetFit.Of(PaperSize.Iso, [.. DrawingScale.Metric.Where(scale => scale.Denominator >= 50)], Draw, []);
        Assert.Equal(denominator, fit.Scale.Denominator);
        Assert.True(fit.Paper.Width < 20_000);

        Canvas Draw(DrawingScale scale)
        {
            var canvas = new Canvas(scale.Denominator);
            canvas.Add(new LineItem(Pen.WholeBlock, new Point(0, 0), new Point(width, height)));
            return canvas;
        }
    }

    /// <summary>Two lines of 2.5 mm take 3.25 mm each with what letters reach below: 300 mm apart they are clear at 1:50, 6 mm, and not at 1:100, 3 mm.</summary>
    [Theory]
    [InlineData(50, true)]
    [InlineData(100, false)]
    public void A_scale_at_which_texts_lie_over_each_other_is_taken_only_where_it_must_be(int denominator, bool isClear)
    {
        ImmutableArray<DrawingScale> scales = [.. DrawingScale.Metric.Where(scale => scale.Denominator == denominator)];
        Assert.Equal(isClear, SheetFit.Flowing(PaperSize.Iso, scales, Draw, [], Crowding.Refused) is not null);
        Assert.NotNull(SheetFit.Flowing(PaperSize.Iso, scales, Draw, [], Crowding.Borne));

        static Canvas Draw(DrawingScale scale)
        {
            var canvas = new Canvas(scale.Denominator);
            canvas.Write(new TextItem(Pen.Text, default, "12", 2.5));
            canvas.Write(new TextItem(Pen.Text, new Point(0, 300), "13", 2.5));
            return canvas;
        }
    }

    [Theory]
    [InlineData("A4", "A3 A2 A1 A0")]
    [InlineData("A0", "")]
    [InlineData("ANSI A", "ANSI B ANSI C ANSI D ANSI E")]
    [InlineData("ARCH D", "ARCH E")]
    public void What_a_paper_can_not_hold_takes_the_next_of_its_series(string paper, string larger) =>
        Assert.Equal(larger, string.Join(' ', PaperSize.Named(paper)!.Larger().Select(size => size.Name)), StringComparer.Ordinal);
}
