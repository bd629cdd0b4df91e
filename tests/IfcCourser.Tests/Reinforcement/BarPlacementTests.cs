using System.Collections.Immutable;
using CsCheck;
using IfcCourser.Catalogs;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Reinforcement;
using IfcCourser.Rules;
using IfcCourser.Tests.Support;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Tests.Reinforcement;

/// <summary>The bars of small walls against every set of bars.</summary>
public sealed class BarPlacementTests
{
    private static readonly Length _grid = Length.FromMm(200);

    private static readonly LayoutRules _rules = Rules(BuiltInCatalogs.Get("aac-in"), BuiltInRuleSets.Get("us").Bars!);

    private static readonly Gen<(Wall Wall, LayoutRules Rules, int[][] Joints)> _walls = Gen
        .Select(Gen.Int[5, 8], Gen.Int[2, 5], Gen.Int[0, 2], Gen.Int[0, 6], Gen.Int[1, 4], Gen.Int[0, 4], Gen.Int[0, 9].Array[0, 3].Array[4])
        .Select((length, spacing, from, left, width, height, joints) =>
        {
            var wall = WallSketch.Straight(_grid * length, Length.FromMm(2400), Length.FromMm(200));
            var hasOpening = left >= 1 && left + width < length;
            wall = hasOpening
                ? wall with { Openings = [WallSketch.Opening(0, left * 200, (left + width) * 200, height * 400, 2000)] }
                : wall;
            var bars = _rules.Set.Bars! with { LargestSpacing = _grid * spacing, SpacingFromHeight = Length.FromMm(400 * from) };
            return (wall, Rules(_rules.Catalog, bars), joints);
        });

    /// <summary>Demands first, then gaps, then joints, then the number: no set of bars, each in a piece of some course, is better.</summary>
    [Fact]
    public void No_other_set_of_bars_is_better() => _walls.ForAll(
        given =>
        {
            var (wall, rules, joints) = given;
            var bars = rules.Set.Bars!;
            var site = Site(wall);
            ImmutableArray<BarDemand> demands = [.. new BarDemands(site, rules, bars).All()];
            var courses = joints.Select((row, i) => Course(new Interval(Length.FromMm(i * 600), Length.FromMm((i + 1) * 600)), [.. row.Select(joint => _grid * joint)], wall.Frame.Length)).ToList();
            var placed = new BarPlacement(site, rules, bars, new BarEffort()).SettleAll(courses);
            var all = new AllBars(site, demands, courses, rules);
            var ours = all.Cost([.. placed.Select(bar => (bar.At, bar.Heights))]);
            var best = all.Least(_grid);
            Assert.All(placed, bar => Assert.True(all.IsInPiece((bar.At, bar.Heights)), $"{bar.At} stands in joints alone"));
            Assert.True(ours.CompareTo(best) <= 0, $"{ours} where {best} can be had: {string.Join("; ", placed.Select(bar => $"{bar.At} {bar.Heights}"))}; {string.Join(" ", site.Voids)}; spacing {bars.LargestSpacing}, from {bars.SpacingFromHeight}");
        }, cases: 60);

    /// <summary>30 ft with bars 8 in from its ends (worked by hand): 344 in between them take 9 bars at 48 in, 4 at 120 in; evenly 43 and 114.67 in apart.</summary>
    [Theory]
    [InlineData(48, 9, 43)]
    [InlineData(120, 4, 114.6667)]
    public void Bars_of_a_plain_wall_stand_evenly(double spacing, int count, double gap)
    {
        var wall = WallSketch.Straight(Length.FromInches(360), Length.FromInches(96), Length.FromInches(7.875));
        var eight = new Interval<Length>(Length.FromInches(8), Length.FromInches(8));
        var bars = _rules.Set.Bars! with { LargestSpacing = Length.FromInches(spacing), FromEnd = eight };
        var placed = new BarPlacement(Site(wall), Rules(BuiltInCatalogs.Get("aac-in"), bars, Length.FromInches(0.0625)), bars, new BarEffort()).SettleAll([]);
        Assert.Equal(count, placed.Length);
        Assert.All(placed.Zip(placed.Skip(1)), pair => Assert.InRange((pair.Second.At - pair.First.At).Inches, gap - 1, Math.Min(spacing, gap + 1)));
    }

