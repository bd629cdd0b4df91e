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

    private static Length Inches(double inches) => Length.FromInches(inches);
}
