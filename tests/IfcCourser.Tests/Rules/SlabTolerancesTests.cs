using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Tests.Rules;

/// <summary>Tolerances of slab day against the published values that the rule sets claim.</summary>
public sealed class SlabTolerancesTests
{
    /// <summary>ACI 117-10 4.4.1 (checkvalues.csv T-ACI-sog): 3/4 in; TMS 602-16 3.3 F.2 (T-003): 1/4 in in 10 ft, 1/2 in at most; 3.4 B: 2 in.</summary>
    [Fact]
    public void American_tolerances()
    {
        var tolerances = BuiltInRuleSets.Get("us").Tolerances;
        Assert.Equal(Length.FromInches(0.75), tolerances.SlabLevel);
        Assert.Equal([new ToleranceRow(Length.FromInches(120), Length.FromInches(0.25))], tolerances.CourseLevel!.Rows);
        Assert.Equal(Length.FromInches(0.5), tolerances.CourseLevelMost);
        Assert.Equal(Length.FromInches(2), tolerances.BarAlong);
    }

    /// <summary>TMS 602-16 3.3 F.3, from memory (checkvalues.csv T-007): elements lie within 1/2 in. in 20 ft of their place in plan, 3/4 in. at most.</summary>
    [Theory]
    [InlineData(5, 0.5)]
    [InlineData(20, 0.5)]
    [InlineData(20.01, 0.75)]
    [InlineData(200, 0.75)]
    public void American_lengths_in_plan(double feet, double inches) =>
        Assert.Equal(Length.FromInches(inches), BuiltInRuleSets.Get("us").Tolerances.PlanLengths!.RowOf(feet * 304.8)!.Value.Limit);

    /// <summary>
    /// DIN 18202:2013-04 table 1, lengths in plan (checkvalues.csv T-DIN1-plan): 10, 12, 16, 20, 24, 30 mm up to 1, 3, 6, 15, 30 m and beyond; a wall of 8.99 m may differ by 20
    /// (T-DIN1-v2).
    /// </summary>
    [Theory]
    [InlineData(1, 10)]
    [InlineData(1.01, 12)]
    [InlineData(3, 12)]
    [InlineData(6, 16)]
    [InlineData(8.99, 20)]
    [InlineData(15, 20)]
    [InlineData(30, 24)]
    [InlineData(31, 30)]
    public void Lengths_in_plan(double metres, double limit) =>
        Assert.All(["de", "eu"], name => Assert.Equal(limit, BuiltInRuleSets.Get(name).Tolerances.PlanLengths!.RowOf(metres * 1000)!.Value.Limit.Mm));

    /// <summary>
    /// The other rows of DIN 18202:2013-04 table 1, as an office may put them into a rule set of its own (checkvalues.csv T-DIN1-elev, -clear_plan, -clear_elev, -opening,
    /// -opening_finished; T-DIN1-v1: a window of 1.01 m may differ by 12 mm). Where the standard has a dash, nothing is said.
    /// </summary>
    [Theory]
    [InlineData("10 16 16 20 30", 5, 16)]
    [InlineData("10 16 16 20 30", 20, 30)]
    [InlineData("12 16 20 24 30", 0.5, 12)]
    [InlineData("12 16 20 24 30", 15, 24)]
    [InlineData("16 20 20 30", 15, 30)]
    [InlineData("16 20 20 30", 15.01, null)]
    [InlineData("10 12 16", 1.01, 12)]
    [InlineData("10 12 16", 6.01, null)]
    [InlineData("8 10 12", 3, 10)]
    public void Limits_by_the_size_of_what_is_measured(string limits, double metres, int? limit)
    {
        double[] sizes = [1, 3, 6, 15, 30];
        var table = new ToleranceTable([.. limits.Split(' ').Zip(sizes, (text, size) => Row(size, int.Parse(text, System.Globalization.CultureInfo.InvariantCulture)))]);
        Assert.Equal(limit, table.RowOf(metres * 1000)?.Limit.Mm);
    }

