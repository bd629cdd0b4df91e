using System.Collections.Immutable;
using IfcCourser.Catalogs;
using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Tests.Support;
using IfcCourser.Units;

namespace IfcCourser.Tests.Runs;

/// <summary>Arched and round openings: a rectangle is left around them; what the mason closes is named. Areas by circle geometry.</summary>
public sealed class ArchTests
{
    /// <summary>
    /// 1001 mm wide, springing at 1519.5, a half circle to 2020: beside it the rectangle has 2 r2 - pi r2 / 2 = r2 (2 - pi / 2),
    /// 0.1075 m2 for r = 500.5 mm. The chain of 1 degree that draws the arch cuts off less than 0.1 % of it.
    /// </summary>
    [Fact]
    public void An_arch_keeps_its_outline_in_a_rectangle_and_says_what_is_closed_at_its_crown()
    {
        var laid = LaidOut(OpeningPolicy.Keep, 999, 2000, 769, [new(Mm(999), Mm(769)), new(Mm(2000), Mm(769)), .. Curve(1499.5, 1519.5, 500.5, 0, 180)]);
        var opening = laid.Openings[0];

        Assert.Equal((999d, 2000d, 769d, 2020d), (opening.Placed.Left.Mm, opening.Placed.Right.Mm, opening.Placed.Bottom.Mm, opening.Placed.Top.Mm));
        Assert.Equal((799d, 2020d), (laid.Lintels[0].From.Mm, laid.Lintels[0].Bottom.Mm));
        var finding = laid.Findings.Single(finding => finding.Code == FindingCodes.OpeningNotRectangular);
        Assert.Contains("1001 mm by 1251 mm", finding.Message, StringComparison.Ordinal);
        Assert.Contains("from 500.5 mm under the crown up, 0.108 m2", finding.Message, StringComparison.Ordinal);
        Assert.Contains("formed arch", finding.Message, StringComparison.Ordinal);
    }

    /// <summary>A circle of 1001 mm in its square leaves r2 (4 - pi) = 0.215 m2.</summary>
    [Fact]
    public void A_round_opening_has_a_straight_sill_and_lintel()
    {
        var laid = LaidOut(OpeningPolicy.Keep, 999, 2000, 1019, Curve(1499.5, 1519.5, 500.5, 0, 359));
        var message = laid.Findings.Single(finding => finding.Code == FindingCodes.OpeningNotRectangular).Message;
        Assert.Contains("no rectangle", message, StringComparison.Ordinal);
        Assert.Contains("0.215 m2", message, StringComparison.Ordinal);
        Assert.Contains("formed ring", message, StringComparison.Ordinal);
    }

    /// <summary>Moved 10 mm to its lines, the outline moves with its opening; its springing stays over the sill, which does not move.</summary>
    [Fact]
    public void The_outline_moves_with_its_opening()
    {
        var rules = Rules(OpeningPolicy.Move);
        var laid = LaidOut(rules with { Set = rules.Set with { Datum = Datum.Start } }, 989, 1990, 769,
            [new(Mm(989), Mm(769)), new(Mm(1990), Mm(769)), .. Curve(1489.5, 1489.5, 500.5, 0, 180)]);
        var opening = laid.Openings[0];
        var box = new ElevationOutline(opening.Outline!.Value).Box;
        Assert.Equal((999d, 2000d, 2020d), (opening.Placed.Left.Mm, opening.Placed.Right.Mm, opening.Placed.Top.Mm));
        Assert.Equal((999d, 2000d, 769d, 1990d), (box.Left.Mm, box.Right.Mm, box.Bottom.Mm, box.Top.Mm));
    }

    private static WallLayout LaidOut(OpeningPolicy policy, double left, double right, double bottom, ImmutableArray<ElevationPoint> outline) =>
        LaidOut(Rules(policy), left, right, bottom, outline);

    private static WallLayout LaidOut(LayoutRules rules, double left, double right, double bottom, ImmutableArray<ElevationPoint> outline)
    {
        var wall = WallSketch.Straight(Mm(5999), Mm(2519), Mm(240));
        var opening = WallSketch.Opening(0, left, right, bottom, new ElevationOutline(outline).Box.Top.Mm) with { Outline = outline };
        return WallSketch.LayOut(wall with { Openings = [opening] }, rules);
    }

    private static LayoutRules Rules(OpeningPolicy policy) => LayoutRules.For(BuiltInRuleSets.Get("eu"), BuiltInCatalogs.Get("aac-mm"), policy);

    /// <summary>A chain of one degree along a circle, counter-clockwise.</summary>
    private static ImmutableArray<ElevationPoint> Curve(double s, double z, double radius, int from, int to) =>
    [
        .. Enumerable.Range(from, to - from + 1).Select(degree => degree * Math.PI / 180)
            .Select(angle => new ElevationPoint(Mm(s + (radius * Math.Cos(angle))), Mm(z + (radius * Math.Sin(angle))))),
    ];

    private static Length Mm(double mm) => Length.FromMm(mm);
}
