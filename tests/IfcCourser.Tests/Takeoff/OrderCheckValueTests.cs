using System.Collections.Immutable;
using IfcCourser.Catalogs;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Takeoff;
using IfcCourser.Tests.Support;
using IfcCourser.Units;

namespace IfcCourser.Tests.Takeoff;

/// <summary>Published and derived values of quantities; the names are those of checkvalues.csv.</summary>
public sealed class OrderCheckValueTests
{
    private const double LitresPerCubicFoot = 28.316846592;
    private const double KilogramsPerPound = 0.45359237;

    /// <summary>NAVEDTRA 14045 ch. 4: 10 x 100 ft of 8 x 16 in blocks are 75 x 15 = 1125. Two half blocks, bought as such, make one.</summary>
    [Fact]
    public void A_wall_of_10_by_100_ft_takes_1125_blocks() => Assert.Equal(1125, Blocks(Order(Alone("block-in", 1200 - 0.375, 120, 7.625))));

    /// <summary>
    /// NAVEDTRA 14045 ch. 4: a box of 20 x 8 x 8 ft: 56 ft x 0.75 x 12 courses = 504, the corners counted with both walls. Laid, each corner
    /// takes half a block less in each course: 504 - 4 x 0.5 x 12 = 480; as four walls apart it is 504.
    /// </summary>
    [Fact]
    public void A_box_of_20_by_8_by_8_ft_takes_504_blocks_less_the_corners()
    {
        var rules = Rules("block-in");
        Length In(double inches) => Length.FromInches(inches);
        var box = WallSketch.LayOut(WallSketch.Box(In(240 - 0.375), In(96 - 0.375), In(96), In(7.625)), rules);
        var apart = Blocks(Order(Alone("block-in", 240 - 0.375, 96, 7.625))) + Blocks(Order(Alone("block-in", 96 - 0.375, 96, 7.625)));

        Assert.Equal(504, apart * 2);
        Assert.Equal(480, Blocks(Order(box)));
    }

    /// <summary>
    /// Q-001, Q-010 (0.75 a ft2, 120 on 20 x 8 ft), Q-002 (1.125 a ft2), Q-003 (6.6667 a m2), Q-004 (6.4 a m2): the face of all pieces with a joint each, over the face of a unit
    /// with its joints.
    /// </summary>
    [Theory]
    [InlineData("aac-in", 240, 96, 7.875, 120)]
    [InlineData("block-in", 240, 96, 7.625, 180)]
    [InlineData("aac-600", 6000 / 25.4, 3000 / 25.4, 200 / 25.4, 120)]
    [InlineData("aac-mm", 6250 / 25.4, 3000 / 25.4, 240 / 25.4, 120)]
    public void Units_of_an_area(string name, double length, double height, double width, double units)
    {
        var catalog = BuiltInCatalogs.Get(name);
        var layout = Alone(name, length - catalog.HeadJoint.Nominal.Inches, height + catalog.LevellingBed.Nominal.Inches - catalog.BedJoint.Nominal.Inches, width);

        Assert.Equal(units, Faces(layout), 6);
    }

    /// <summary>Q-006: jumbo units of 24 x 24 in (0.25 a ft2) and 32 x 24 in (0.1875): 40 and 30 on 20 x 8 ft.</summary>
    [Theory]
    [InlineData(24, 40)]
    [InlineData(32, 30)]
    public void Jumbo_units_of_an_area(double length, double units)
    {
        var catalog = BuiltInCatalogs.Get("aac-in") with { UnitLength = Length.FromInches(length - 0.125), UnitHeight = Length.FromInches(24 - 0.125) };
        var wall = WallSketch.Straight(
            Length.FromInches(240) - catalog.HeadJoint.Nominal, Length.FromInches(96) + catalog.LevellingBed.Nominal - catalog.BedJoint.Nominal, Length.FromInches(7.875));
        var layout = WallSketch.LayOut(WallSketch.Alone(wall), LayoutRules.For(BuiltInRuleSets.Get("none"), catalog, OpeningPolicy.Keep));

        Assert.Equal(units, Faces(layout), 6);
    }

