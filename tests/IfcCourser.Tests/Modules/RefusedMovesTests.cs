using IfcCourser.Catalogs;
using IfcCourser.Layouts;
using IfcCourser.Modules;
using IfcCourser.Rules;
using IfcCourser.Tests.Support;
using IfcCourser.Units;

namespace IfcCourser.Tests.Modules;

/// <summary>aac-mm on lines of 125 mm from the wall's start: left jambs on 125 k - 1, right jambs on 125 k; least pier 249 mm. Worked by hand.</summary>
public sealed class RefusedMovesTests
{
    /// <summary>
    /// Of widths n 125 + 1 both jambs come onto lines by one shift; others by widening, here by 51 mm, from the nearer line, or from the other where the jambs move less
    /// in all: 949 to 1850 needs 50 and 150, or -75 and 25. Widths of 996 and 1005 are off by no more than the tolerance of 5, 995 by 6.
    /// </summary>
    [Theory]
    [InlineData(OpeningPolicy.Keep, 1009, 2010, -10, -10, nameof(Refusal.Kept))]
    [InlineData(OpeningPolicy.Move, 999, 1950, 0, 50, nameof(Refusal.Widens))]
    [InlineData(OpeningPolicy.Move, 1050, 2001, -51, -1, nameof(Refusal.Widens))]
    [InlineData(OpeningPolicy.Move, 1050, 2051, -51, -51, nameof(Refusal.PastLargestShift))]
    [InlineData(OpeningPolicy.Resize, 1050, 2040, -51, 85, nameof(Refusal.PastLargestShift))]
    [InlineData(OpeningPolicy.Resize, 1009, 2740, -10, 10, nameof(Refusal.PierShort))]
    [InlineData(OpeningPolicy.Move, 1739, 2740, 10, 10, nameof(Refusal.PierShort))]
    [InlineData(OpeningPolicy.Move, 949, 1850, -75, 25, nameof(Refusal.Widens))]
    [InlineData(OpeningPolicy.Move, 1049, 1950, -50, 50, nameof(Refusal.Widens))]
    [InlineData(OpeningPolicy.Move, 1009, 2005, -10, -5, nameof(Refusal.Others))]
    [InlineData(OpeningPolicy.Move, 1009, 2014, -10, -14, nameof(Refusal.Others))]
    [InlineData(OpeningPolicy.Move, 1009, 2004, -10, -4, nameof(Refusal.Widens))]
    [InlineData(OpeningPolicy.Move, 1049, 2050, -50, -50, nameof(Refusal.Others))]
    public void The_nearest_move_is_named_with_why_it_was_not_made(
        OpeningPolicy policy, double left, double right, double leftShift, double rightShift, string why)
    {
        var refused = Refused(policy, Placed(0, left, right), Placed(1, 2990, 4000));
        var move = refused.BothJambs(Placed(0, left, right));
        Assert.Equal((leftShift, rightShift, why), (move.Shift.Left.Mm, move.Shift.Right.Mm, move.Why.ToString()));
    }

    /// <summary>A window that would be left 240 mm beside its neighbour: the pier is named.</summary>
    [Fact]
    public void A_pier_that_would_fall_short_is_named() =>
        Assert.Equal(240, Refused(OpeningPolicy.Move, Placed(0, 1739, 2740), Placed(1, 2990, 4000)).BothJambs(Placed(0, 1739, 2740)).Pier.Mm);

    /// <summary>The wall runs from 0 to 5999: -6 would leave 124 before the opening, +5 as much behind it; of two piers the shorter is named (the other is 2990 - 2750 = 240).</summary>
    [Theory]
    [InlineData(OpeningPolicy.Move, 130, 1131)]
    [InlineData(OpeningPolicy.Move, 4869, 5870)]
    [InlineData(OpeningPolicy.Resize, 130, 2740)]
    public void A_pier_at_an_end_of_the_wall_that_would_fall_short_is_named(OpeningPolicy policy, double left, double right)
    {
        var move = Refused(policy, Placed(0, left, right), Placed(1, 2990, 4000)).BothJambs(Placed(0, left, right));
        Assert.Equal((Refusal.PierShort, 124d), (move.Why, move.Pier.Mm));
    }

    /// <summary>Resized, a left jamb goes to the left only, a right one to the right: 1014 by -15 and 1954 by +46; 1100 by -101 and 1930 by +70.</summary>
    [Theory]
    [InlineData(1014, 1954, -15, 0)]
    [InlineData(1100, 1930, 0, 70)]
    public void An_opening_that_may_grow_has_its_nearer_jamb_named(double left, double right, double leftShift, double rightShift)
    {
        var opening = Placed(0, left, right);
        var move = Refused(OpeningPolicy.Resize, 10, opening).OneJamb(opening)!;
        Assert.Equal((leftShift, rightShift, Refusal.PastLargestShift), (move.Shift.Left.Mm, move.Shift.Right.Mm, move.Why));
    }

    /// <summary>940 mm wide, 15 mm from the line on the left and 45 on the right: one jamb needs 15 mm, where the largest shift is 10.</summary>
    [Fact]
    public void Where_no_jamb_stands_on_a_line_the_least_shift_for_one_is_named()
    {
        var opening = Placed(0, 1014, 1954);
        var move = Refused(OpeningPolicy.Move, 10, opening).OneJamb(opening)!;
        Assert.Equal((-15d, -15d, Refusal.PastLargestShift), (move.Shift.Left.Mm, move.Shift.Right.Mm, move.Why));
        Assert.Null(Refused(OpeningPolicy.Move, 10, opening).OneJamb(Placed(0, 999, 1954)));
    }

    /// <summary>A whole run says it in the finding: the neighbour, which has the least pier at the wall's end, can't give way.</summary>
    [Fact]
    public void The_finding_names_move_and_pier()
    {
        var rules = Rules(OpeningPolicy.Move, 62.5);
        rules = rules with { Set = rules.Set with { Datum = Datum.Start } };
        var laid = WallSketch.LayOut(WallSketch.Straight(Mm(4249), Mm(2519), Mm(240), (1739, 2740, 1019, 2020), (2990, 4000, 1019, 2020)), rules);
        Assert.Contains(laid.Findings, finding => finding.Message.Contains("moved by +10 mm it stands on it; not done: a pier of 240 mm", StringComparison.Ordinal));
    }

    private static RefusedMoves Refused(OpeningPolicy policy, params OpeningLayout[] openings) => Refused(policy, policy == OpeningPolicy.Move ? 50 : 62.5, openings);

    private static RefusedMoves Refused(OpeningPolicy policy, double maxShift, params OpeningLayout[] openings) => new(
        WallSketch.Straight(Mm(5999), Mm(2519), Mm(240)), [.. openings], new ModuleLines(Length.Zero, Mm(125)), Rules(policy, maxShift));

    private static LayoutRules Rules(OpeningPolicy policy, double maxShift) =>
        LayoutRules.For(BuiltInRuleSets.Get("eu"), BuiltInCatalogs.Get("aac-mm"), policy, Mm(maxShift));

    private static OpeningLayout Placed(int number, double left, double right)
    {
        var opening = WallSketch.Opening(number, left, right, 1019, 2020);
        return new OpeningLayout(opening, opening.Model, opening.Model, OnModule: false);
    }

    private static Length Mm(double mm) => Length.FromMm(mm);
}
