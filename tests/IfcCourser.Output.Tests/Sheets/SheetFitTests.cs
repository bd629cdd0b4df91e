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
}
