using IfcCourser.Catalogs;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Tests.Support;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Tests.Modules;

/// <summary>
/// Ten openings held to hand calculation. aac-mm, lines from the wall's start (datum "start"): with p = 125 and j = 1 mm a left jamb belongs on
/// 125 k - 1 and a right jamb on 125 k; course n of 249 on a bed of 20 with 1 mm joints has its top at 19 + 250 n and its underside at 20 + 250 (n - 1). Largest
/// shift 62.5 mm (half a module), tolerance 5 mm, least pier 249 mm. Rule set "none": no allowances, so that the wanted opening is the drawn one.
/// </summary>
public sealed class OpeningChecksTests
{
    /// <summary>
    /// 1. 999 = 1000 - 1 and 2000 = 16 x 125: on lines; sill 1019 = 19 + 4 x 250, head 2020 = 20 + 8 x 250.
    /// 2. 1009 and 2010: each 10 past a line (999, 2000); kept, a shift of -10 cures it. Sill 1029: top 1019 is 10 below. Head 2030: next underside 2270, 240 up.
    /// 3. 989 and 1990: 10 short of 999 and 2000. Sill 1009 to 1019: +10. Head 2010 to 2020: +10.
    /// 4. 999 and 1950, 951 wide. Widths on the module are 125 n + 1; the next is 1001, 50 more. Right jamb 1950: 1950 - 1875 = 75 and 2000 - 1950 = 50, so +50.
    /// 5. 1050 and 2001, 951 wide: left 1050 + 1 = 1051 = 8 x 125 + 51, so -51; right 2001 = 16 x 125 + 1, so -1. Onto 999 and 2000: -51 and -1, 50 wider.
    /// 6. 1061 and 2062, 1001 wide: 1062 = 8 x 125 + 62, nearer down: -62, within 62.5. Right: 2062 - 2000 = 62: -62.
    /// 7. 1739 and 2740: 1740 = 13 x 125 + 115, so +10; 2740 = 21 x 125 + 115, so +10. Alone in the wall a shift cures it.
    /// 8. A door from the base, 1003 to 2004: 4 past the lines 999 and 2000: within the tolerance of 5. No sill. Head 2020: on a line.
    /// 9. 3 and 1004: 4 = 0 x 125 + 4 to the line at -1: -4; 1004 - 1000 = 4: -4: on the module within the tolerance.
    /// 10. 1250 wide from 999 to 2249 is a width of 125 n, nominal and without its joint: right 2249 = 18 x 125 - 1: +1, within the tolerance: on the module.
    /// </summary>
    [Theory]
    [InlineData(999, 2000, 1019, 2020, nameof(ModuleState.OnModule), 0, 0, 0.0, 0.0, 0, 0)]
    [InlineData(1009, 2010, 1029, 2030, nameof(ModuleState.Curable), -10, -10, -10.0, 240.0, -10, -10)]
    [InlineData(989, 1990, 1009, 2010, nameof(ModuleState.Curable), 10, 10, 10.0, 10.0, 10, 10)]
    [InlineData(999, 1950, 1019, 2020, nameof(ModuleState.WidthOff), 0, 50, 0.0, 0.0, 0, 50)]
    [InlineData(1050, 2001, 1019, 2020, nameof(ModuleState.WidthOff), -51, -1, 0.0, 0.0, -51, -1)]
    [InlineData(1061, 2062, 1019, 2020, nameof(ModuleState.Curable), -62, -62, 0.0, 0.0, -62, -62)]
    [InlineData(1739, 2740, 1019, 2020, nameof(ModuleState.Curable), 10, 10, 0.0, 0.0, 10, 10)]
    [InlineData(1003, 2004, 0, 2020, nameof(ModuleState.OnModule), -4, -4, null, 0.0, 0, 0)]
    [InlineData(3, 1004, 1019, 2020, nameof(ModuleState.OnModule), -4, -4, 0.0, 0.0, 0, 0)]
    [InlineData(999, 2249, 1019, 2020, nameof(ModuleState.OnModule), 0, 1, 0.0, 0.0, 0, 0)]
    public void Each_edge_is_held_to_its_line_and_the_least_shift_is_found(
        double left, double right, double bottom, double top, string state, double leftToLine, double rightToLine, double? sill, double? head, double moveLeft, double moveRight)
    {
        var check = Assert.Single(LaidOut(OpeningPolicy.Keep, (left, right, bottom, top)).Openings).Check!;

        Assert.Equal(state, check.State.ToString());
        Assert.Equal((leftToLine, rightToLine, sill, head), (check.Deviation!.Left.Mm, check.Deviation.Right.Mm, check.Deviation.Sill?.Mm, check.Deviation.Head?.Mm));
        Assert.Equal((moveLeft, moveRight), (check.MoveLeft.Mm, check.MoveRight.Mm));
    }

