using IfcCourser.Catalogs;
using IfcCourser.Findings;
using IfcCourser.Rules;
using IfcCourser.Tests.Support;
using IfcCourser.Units;

namespace IfcCourser.Tests.Runs;

public sealed class BarTests
{
    private static readonly LayoutRules _us = LayoutRules.For(BuiltInRuleSets.Get("us"), BuiltInCatalogs.Get("aac-in"), OpeningPolicy.Move);

    /// <summary>Common practice, no source: corner bars stand about 4 in by 4 in from the outer faces. The true place is half the thickness.</summary>
    [Fact]
    public void A_corner_bar_stands_about_4_in_from_both_outer_faces_and_is_listed_once()
    {
        var side = Inches(160);
        var layout = WallSketch.LayOut(WallSketch.Box(side, side, Inches(96.375), Inches(7.875)), _us);
        var corners = layout.Walls.SelectMany(wall => wall.Cores).Where(core => core.Why.Contains("corner", StringComparer.Ordinal)).ToList();
        Assert.Equal(4, corners.Count);
        Assert.All(corners, core =>
        {
            Assert.Equal(Inches(3.9375), core.Across);
            Assert.Equal(Inches(3.9375), side - core.At);
            Assert.InRange(core.Across.Inches, 3.75, 4.25);
            Assert.Single(core.SharedWith);
        });
    }

    /// <summary>TMS 402-16 7.3.2.3.1 (from memory): within 8 in of wall ends and 16 in of both sides of openings; 48 in apart as the tighter set.</summary>
    [Fact]
    public void Bars_stand_at_ends_and_jambs_and_no_further_apart_than_the_rule_allows()
    {
        var wall = WallSketch.Straight(
            Inches(479.875), Inches(96.375), Inches(7.875), (79.875 * 25.4, 120 * 25.4, 0, 80.5 * 25.4), (239.875 * 25.4, 288 * 25.4, 32.375 * 25.4, 80.5 * 25.4));
        var laid = WallSketch.LayOut(wall, _us);
        var bars = laid.Cores.Select(core => core.At.Inches).Order().ToList();
        Assert.InRange(bars[0], 4, 8);
        Assert.InRange(bars[^1], 479.875 - 8, 479.875 - 4);
        foreach (var opening in laid.Openings.Select(opening => opening.Placed))
        {
            Assert.Contains(bars, bar => bar < opening.Left.Inches && bar >= opening.Left.Inches - 16);
            Assert.Contains(bars, bar => bar > opening.Right.Inches && bar <= opening.Right.Inches + 16);
        }

        var gaps = bars.Zip(bars.Skip(1)).Where(pair => !laid.Openings.Any(o => o.Placed.Left.Inches > pair.First && o.Placed.Right.Inches < pair.Second));
        Assert.All(gaps, pair => Assert.True(pair.Second - pair.First <= 48.0001));
        Assert.DoesNotContain(laid.Findings, finding => finding.Code == FindingCodes.CoreOnJoint || finding.Code == FindingCodes.CoreInLintel);
    }

    [Fact]
    public void A_first_course_piece_with_a_core_has_an_inspection_notch()
    {
        var laid = WallSketch.LayOut(WallSketch.Straight(Inches(239.875), Inches(96.375), Inches(7.875)), _us);
        Assert.All(laid.Courses[0].Pieces, piece => Assert.Equal(piece.Cores.IsEmpty, piece.Notch is null));
        Assert.All(laid.Courses.Skip(1).SelectMany(course => course.Pieces), piece => Assert.Null(piece.Notch));
    }

    /// <summary>
    /// The vertical bars of WAC 246-359-440 (3) (checkvalues.csv R-011, read, for hollow blocks): No. 4 at most 48 in apart, at both sides of openings and at
    /// corners, laps of 20 in.
    /// </summary>
    [Fact]
    public void The_published_walls_have_bars_at_corners_and_jambs_and_48_in_apart_lapped_20_in()
    {
        var us = BuiltInRuleSets.Get("us");
        var rules = LayoutRules.For(
            us with { Bars = us.Bars! with { Splice = new BarSplice(0, [], Inches(20), Coupler: null) } }, BuiltInCatalogs.Get("block-in"), OpeningPolicy.Move);
        var box = WallSketch.Box(Inches(239.625), Inches(199.625), Inches(96), Inches(7.625));
        var withDoor = box.Walls[0] with { Openings = [WallSketch.Opening(0, 95.625 * 25.4, 136 * 25.4, 0, 80.375 * 25.4)] };
        var walls = WallSketch.LayOut(box with { Walls = box.Walls.SetItem(0, withDoor) }, rules).Walls;

        var bars = walls.SelectMany(wall => wall.Cores).ToList();
        Assert.Equal(4, bars.Count(core => core.Why.Contains("corner", StringComparer.Ordinal)));
        Assert.All(bars, core => Assert.Equal("No. 4", core.Bar));
        Assert.All(bars.Where(core => core.Bottom < Inches(8)), core => Assert.Equal(Inches(20), core.Bars!.Starter!.StickUp));
        var door = walls[0].Openings[0].Placed;
        var along = walls[0].Cores.Select(core => core.At).Order().ToList();
        Assert.Contains(along, at => at < door.Left && door.Left - at <= Inches(16));
        Assert.Contains(along, at => at > door.Right && at - door.Right <= Inches(16));
        foreach (var wall in walls)
        {
            // Corner bars are listed in one of their walls: each stands half a thickness from the corner's face.
            var half = wall.Frame.Thickness / 2;
            var stations = wall.Cores.Select(core => core.At).Append(half).Append(wall.Frame.Length - half).Distinct().Order().ToList();
            Assert.All(
                stations.Zip(stations.Skip(1)).Where(pair => !wall.Openings.Any(o => o.Placed.Left > pair.First && o.Placed.Right < pair.Second)),
                pair => Assert.True(pair.Second - pair.First <= Inches(48)));
        }
    }

    /// <summary>checkvalues.csv R-020 (arithmetic): 30 ft, the outer bars 8 in from the ends, 48 in apart at most: (360 - 16) / 48 asks for 8 spacings, 43 in each.</summary>
    [Fact]
    public void A_30_ft_wall_has_nine_bars_about_43_in_apart()
    {
        var rules = _us with { Set = _us.Set with { Bars = _us.Set.Bars! with { FromEnd = new Interval<Length>(Inches(8), Inches(8)) }, BondBeams = null, MovementJoints = null } };
        var bars = WallSketch.LayOut(WallSketch.Straight(Inches(360), Inches(96.375), Inches(7.875)), rules).Cores.Select(core => core.At.Inches).Order().ToList();
        Assert.Equal(9, bars.Count);
        Assert.Equal((8.0, 352.0), (bars[0], bars[^1]));

        // Bars dodge the joints of both courses, which stand 12 in apart, by no more than the clearance.
        Assert.All(bars.Select((bar, i) => bar - 8 - (43.0 * i)), off => Assert.InRange(off, -6, 6));
    }

    private static Length Inches(double inches) => Length.FromInches(inches);
}