    /// <summary>Openings too small for jamb bars, of rising sills, make many beginnings; whatever of them is left out, the ends have their bars and no gap is too long.</summary>
    [Fact]
    public void Where_no_effort_is_left_a_wall_has_its_bars_all_the_same()
    {
        var wall = WallSketch.Straight(Length.FromInches(360), Length.FromInches(96), Length.FromInches(7.875)) with
        {
            Openings = [.. Enumerable.Range(0, 11).Select(i => WallSketch.Opening(i, 600 + (750 * i), 950 + (750 * i), 100 + (180 * i), 450 + (180 * i)))],
        };
        var (site, bars, spent) = (Site(wall), _rules.Set.Bars! with { LargestSpacing = Length.FromInches(48), SpacingFromHeight = Length.Zero }, new BarEffort());
        spent.Spend(BarEffort.Most);
        ImmutableArray<BarDemand> demands = [.. new BarDemands(site, _rules, bars).All()];
        var placed = new BarPlacement(site, _rules, bars, spent).SettleAll([]);
        var all = new AllBars(site, demands, [], _rules);
        var (least, ours) = (all.Cost([.. new BarPlacement(site, _rules, bars, new BarEffort()).SettleAll([]).Select(bar => (bar.At, bar.Heights))]), all.Cost([.. placed.Select(bar => (bar.At, bar.Heights))]));
        Assert.True(spent.IsCutShort);
        Assert.Equal((least.Unmet, least.Gaps), (ours.Unmet, ours.Gaps));
    }

    [Fact]
    public void Bars_stand_over_those_of_the_wall_below_where_that_costs_none_more()
    {
        var wall = WallSketch.Straight(Length.FromInches(360), Length.FromInches(96), Length.FromInches(7.875));
        ImmutableArray<Length> below = [.. new[] { 5.1, 50.3, 95.2, 140, 185, 230, 275, 317, 355 }.Select(Length.FromInches)];
        var placed = new BarPlacement(Site(wall) with { InLine = below }, _rules, _rules.Set.Bars!, new BarEffort()).SettleAll([]);
        Assert.Equal(below, placed.Select(bar => bar.At));
    }

    /// <summary>
    /// Worked by hand: end bars 4 to 8 in from the ends of 1200 mm are more than 600 mm apart, so that one more stands between them at every height; an opening
    /// 400 mm wide, too small for jamb bars, and its lintel part that one in two, which may stand in line.
    /// </summary>
    [Fact]
    public void A_bar_under_an_opening_and_one_over_it_may_stand_in_line()
    {
        var wall = WallSketch.Straight(_grid * 6, Length.FromMm(2400), Length.FromMm(200)) with { Openings = [WallSketch.Opening(0, 400, 800, 1200, 2000)] };
        var bars = _rules.Set.Bars! with { LargestSpacing = _grid * 3, SpacingFromHeight = Length.Zero };
        var placed = new BarPlacement(Site(wall), Rules(_rules.Catalog, bars), bars, new BarEffort()).SettleAll([]);
        Assert.Equal([(0, 1200), (2200, 2400)], placed.Where(bar => bar.At == Length.FromMm(600)).Select(bar => (bar.Heights.From.Mm, bar.Heights.To.Mm)));
        Assert.Equal(4, placed.Length);
    }

    /// <summary>A course whose pieces reach from joint to joint, 4 mm wide: a bar in one of these has no piece around it.</summary>
    private static CourseMasonry Course(Interval height, ImmutableArray<Length> joints, Length length)
    {
        var half = Length.FromMm(2);
        var ends = joints.Where(joint => joint > Length.Zero && joint < length).Distinct().Order().ToList();
        return new CourseMasonry(height, joints, [.. ends.Select(joint => joint + half).Prepend(Length.Zero).Zip(ends.Select(joint => joint - half).Append(length), (from, to) => new Interval(from, to))]);
    }

    private static BarSite Site(Wall wall) => new(
        wall, [.. wall.Openings.Select(opening => new OpeningLayout(opening, opening.Model, opening.Model, OnModule: true))], Lintels(wall), [], [], [], []);

    private static ImmutableArray<Lintel> Lintels(Wall wall) =>
    [
        .. wall.Openings.Select(opening => opening.Model).Select(rect => new Lintel(
            "L", "O", LintelKind.Solid, "lintel", rect.Left - _grid, rect.Right + _grid, rect.Top, rect.Top + _grid, _grid, _grid, [])),
    ];

    private static LayoutRules Rules(Catalog catalog, BarRule bars, Length? grid = null) => LayoutRules.For(
        BuiltInRuleSets.Get("us") with { Bars = bars },
        catalog with { CutGrid = grid ?? _grid },
        OpeningPolicy.Keep);
}