    /// <summary>Q-011: the same 20 x 8 ft less an opening of 40 x 48 in: 110.</summary>
    [Fact]
    public void An_opening_is_deducted()
    {
        var wall = WallSketch.Straight(
            Length.FromInches(240 - 0.125), Length.FromInches(96 + 0.5 - 0.125), Length.FromInches(7.875), (72 * 25.4, 112.125 * 25.4, 24.5 * 25.4, 72.5 * 25.4));
        var layout = WallSketch.LayOut(WallSketch.Alone(wall), Rules("aac-in"));
        var lintel = Assert.Single(layout.Walls[0].Lintels);

        Assert.Equal(110, Faces(layout) + ((lintel.To - lintel.From).Inches + 0.125) * 8 / 192, 0.05);
    }

    /// <summary>Q-009: a wall of 15 ft 4 in by 59 ft 3 in has 908.5 ft2.</summary>
    [Fact]
    public void Gross_area_of_a_wall() =>
        Assert.Equal(908.5, Alone("block-in", 711, 184, 7.625).Walls[0].Quantities.GrossArea / 0.09290304, 0.05);

    /// <summary>Q-CORE-3, Q-CORE-4, Q-CORE-5 (ft3 a ft) and Q-COREM-80, Q-COREM-100, Q-COREM-125, Q-COREM-150 (litres a m): pi d2 / 4.</summary>
    [Theory]
    [InlineData(3 * 25.4, 304.8, 0.04909 * LitresPerCubicFoot, 0.0005)]
    [InlineData(4 * 25.4, 304.8, 0.08727 * LitresPerCubicFoot, 0.0005)]
    [InlineData(5 * 25.4, 304.8, 0.13635 * LitresPerCubicFoot, 0.0005)]
    [InlineData(80, 1000, 5.027, 0.001)]
    [InlineData(100, 1000, 7.854, 0.001)]
    [InlineData(125, 1000, 12.272, 0.001)]
    [InlineData(150, 1000, 17.671, 0.001)]
    public void Grout_of_a_core(double diameter, double height, double litres, double tolerance) =>
        Assert.Equal(litres, Assert.Single(WithCores(1, diameter, height).Lines, line => line.Key.Item == OrderItem.Grout).Net!.Value, tolerance);

    /// <summary>Q-CORE-10: ten 4 in cores 9 ft high and 10 per cent waste: 0.320 yd3.</summary>
    [Fact]
    public void Grout_of_ten_cores_with_waste()
    {
        var line = Assert.Single(WithCores(10, 101.6, 9 * 304.8).Lines, line => line.Key.Item == OrderItem.Grout);

        Assert.Equal(0.320, line.Gross!.Value / LitresPerCubicFoot / 27, 0.001);
    }

    /// <summary>Q-BED-US: joints of 1/8 in on courses of 8 in: 0.015625 of the wall's volume. Between 12 courses stand 11 joints.</summary>
    [Fact]
    public void Bed_joints_of_inch_units()
    {
        var joints = Order(Alone("aac-in", 240 - 0.125, 96.375, 7.875)).Joints;
        var wall = (240 - 0.125) * 8 * 11 * 7.875 / 1728 * LitresPerCubicFoot;

        Assert.Equal(0.015625, joints.BedVolume / wall, 0.000001);
    }

    /// <summary>Q-BED-EU: joints of 2 mm on courses of 250 mm: 8 litres a m3; Q-HEAD-EU: 2 mm head joints on a module of 600 mm add 3.31, of 248 in 250 mm.</summary>
    [Fact]
    public void Joints_of_metric_units()
    {
        var two = new LengthRange(Length.FromMm(2), Length.FromMm(2), Length.FromMm(2));
        var catalog = BuiltInCatalogs.Get("aac-600") with { UnitLength = Length.FromMm(598), UnitHeight = Length.FromMm(248), HeadJoint = two, BedJoint = two };
        var rules = LayoutRules.For(BuiltInRuleSets.Get("none"), catalog, OpeningPolicy.Keep);
        var (length, courses) = (6000 - 2, 8);
        var wall = WallSketch.Straight(Length.FromMm(length), Length.FromMm(20 + (courses * 250) - 2), Length.FromMm(200));
        var layout = WallSketch.LayOut(WallSketch.Alone(wall), rules);
        var joints = Order(layout).Joints;
        var heads = layout.Walls[0].Courses.Sum(course => course.Pieces.Length - 1);

        Assert.Equal(8, joints.BedVolume / (length * 250.0 * (courses - 1) * 200 / 1e9), 0.01);
        Assert.Equal(3.31, joints.HeadVolume / (heads * 600 * 250.0 * 200 / 1e9), 0.01);
    }

