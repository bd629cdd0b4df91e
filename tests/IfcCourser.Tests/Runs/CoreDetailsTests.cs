using CsCheck;
using IfcCourser.Catalogs;
using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Tests.Support;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Tests.Runs;

[Collection(FinishedLayouts.Collection)]
public sealed class CoreDetailsTests
{
    private static readonly BarRule _rule = BuiltInRuleSets.Get("us").Bars!;

    /// <summary>Bars that rules ask for are never left out in silence.</summary>
    [Fact]
    public void A_catalog_without_cores_is_named_where_rules_ask_for_bars()
    {
        var rules = LayoutRules.For(BuiltInRuleSets.Get("us"), BuiltInCatalogs.Get("octametric"), OpeningPolicy.Keep);
        var wall = Assert.Single(WallSketch.LayOut(WallSketch.Alone(WallSketch.Straight(In(120), In(96), rules.Catalog.Widths[^1].Actual)), rules).Walls);
        Assert.Empty(wall.Cores);
        Assert.Single(wall.Findings, finding => finding.Code == FindingCodes.CoreNotPossible);
    }

    /// <summary>
    /// By hand: laps of 48 x 0.5 in = 24 in; a hook of 90 degrees of a No. 4 bar has 3 + 1 + 12 diameters = 8 in; the starter's legs are 6 + 24 and 8 in;
    /// lifts of 64 in; a 4 in core 96 3/8 in high holds pi / 4 x 16 x 96.375 = 1211.08 in3 = 0.019846 m3.
    /// </summary>
    [Fact]
    public void A_bar_laps_with_its_starter()
    {
        var wall = LayOut(_rule).Walls[0];
        Assert.All(wall.Cores, core =>
        {
            var bars = core.Bars!;
            Assert.Equal(new StarterBar(true, In(6), In(8), In(24)) { Mark = "V1" }, bars.Starter); // the only bar with a hook: hooks come first
            Assert.Equal([new Interval(In(0), In(24))], bars.Splices);
            Assert.Equal([new Interval(In(0), In(96.375))], bars.Set);
            Assert.Equal([new Interval(In(0), In(64)), new Interval(In(64), In(96.375))], bars.Lifts);
            Assert.Equal(0.019846, bars.GroutVolume, 6);
        });
    }

    /// <summary>
    /// By hand: 48 diameters of a No. 4 bar are 24 in and a lift 64 1/2 in, so that the lower bar is 88 1/2 in long and cut to 89 in, not to 88 in, which would lap
    /// 23 1/2 in; the upper one, 96 3/8 - 64 1/2 = 31 7/8 in, ends in the wall and is cut to 31 in.
    /// </summary>
    [Fact]
    public void No_cut_length_shortens_a_lap()
    {
        var rule = _rule with { Lengths = BarLengths.Lift, GroutLift = In(64.5) };
        var layout = WallSketch.LayOut(WallSketch.Alone(WallSketch.Straight(In(240), In(96.375), In(7.875))), Rules(rule));
        var bars = layout.Walls[0].Cores[0].Bars!;
        Assert.Equal([new Interval(In(0), In(88.5)), new Interval(In(64.5), In(96.375))], bars.Set);
        Assert.Equal([In(89), In(31)], bars.Marks.Select(mark => layout.BarSchedule.First(row => row.Mark == mark).Length));
    }

    [Fact]
    public void Bars_of_lifts_lap_above_each_lift()
    {
        var bars = LayOut(_rule with { Lengths = BarLengths.Lift }).Walls[0].Cores[0].Bars!;
        Assert.Equal([new Interval(In(0), In(88)), new Interval(In(64), In(96.375))], bars.Set);
        Assert.Equal([new Interval(In(0), In(24)), new Interval(In(64), In(88))], bars.Splices);
    }

