using System.Collections.Immutable;
using CsCheck;
using IfcCourser.Catalogs;
using IfcCourser.Geometry;
using IfcCourser.Modules;
using IfcCourser.Rules;
using IfcCourser.Tests.Support;
using IfcCourser.Units;

namespace IfcCourser.Tests.Modules;

/// <summary>aac-mm: undersides at 20 + 250 n, tops at 269 + 250 n, largest shift 62.5 mm.</summary>
public sealed class OpeningHeightsTests
{
    private static readonly LayoutRules _rules = LayoutRules.For(BuiltInRuleSets.Get("eu"), BuiltInCatalogs.Get("aac-mm"), OpeningPolicy.Move);

    private static readonly ImmutableArray<Interval> _courses =
        [.. Enumerable.Range(0, 12).Select(i => new Interval(Mm(20 + (250 * i)), Mm(269 + (250 * i))))];

    /// <summary>
    /// Heads: 50 mm under a line they go up; 130 mm under one (120 over the last) a lintel is seated; 190 mm under one, or 80,
    /// none can be: up. A head never goes down. Sills: 10 mm beside a top they go there, where the opening stays as high as
    /// wanted; 70 mm beside one they stay. Worked by hand.
    /// </summary>
    [Theory]
    [InlineData(1019, 2020, 1019, 2020)]
    [InlineData(1019, 1970, 1019, 2020)]
    [InlineData(1019, 2140, 1019, 2140)]
    [InlineData(1019, 2080, 1019, 2270)]
    [InlineData(1019, 2190, 1019, 2270)]
    [InlineData(1009, 2020, 1009, 2020)]
    [InlineData(1029, 2020, 1019, 2020)]
    [InlineData(1009, 2010, 1019, 2020)]
    [InlineData(1089, 2020, 1089, 2020)]
    [InlineData(0, 2010, 0, 2020)]
    [InlineData(30, 2020, 0, 2020)]
    public void Heads_go_up_and_sills_to_the_nearest_course(double sill, double head, double placedSill, double placedHead)
    {
        var placed = Snapped(new ElevationRect(Mm(1000), Mm(2000), Mm(sill), Mm(head)));
        Assert.Equal((placedSill, placedHead), (placed.Bottom.Mm, placed.Top.Mm));
    }

    /// <summary>The sill moves no further than the nearest course top (or base) of all that leave the opening as high as wanted and are within the largest shift.</summary>
    [Fact]
    public void No_sill_within_reach_is_nearer() => Gen.Select(Gen.Int[1, 2200], Gen.Int[300, 2300]).ForAll((sill, height) =>
    {
        var design = new ElevationRect(Mm(1000), Mm(2000), Mm(sill), Mm(Math.Min(sill + height, 2990)));
        var placed = Snapped(design);
        var tops = Enumerable.Range(0, 12).Select(i => 269 + (250 * i)).Append(0)
            .Where(top => placed.Top.Mm - top >= design.Height.Mm && Math.Abs(top - sill) <= 62.5).ToList();
        Assert.Equal(tops.Count == 0 ? 0 : tops.Min(top => Math.Abs(top - sill)), Math.Abs(placed.Bottom.Mm - sill));
        Assert.True(tops.Count == 0 || tops.Contains((int)placed.Bottom.Mm));
        Assert.True(placed.Top >= design.Top && placed.Top < design.Top + Mm(250) && placed.Height >= design.Height);
    });

    /// <summary>
    /// Alone, a head at 1965 goes up to 2020 and the sill over it from 1975 to 2019 (its head from 2475 to 2520), a joint lower: they would overlap, so that both stay, in whichever order
    /// they are given. Beside each other both move, and so does the upper where the lower is fixed.
    /// </summary>
    [Fact]
    public void Of_two_that_would_touch_both_keep_their_heights()
    {
        ElevationRect lower = new(Mm(1000), Mm(2000), Mm(1019), Mm(1965)), upper = new(Mm(1000), Mm(2000), Mm(1975), Mm(2475)), beside = upper with { Left = Mm(2000), Right = Mm(3000) };
        var (up, down) = (lower with { Top = Mm(2020) }, Mm(2019));
        Assert.Equal((up, down), (Snapped(lower), Snapped(upper).Bottom));
        Assert.Equal([lower, upper], SnapAll([lower, upper], [false, false]));
        Assert.Equal([upper, lower], SnapAll([upper, lower], [false, false]));
        Assert.Equal([up, Snapped(beside)], SnapAll([lower, beside], [false, false]));
        Assert.Equal([lower, Snapped(upper)], SnapAll([lower, upper], [true, false]));
    }

    private static ElevationRect Snapped(ElevationRect design) =>
        SnapAll([design], [false])[0];

    private static ImmutableArray<ElevationRect> SnapAll(ImmutableArray<ElevationRect> designs, ImmutableArray<bool> isFixed) =>
        new OpeningHeights(WallSketch.Straight(Mm(6000), Mm(3019), Mm(240)), _courses, _rules).SnapAll(designs, isFixed);

    private static Length Mm(double mm) => Length.FromMm(mm);
}