    /// <summary>By hand: a level bed of 20 mm under 4.999 m of 240 mm wall: 1.19976 m2, 23.995 litres. Beds that vary are the slab's (Q-LVL-02).</summary>
    [Fact]
    public void Levelling_mortar_of_a_level_bed()
    {
        var joints = Order(Alone("aac-mm", 4999 / 25.4, 1019 / 25.4, 240 / 25.4)).Joints;

        Assert.Equal((1.19976, 23.9952), (Math.Round(joints.LevellingArea, 6), Math.Round(joints.LevellingVolume, 5)));
    }

    /// <summary>Q-BAR-X1: twelve No. 5 bars of 10 ft 6 in weigh 131.42 lb (ASTM A615 table 1: 1.043 lb/ft).</summary>
    [Fact]
    public void Mass_of_bars()
    {
        var layout = Alone("block-in", 240, 96, 7.625);
        var length = Length.FromInches(126);
        var row = new BarScheduleRow("V1", layout.Walls[0].Identity.GlobalId, BarSizes.Find("No. 5")!, "ASTM A615 Grade 60", 12, "straight", length, Length.Zero, Length.Zero, length);
        var line = Assert.Single(Order(layout with { BarSchedule = [row] }).Lines, line => line.Key.Item == OrderItem.Bar);

        Assert.Equal(131.42, line.Net!.Value * line.MassEach!.Value / KilogramsPerPound, 0.01);
    }

    /// <summary>U-028: 599 x 249 x 300 mm at 400 kg/m3 weigh 17.9 kg dry.</summary>
    [Fact]
    public void Mass_of_a_unit()
    {
        var catalog = BuiltInCatalogs.Get("aac-600");
        catalog = catalog with { Ordering = catalog.Ordering with { Density = 400, MoisturePercent = 0 } };

        Assert.Equal(17.9, catalog.Mass("unit", catalog.UnitLength, catalog.UnitHeight, Length.FromMm(300))!.Value, 0.05);
    }

    private static double Blocks(Order order) => order.Lines.Sum(line => line.Key.Item switch
    {
        OrderItem.FullUnit => line.Net!.Value,
        OrderItem.PartUnit => line.Net!.Value / 2,
        OrderItem.CutUnit => double.NaN,
        _ => 0,
    });

    private static double Faces(Layout layout)
    {
        var catalog = layout.Rules.Catalog;
        return layout.Walls.SelectMany(wall => wall.Courses).SelectMany(course => course.Pieces)
            .Sum(piece => (piece.Length + catalog.HeadJoint.Nominal).Mm * (piece.Height + catalog.BedJoint.Nominal).Mm / catalog.Pitch.Mm / catalog.CoursePitch.Mm);
    }

    private static Order WithCores(int count, double diameter, double height)
    {
        var layout = Alone("aac-in", 240, 96, 7.875);
        var core = new Core("", Length.Zero, Length.Zero, Length.Zero, Length.FromMm(height), Length.FromMm(diameter), "", [], default, default, default, []);
        ImmutableArray<Core> cores = [.. Enumerable.Range(0, count).Select(i => core with { Id = FormattableString.Invariant($"K{i}") })];
        return Order(layout with { Walls = [layout.Walls[0] with { Cores = cores }] });
    }

    private static Layout Alone(string catalog, double length, double height, double width) =>
        WallSketch.LayOut(WallSketch.Alone(WallSketch.Straight(Length.FromInches(length), Length.FromInches(height), Length.FromInches(width))), Rules(catalog));

    private static LayoutRules Rules(string catalog) => LayoutRules.For(BuiltInRuleSets.Get("none"), BuiltInCatalogs.Get(catalog), OpeningPolicy.Keep);

    private static Order Order(Layout layout) => Orders.With(layout, OffcutReuse.Wall).Order!;
}