    /// <summary>
    /// TMS 602-16 3.5 D (checkvalues.csv R-042): 5 ft 4 in; 12 ft 8 in where the masonry has cured 4 h, the slump is 10 to 11 in and no bond beam lies between. By hand, for a wall of 25 courses,
    /// 200 3/8 in: lifts to 64, 128, 192 in and the top; cured to 152 in and the top. A bar for each lift laps 24 in with the next; one of 8 3/8 in above 192 in would be shorter than its lap, so
    /// that the bar below goes to the top.
    /// </summary>
    [Theory]
    [InlineData(null, "64 128 192 200.375", "0-88 64-152 128-200.375")]
    [InlineData(152.0, "152 200.375", "0-176 152-200.375")]
    public void Pours_of_a_high_wall_are_parted_and_its_bars_with_them(double? cured, string lifts, string set)
    {
        var bars = HighWall(_rule with { Lengths = BarLengths.Lift, GroutLiftCured = cured is { } inches ? In(inches) : null }, beams: null);
        Assert.All(bars, core =>
        {
            Assert.Equal(lifts, string.Join(' ', core.Lifts.Select(lift => lift.To.Inches)));
            Assert.Equal(core.Lifts.SkipLast(1).Select(lift => lift.To), core.Lifts.Skip(1).Select(lift => lift.From));
            Assert.Equal(set, string.Join(' ', core.Set.Select(bar => FormattableString.Invariant($"{bar.From.Inches}-{bar.To.Inches}"))));
            Assert.Equal(core.Set.Select(bar => new Interval(bar.From, bar.From + In(24))), core.Splices);
        });
    }

    /// <summary>
    /// The same clause, from memory: with beams in the pour a lift ends under the lowest one that lies more than 5 ft 4 in above its foot. By hand, with beams in courses 8, 16 and 25, whose
    /// undersides lie 1/2 in for the levelling bed and 7, 15 and 24 courses of 8 in up: the one at 56 1/2 in is too low to end a lift, the one at 120 1/2 in ends it, and the next goes to the top.
    /// </summary>
    [Fact]
    public void A_bond_beam_ends_a_high_lift()
    {
        var us = BuiltInRuleSets.Get("us");
        var beams = us.BondBeams! with { Heights = [In(64), In(128)], LargestSpacing = null };
        var bars = HighWall(_rule with { GroutLiftCured = In(152) }, beams);
        Assert.All(bars, core => Assert.Equal("120.5 200.375", string.Join(' ', core.Lifts.Select(lift => lift.To.Inches))));
    }

    /// <summary>Bars that couplers join meet in their middles, 2 in above the slab and at the lifts' tops: nothing laps.</summary>
    [Fact]
    public void Coupled_bars_of_lifts_meet_in_their_couplers()
    {
        var bars = HighWall(_rule with { Lengths = BarLengths.Lift, Splice = _rule.Splice with { Coupler = In(4) } }, beams: null);
        Assert.All(bars, core =>
        {
            Assert.Equal([new Interval(In(2), In(64)), new Interval(In(64), In(128)), new Interval(In(128), In(192)), new Interval(In(192), In(200.375))], core.Set);
            Assert.Equal([new Interval(In(0), In(4)), new Interval(In(62), In(66)), new Interval(In(126), In(130)), new Interval(In(190), In(194))], core.Splices);
        });
    }

    private static List<CoreBars> HighWall(BarRule rule, BondBeamRule? beams)
    {
        var rules = Rules(rule);
        var cores = WallSketch.LayOut(WallSketch.Straight(In(239.875), In(200.375), In(7.875)), rules with { Set = rules.Set with { BondBeams = beams, MovementJoints = null } }).Cores;
        Assert.NotEmpty(cores);
        return [.. cores.Select(core => core.Bars!)];
    }

    /// <summary>The notch is as high as the core, 4 in: a coupler 3 in long with its middle 2 in up lies in it, one with its middle 3 in up does not.</summary>
    [Theory]
    [InlineData(2, false)]
    [InlineData(3, true)]
    public void A_coupler_is_reached_through_the_notch(double stickUp, bool isHidden)
    {
        var wall = LayOut(_rule with { Splice = _rule.Splice with { Coupler = In(3) }, Starter = _rule.Starter with { CouplerStickUp = In(stickUp) } }).Walls[0];
        Assert.Equal([new Interval(In(stickUp), In(96.375))], wall.Cores[0].Bars!.Set);
        Assert.Equal(isHidden ? wall.Cores.Length : 0, wall.Findings.Count(finding => finding.Code == FindingCodes.CouplerHidden));
    }

