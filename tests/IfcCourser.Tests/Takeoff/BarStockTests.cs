using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Takeoff;
using IfcCourser.Tests.Support;
using IfcCourser.Units;

namespace IfcCourser.Tests.Takeoff;

public sealed class BarStockTests
{
    /// <summary>
    /// Worked by hand on stock of 20 and 40 ft: two bars of 7 ft lie in 20 ft, three in two of 20 ft or one of 40 ft, which is as much steel, so the shorter is taken; five
    /// take three of 20 ft or one of 40 ft. Twice 20 ft and 10 ft take 60 ft in bars of 20 ft, 80 ft in those of 40 ft.
    /// </summary>
    [Theory]
    [InlineData("7 7", 20, 1)]
    [InlineData("7 7 7", 20, 2)]
    [InlineData("7 7 7 7 7", 40, 1)]
    [InlineData("20 20 10", 20, 3)]
    [InlineData("21 7", 40, 1)]
    public void The_stock_that_takes_the_least_steel_is_taken(string feet, double stock, int count)
    {
        var bars = Assert.Single(Nested([.. feet.Split(' ').Select((length, i) => Row("V" + i, double.Parse(length, System.Globalization.CultureInfo.InvariantCulture), 1))]));
        Assert.Equal((stock, count, 0), (bars.Stock.Inches / 12, bars.Count, bars.Gap));
    }

    [Fact]
    public void Every_bar_is_cut_once_and_what_is_left_adds_up()
    {
        var rows = new[] { Row("V1", 3, 7), Row("V2", 8, 11), Row("H1", 13.5, 5), Row("HC1", 4, 6) };
        var bars = Assert.Single(Nested(rows));
        foreach (var row in rows)
        {
            Assert.Equal(row.Number, bars.Cuts.Sum(cut => cut.Count * cut.Marks.Count(mark => mark == row.Mark)));
        }

        var steel = rows.Aggregate(Length.Zero, (sum, row) => sum + (row.Length * row.Number));
        Assert.All(bars.Cuts, cut => Assert.True(cut.Offcut >= Length.Zero));
        Assert.Equal(bars.Stock * bars.Count, steel + bars.Offcuts);
    }

    [Fact]
    public void Sizes_and_steels_are_kept_apart() => Assert.Equal(
        [("No. 4", "a"), ("No. 4", "b"), ("No. 5", "a")],
        Nested(Row("V1", 5, 2) with { Steel = "b" }, Row("V2", 5, 2) with { Size = BarSizes.Find("No. 5")! }, Row("V3", 5, 2)).Select(bars => (bars.Size.Name, bars.Steel)));

    [Fact]
    public void What_no_stock_holds_is_named()
    {
        var bars = Assert.Single(Nested(Row("V1", 41, 1), Row("V2", 40, 1)));
        Assert.Equal(["V1"], bars.TooLong);
        Assert.Equal(["V2"], Assert.Single(bars.Cuts).Marks);
    }

    [Fact]
    public void Where_no_stock_is_known_none_is_counted() =>
        Assert.Equal(0, Assert.Single(Nested(Row("V1", 5, 1) with { Size = BarSizes.Find("12 mm")! })).Count);

    private static System.Collections.Immutable.ImmutableArray<BarsOfStock> Nested(params BarScheduleRow[] rows)
    {
        var layout = WallSketch.LayOut(new IfcCourser.Walls.WallModel { Walls = [], Skipped = [], Junctions = [], Findings = [] }, LayoutRules.For(BuiltInRuleSets.Get("us"), IfcCourser.Catalogs.BuiltInCatalogs.Get("block-in"), OpeningPolicy.Move));
        var list = new BarList(null, [new BarStock(BarKind.Number, [], null, [Length.FromInches(240), Length.FromInches(480)])]);
        return BarStocks.Of(layout with { BarSchedule = [.. rows], Rules = layout.Rules with { Set = layout.Rules.Set with { BarList = list } } });
    }

    private static BarScheduleRow Row(string mark, double feet, int number) =>
        new(mark, "wall", BarSizes.Find("No. 4")!, "a", number, "straight", Length.FromInches(feet * 12), Length.Zero, Length.Zero, Length.FromInches(feet * 12));
}
