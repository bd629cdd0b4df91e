using IfcCourser.Catalogs;
using IfcCourser.Findings;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Tests.Support;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Tests.Runs;

/// <summary>What is said of heights: aac-mm lays 249 mm courses with 1 mm joints on a bed of 20 mm; walls of 19 + 250 n are whole.</summary>
public sealed class HeightFindingsTests
{
    private static readonly LayoutRules _rules = LayoutRules.For(BuiltInRuleSets.Get("none"), BuiltInCatalogs.Get("aac-mm"), OpeningPolicy.Keep);

    /// <summary>2700 - 20 - 10 x 250 = 180; 10 courses take 2519, 11 take 2769.</summary>
    [Fact]
    public void A_ripped_course_is_named_with_the_heights_that_take_whole_courses()
    {
        var finding = Of(Wall(2700), FindingCodes.HeightOffCourse);
        Assert.Equal("Course 11 is ripped to 180 mm; a wall 2519 mm or 2769 mm high takes whole courses", finding.Message);
        Assert.Equal((Severity.Note, 11), (finding.Severity, finding.At?.Course));
    }

    [Fact]
    public void Two_rips_are_named_together() => Assert.Equal(
        "Courses 10 and 11 are ripped to 149 mm and 150 mm; a wall 2519 mm or 2769 mm high takes whole courses",
        Of(Wall(2570), FindingCodes.HeightOffCourse).Message);

    [Fact]
    public void A_rest_left_to_mortar_is_a_warning_with_the_heights_that_would_do()
    {
        var finding = Of(Wall(2785), FindingCodes.OutlineNotFilled);
        Assert.Equal("16 mm are left open above the last course; a wall 2769 mm or 3019 mm high takes whole courses", finding.Message);
        Assert.Equal(Severity.Warning, finding.Severity);
    }

    [Fact]
    public void The_head_gap_of_a_wall_that_does_not_carry_is_a_note()
    {
        var finding = Of(Wall(2789) with { LoadBearing = false }, FindingCodes.OutlineNotFilled);
        Assert.Equal("The wall does not carry: a head gap of 20 mm is left open above its last course", finding.Message);
        Assert.Equal(Severity.Note, finding.Severity);
    }

    /// <summary>Bed 15, the least rip 100.</summary>
    [Fact]
    public void A_wall_lower_than_a_course_is_skipped_with_the_height_that_it_needs()
    {
        var layout = WallSketch.LayOut(WallSketch.Alone(Wall(112)), _rules);
        Assert.Empty(layout.Walls);
        Assert.Equal("The wall is 112 mm high, too low for a bed and a course, which take 115 mm", layout.Skipped.Single().Reason.Message);
    }

    /// <summary>
    /// Steps that suit mortared units 238 high on 250, beds of 6 to 15: up to 9 between the beds, and 250 less that; without
    /// the low units there is nothing in between.
    /// </summary>
    [Fact]
    public void A_step_that_lines_do_not_suit_is_named_with_those_that_they_would()
    {
        var catalog = BuiltInCatalogs.Get("octametric") with { OtherHeights = [] };
        var model = new CorpusModel(UnitSystem.Metric);
        foreach (var line in new[] { "wall A 2490 x 2500 x 240", "wall B 2490 x 2500 x 240 base 62", "corner A B" })
        {
            model.Read(line);
        }

        var layout = WallSketch.LayOut(model.Model, LayoutRules.For(BuiltInRuleSets.Get("none"), catalog, OpeningPolicy.Keep));
        var finding = Assert.Single(layout.Findings);
        Assert.Equal(FindingCodes.SlabStep, finding.Code);
        Assert.Equal("A (#10) and B (#11) meet with bases 62 mm apart and can't share course lines; a step of 9 mm or 241 mm would do", finding.Message);
        Assert.Equal(JunctionHow.Butted, Assert.Single(layout.Junctions).How);
    }

    /// <summary>Over a step the lower wall's first course would leave a hole under the higher wall's; it runs through there.</summary>
    [Fact]
    public void The_lower_wall_runs_through_under_the_higher_walls_base()
    {
        var model = new CorpusModel(UnitSystem.Metric);
        foreach (var line in new[] { "wall A 3000 x 2769 x 240", "wall B 3000 x 2644 x 240 base 125", "corner A B" })
        {
            model.Read(line);
        }

        var layout = WallSketch.LayOut(model.Model, _rules);
        Assert.Equal(layout.Walls[0].Group, layout.Walls[1].Group);
        Assert.Equal(Length.FromMm(3000), layout.Walls[0].Courses[0].Spans[^1].Run.To);
        Assert.Equal(Length.FromMm(241), layout.Walls[1].Courses[0].Spans[0].Run.From);
    }

    private static Wall Wall(double height) => WallSketch.Straight(Length.FromMm(3000), Length.FromMm(height), Length.FromMm(240));

    private static Finding Of(Wall wall, FindingCode code) => WallSketch.LayOut(wall, _rules).Findings.Single(finding => finding.Code == code);
}