    /// <summary>A slab of 8 in between storeys: bars of the upper wall stand over those of the lower one, which run on through the slab by 8 + 24 in.</summary>
    [Fact]
    public void Bars_run_on_into_the_wall_above()
    {
        var lower = Wall(In(240));
        var upper = lower with { Identity = lower.Identity with { GlobalId = "W1", StepId = 20 }, Frame = lower.Frame with { Origin = new Vector3(0, 0, (96.375 + 8) * 25.4) } };
        var layout = WallSketch.LayOut(new WallModel { Walls = [lower, upper], Skipped = [], Junctions = [], Findings = [] }, Rules(_rule));
        Assert.Equal(layout.Walls[0].Cores.Select(core => core.At), layout.Walls[1].Cores.Select(core => core.At));
        Assert.All(layout.Walls[0].Cores, core => Assert.Equal(In(96.375 + 8 + 24), core.Bars!.Set[0].To));
        Assert.All(layout.Walls[1].Cores, core =>
        {
            Assert.Null(core.Bars!.Starter);
            Assert.Equal(new CoreBelow("W0", core.Id), core.Bars.RunsOnFrom);
        });
        Assert.Equal(
            layout.Walls.SelectMany((wall, w) => wall.Cores.Select(core => (wall.Identity.GlobalId, core.Id, w == 0 ? BarFoot.Slab : BarFoot.BarBelow))).Order(),
            layout.SetOut.Storeys.SelectMany(storey => storey.Bars).Select(bar => (bar.Wall, bar.Core, bar.Foot)).Order());
    }

    /// <summary>A wall 20 in high has no room for a lap of 24 in.</summary>
    [Fact]
    public void A_lap_without_room_is_named()
    {
        var wall = WallSketch.LayOut(WallSketch.Straight(In(240), In(20), In(7.875)), Rules(_rule));
        Assert.NotEmpty(wall.Cores);
        Assert.Equal(wall.Cores.Length, wall.Findings.Count(finding => finding.Code == FindingCodes.LapShort));
    }

    [Fact]
    public void Where_the_bar_rules_do_not_apply_is_said_with_the_run()
    {
        var said = LayOut(_rule).Findings.Where(finding => finding.Code == FindingCodes.BarsNotFor).Select(finding => finding.Message).ToList();
        Assert.Equal(_rule.NotFor.Length, said.Count);
        Assert.Contains(said, message => message.Contains("Seismic Design Categories D to F", StringComparison.Ordinal));
    }

    [Fact]
    public void A_bar_that_is_given_stands_in_its_wall_or_is_named()
    {
        var layout = LayOut(_rule with { Given = [new GivenBar("wall", In(100), In(2), "girder"), new GivenBar("nobody", In(100), In(2), "post"), new GivenBar("W0", In(999), In(2), "beam")] });
        Assert.Contains(layout.Walls[0].Cores, core => core.Why.Contains("girder", StringComparer.Ordinal) && Length.Abs(core.At - In(100)) <= In(2));
        Assert.Equal(2, layout.Findings.Count(finding => finding.Code == FindingCodes.BarNotPlaced));
    }

    /// <summary>By hand: of module lines from the wall's start the nearest to a jamb is that at 112 in, 2 in from the right one: the left jamb goes to 79 in, its bar 2 in from it to 77 in, where the door was drawn.</summary>
    [Fact]
    public void A_starter_in_the_doorway_as_drawn_is_named()
    {
        var door = WallSketch.Straight(In(239.875), In(96.375), In(7.875), (77 * 25.4, 110 * 25.4, 0, 80 * 25.4));
        var narrow = _rule with { FromJamb = new Interval<Length>(In(2), In(2)) };
        var rules = Rules(narrow);
        var wall = WallSketch.LayOut(door, rules with { Set = rules.Set with { Datum = Datum.Start } });
        var named = Assert.Single(wall.Findings, finding => finding.Code == FindingCodes.BarInDoorway);
        Assert.Equal(In(77), named.At!.S);
    }