    /// <summary>TMS 602 3.3 F.2 in a trade text (checkvalues.csv T-004), plumb and line: 1/4 in. in 10 ft, 3/8 in. in 20 ft, 1/2 in. at most.</summary>
    [Theory]
    [InlineData(9, 0.25)]
    [InlineData(10, 0.25)]
    [InlineData(12, 0.375)]
    [InlineData(20, 0.375)]
    [InlineData(60, 0.5)]
    public void Plumb_and_line_by_distance(double feet, double inches)
    {
        var table = new ToleranceTable([Feet(10, 0.25), Feet(20, 0.375), Feet(1000, 0.5)]);
        Assert.Equal(Length.FromInches(inches), table.RowOf(feet * 304.8)!.Value.Limit);
    }

    /// <summary>DIN 18202 table 3 line 1 (checkvalues.csv T-DIN3-slab, from memory): 10, 15, 20, 25, 30 mm at 0.1, 1, 4, 10, 15 m; half-way in proportion.</summary>
    [Theory]
    [InlineData(0.05, 10)]
    [InlineData(0.1, 10)]
    [InlineData(1, 15)]
    [InlineData(2.5, 17.5)]
    [InlineData(4, 20)]
    [InlineData(10, 25)]
    [InlineData(15, 30)]
    [InlineData(40, 30)]
    public void Flatness_of_slabs_by_distance(double metres, double limit) =>
        Assert.All(["de", "eu", "us"], name => Assert.Equal(limit, BuiltInRuleSets.Get(name).Tolerances.SlabFlatness!.InProportion(metres * 1000), 9));

    /// <summary>DIN 18202 table 3 line 5, raw walls (checkvalues.csv T-DIN3-wall), and the worked values between its rows (T-DIN3-6.0, T-DIN3-2.8, T-DIN3-12.0).</summary>
    [Theory]
    [InlineData(6.0, 18.3333)]
    [InlineData(2.8, 13)]
    [InlineData(12.0, 27)]
    public void Between_rows_limits_are_in_proportion(double metres, double limit)
    {
        var table = new ToleranceTable([Row(0.1, 5), Row(1, 10), Row(4, 15), Row(10, 25), Row(15, 30)]);
        Assert.Equal(limit, table.InProportion(metres * 1000), 4);
    }

    /// <summary>DIN 18202 table 2 (checkvalues.csv T-DIN2, from memory): 3, 6, 8, 12, 16, 20 mm up to 0.5, 1, 3, 6, 15, 30 m.</summary>
    [Theory]
    [InlineData(0.5, 3)]
    [InlineData(0.51, 6)]
    [InlineData(1, 6)]
    [InlineData(3, 8)]
    [InlineData(6, 12)]
    [InlineData(15, 16)]
    [InlineData(30, 20)]
    public void Level_surfaces_by_distance(double metres, double limit) =>
        Assert.Equal(limit, BuiltInRuleSets.Get("de").Tolerances.CourseLevel!.RowOf(metres * 1000)!.Value.Limit.Mm);

    [Fact]
    public void Beyond_the_last_row_nothing_is_said() => Assert.Null(BuiltInRuleSets.Get("us").Tolerances.CourseLevel!.RowOf(3049));

    [Fact]
    public void Every_tolerance_has_a_source() => Assert.All(BuiltInRuleSets.Names.Select(BuiltInRuleSets.Get), set =>
    {
        var tolerances = set.Tolerances;
        (string Key, object? Value)[] values =
        [
            ("slab-level", tolerances.SlabLevel), ("slab-flatness", tolerances.SlabFlatness), ("course-level", tolerances.CourseLevel),
            ("course-level-most", tolerances.CourseLevelMost), ("bar-along", tolerances.BarAlong), ("plan-lengths", tolerances.PlanLengths),
        ];
        Assert.Equal(values.Where(value => value.Value is not null).Select(value => value.Key).Order(StringComparer.Ordinal), tolerances.Sources.SelectMany(source => source.Keys).Order(StringComparer.Ordinal));
    });

    private static ToleranceRow Feet(double feet, double inches) => new(Length.FromInches(feet * 12), Length.FromInches(inches));

    private static ToleranceRow Row(double metres, double limit) => new(Length.FromMm(metres * 1000), Length.FromMm(limit));
}