    /// <summary>
    /// What the coordinator reads of the same ten, kept as drawn. Numbers are those worked out above, and:
    /// 2. The lintel lies on 2270, 2270 - 2030 = 240 over the head: a seat of 2030 - 2020 - 1 = 9 is no piece. Open over the head, less a bed joint of 1, 239 x 1001 mm, and
    /// 1029 - 1019 - 1 = 9 x 1001 mm under the sill: 0.23924 + 0.00901 = 0.2482 m2.
    /// 3. The lintel lies on 2020: 10 over the head, open 9 x 1001 mm = 0.0090 m2. The sill, under a course's top, cuts that course: 1009 - 20 - 3 x 250 = 239 high, nothing is open.
    /// 9. A pier of 3: 249 - 3 = 246 to the least; the lintel bears on the same 3 in place of 200.
    /// </summary>
    [Theory]
    [InlineData(999, 2000, 1019, 2020)]
    [InlineData(1009, 2010, 1029, 2030, "moved by -10 mm it stands on it", "240 mm under its lintel", "moved by -10 mm it does", "0.2482 m2 are left")]
    [InlineData(989, 1990, 1009, 2010, "moved by +10 mm it stands on it", "10 mm under its lintel", "moved by +10 mm it does", "0.0090 m2 are left")]
    [InlineData(999, 1950, 1019, 2020, "widened by 50 mm it stands on it")]
    [InlineData(1050, 2001, 1019, 2020, "with its left jamb moved by -51 mm and widened by 50 mm it stands on it")]
    [InlineData(1061, 2062, 1019, 2020, "moved by -62 mm it stands on it")]
    [InlineData(1739, 2740, 1019, 2020, "moved by +10 mm it stands on it")]
    [InlineData(1003, 2004, 0, 2020)]
    [InlineData(3, 1004, 1019, 2020, "A pier of 3 mm is under the least pier of 249 mm: 246 mm more would do, 249 mm is the next", "bears on 3 mm only; 200 mm are asked for")]
    [InlineData(999, 2249, 1019, 2020)]
    public void Findings_say_what_was_worked_out(double left, double right, double bottom, double top, params string[] told)
    {
        string[] codes = ["opening-off-module", "head-off-course", "sill-off-course", "outline-not-filled", "pier-short", "bearing-short"];
        var findings = LaidOut(OpeningPolicy.Keep, (left, right, bottom, top)).Findings;
        Assert.All(findings, finding => Assert.Contains(finding.Code.Id, codes, StringComparer.Ordinal));
        Assert.Equal(told.Length, findings.Length);
        Assert.All(findings.Zip(told), pair => Assert.Contains(pair.Second, pair.First.Message, StringComparison.Ordinal));
    }

    /// <summary>The second opening of the table, moved: the layout's own shift is the cure, and nothing stands in its way.</summary>
    [Fact]
    public void A_shift_that_was_made_is_the_cure()
    {
        var check = LaidOut(OpeningPolicy.Move, (1009, 2010, 1029, 2030)).Openings[0].Check!;
        Assert.Equal((ModuleState.Cured, -10d, -10d, null), (check.State, check.MoveLeft.Mm, check.MoveRight.Mm, check.WhyNot));
    }

    /// <summary>
    /// 1739 to 2740 and 2990 to 4000 in a wall of 4249: the shift of +10 would leave a pier of 2990 - 2750 = 240 under the least of 249, and the neighbour, whose
    /// own pier at the end is 249, can't give way. Said whether openings are kept or moved.
    /// </summary>
    [Theory]
    [InlineData(OpeningPolicy.Keep)]
    [InlineData(OpeningPolicy.Move)]
    public void A_shift_that_a_pier_forbids_is_no_cure(OpeningPolicy policy)
    {
        var wall = WallSketch.Straight(Mm(4249), Mm(2519), Mm(240), (1739, 2740, 1019, 2020), (2990, 4000, 1019, 2020));
        var check = WallSketch.LayOut(wall, Rules(policy)).Openings[0].Check!;
        Assert.Equal((ModuleState.Stuck, 10d, 10d), (check.State, check.MoveLeft.Mm, check.MoveRight.Mm));
        Assert.Contains("a pier of 240 mm would be left", check.WhyNot, StringComparison.Ordinal);
    }

    /// <summary>A recess has no state on the module; a gap of the wall's own body keeps its place.</summary>
    [Fact]
    public void What_nobody_may_move_and_what_is_not_coursed_around_is_said()
    {
        var wall = WallSketch.Straight(Mm(5999), Mm(2519), Mm(240), (1009, 2010, 1019, 2020), (3009, 4010, 1019, 2020));
        wall = wall with { Openings = [wall.Openings[0] with { Kind = OpeningKind.Recess }, wall.Openings[1] with { IsFixed = true }] };
        Assert.Equal([ModuleState.NotCoursed, ModuleState.Fixed], WallSketch.LayOut(wall, Rules(OpeningPolicy.Keep)).Openings.Select(opening => opening.Check!.State));
    }

    private static WallLayout LaidOut(OpeningPolicy policy, params (double Left, double Right, double Bottom, double Top)[] openings) =>
        WallSketch.LayOut(WallSketch.Straight(Mm(5999), Mm(2519), Mm(240), openings), Rules(policy));

    private static LayoutRules Rules(OpeningPolicy policy) => LayoutRules.For(
        BuiltInRuleSets.Get("none") with { Datum = Datum.Start }, BuiltInCatalogs.Get("aac-mm"), policy);

    private static Length Mm(double mm) => Length.FromMm(mm);
}