    /// <summary>The same number; a bar that laps above is not shorter than asked for, one that ends in the wall not longer, neither by an inch (the most that a list steps by).</summary>
    [Fact]
    public void The_schedule_orders_what_walls_hold() => FinishedLayouts.ForAll(
        layout =>
        {
            var vertical = layout.BarSchedule.Where(row => row.Use == BarUse.Vertical).ToList();
            var bars = layout.Walls.SelectMany(wall => wall.Cores).Select(core => core.Bars!).ToList();
            Assert.Equal(bars.Sum(core => core.Count * (core.Set.Length + (core.Starter is null ? 0 : 1))), vertical.Sum(row => row.Number));
            var lengths = vertical.DistinctBy(row => row.Mark, StringComparer.Ordinal).ToDictionary(row => row.Mark, row => row.Length, StringComparer.Ordinal);
            foreach (var core in bars)
            {
                Assert.All(core.Set.Zip(core.Marks).SkipLast(1), bar => Assert.InRange((lengths[bar.Second] - bar.First.Size).Inches, 0, 1));
                Assert.InRange((core.Set[^1].Size - lengths[core.Marks[^1]]).Inches, 0, 1);
            }

            var marked = layout.Walls.SelectMany(wall => wall.Cores.SelectMany(core => core.Bars!.Marks.Concat(core.Bars.Starter is { } starter ? [starter.Mark] : [])
                .SelectMany(mark => Enumerable.Repeat((mark, wall.Identity.GlobalId), core.Bars.Count)))).Order();
            Assert.Equal(vertical.SelectMany(row => Enumerable.Repeat((row.Mark, row.Wall), row.Number)).Order(), marked);
            Assert.All(vertical.GroupBy(row => row.Mark, StringComparer.Ordinal), mark => Assert.Single(mark.Select(row => (row.Shape, row.A, row.B, row.Length)).Distinct()));
        }, cases: 60);

    /// <summary>TMS 402-16 7.3.2.3.1 (from memory): 16 in from both sides. Openings with twice that beside them, since narrow piers leave no choice.</summary>
    [Fact]
    public void Openings_have_bars_at_both_sides()
    {
        var met = 0;
        FinishedLayouts.ForAll(
            layout =>
            {
                foreach (var wall in layout.Rules.Set.Bars is null ? [] : layout.Walls.Where(wall => !wall.Findings.Any(finding => finding.Code == FindingCodes.CoreNotPossible)))
                {
                    var rule = layout.Rules.Set.Bars!;
                    var voids = wall.Openings.Where(opening => opening.Interrupts).Select(opening => opening.Placed).ToList();
                    foreach (var rect in voids.Where(rect => rule.AsksAtOpening(rect.Width, rect.Height) && StandsFree(rect, voids, wall.Frame.Length, rule.FromJamb.Largest * 2)))
                    {
                        Assert.Contains(wall.Cores, core => core.At < rect.Left && core.At >= rect.Left - rule.FromJamb.Largest && core.Bottom < rect.Top && core.Top > rect.Bottom);
                        Assert.Contains(wall.Cores, core => core.At > rect.Right && core.At <= rect.Right + rule.FromJamb.Largest && core.Bottom < rect.Top && core.Top > rect.Bottom);
                        met++;
                    }
                }
            },
            cases: 60);
        Assert.True(met > 10);
    }

    private static bool StandsFree(ElevationRect rect, List<ElevationRect> voids, Length length, Length least) =>
        rect.Left >= least && rect.Right <= length - least
        && voids.TrueForAll(other => other == rect || other.Right <= rect.Left - least || other.Left >= rect.Right + least);

    private static Layout LayOut(BarRule rule) => WallSketch.LayOut(WallSketch.Alone(Wall(In(239.875))), Rules(rule));

    private static Wall Wall(Length length) => WallSketch.Straight(length, In(96.375), In(7.875));

    private static LayoutRules Rules(BarRule rule) =>
        LayoutRules.For(BuiltInRuleSets.Get("us") with { Bars = rule }, BuiltInCatalogs.Get("aac-in"), OpeningPolicy.Move);

    private static Length In(double inches) => Length.FromInches(inches);
}
