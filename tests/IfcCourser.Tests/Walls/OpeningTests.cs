using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Tests.Walls;

/// <summary>Openings of a wall 4000 long, 240 thick and 2500 high, its right face on y = 0.</summary>
public sealed class OpeningTests
{
    [Theory]
    [InlineData("IFCDOOR", OpeningKind.Door)]
    [InlineData("IFCWINDOW", OpeningKind.Window)]
    [InlineData(null, OpeningKind.Void)]
    public void What_fills_an_opening_decides_its_kind(string? filling, OpeningKind kind)
    {
        var text = new ModelText();
        var wall = text.Straight("A", 4000, 240, 2500, 700, 300);
        text.Opening(wall, "O", text.Box(1000, -50, 900, 2000, 290, 2100), 700, 300, filling: filling);

        var read = Assert.Single(text.Walls().Walls);

        var opening = Assert.Single(read.Openings);
        Assert.Equal((kind, Rect(1000, 2000, 900, 2100)), (opening.Kind, opening.Model));
        Assert.Null(opening.Outline);
        Assert.Equal((4 * 2.5 * 0.24) - (1 * 1.2 * 0.24), read.Body.NetVolume, 1e-9);
        Assert.Equal(4 * 2.5 * 0.24, read.Body.GrossVolume, 1e-9);
    }

    [Fact]
    public void A_recess_does_not_go_through_and_a_small_void_is_drilled()
    {
        var text = new ModelText();
        var wall = text.Straight("A", 4000, 240, 2500);
        text.Opening(wall, "Recess", text.Box(500, -10, 300, 1500, 120, 1300));
        text.Opening(wall, "Pipe", text.Box(2000, -10, 300, 2150, 250, 450));
        Assert.Equal([OpeningKind.Recess, OpeningKind.Drilled], Assert.Single(text.Walls().Walls).Openings.Select(opening => opening.Kind));
    }

    [Fact]
    public void An_opening_in_front_of_the_masonry_layer_is_left_out_and_one_before_its_lining_goes_through()
    {
        var text = new ModelText();
        var wall = text.Wall("A", text.Box(0, 0, 0, 4000, 300, 2500), material: null);
        text.Layers(wall, 0, true, ("Plaster", 60), ("Block", 240));
        text.Opening(wall, "Niche in plaster", text.Box(500, -10, 300, 1500, 50, 1300));
        text.Opening(wall, "Behind plaster", text.Box(2000, 60, 300, 3000, 310, 1300));
        var read = Assert.Single(text.Walls().Walls);
        Assert.Equal(("Behind plaster", OpeningKind.Void), (Assert.Single(read.Openings).Name, read.Openings[0].Kind));
        Assert.Equal(FindingCodes.OpeningMissesWall, Assert.Single(read.Findings).Code);
    }

    [Fact]
    public void What_lies_below_the_floor_or_beyond_the_end_is_not_measured()
    {
        var text = new ModelText();
        var wall = text.Straight("A", 4000, 240, 2500);
        text.Opening(wall, "Door", text.Box(1000, -50, -200, 2000, 290, 2100), filling: "IFCDOOR");
        text.Opening(wall, "Past the end", text.Box(3500, -50, 900, 4300, 290, 2100));
        Assert.Equal([Rect(1000, 2000, 0, 2100), Rect(3500, 4000, 900, 2100)], Assert.Single(text.Walls().Walls).Openings.Select(opening => opening.Model));
    }

    [Fact]
    public void Openings_that_miss_the_wall_are_noted_and_equal_ones_are_one()
    {
        var text = new ModelText();
        var wall = text.Straight("A", 4000, 240, 2500);
        text.Opening(wall, "Elsewhere", text.Box(5000, -50, 900, 6000, 290, 2100));
        text.Opening(wall, "Once", text.Box(1000, -50, 900, 2000, 290, 2100));
        text.Opening(wall, "Again", text.Box(1000, -50, 900, 2000, 290, 2100), filling: "IFCWINDOW");
        var read = Assert.Single(text.Walls().Walls);
        Assert.Equal(OpeningKind.Window, Assert.Single(read.Openings).Kind);
        Assert.Equal("Elsewhere0000000000000", Assert.Single(read.Findings, finding => finding.Code == FindingCodes.OpeningMissesWall).At?.Opening);
    }

    [Fact]
    public void A_gable_topped_opening_keeps_its_outline_in_its_rectangle()
    {
        var text = new ModelText();
        var wall = text.Straight("A", 4000, 240, 2500);
        var axes = text.Axes(0, 300, 0, [1, 0, 0], [0, -1, 0]);
        text.Opening(wall, "O", text.Extruded(400, [(1000, 0), (2000, 0), (2000, 1500), (1500, 2000), (1000, 1500)], axes));
        var opening = Assert.Single(Assert.Single(text.Walls().Walls).Openings);
        Assert.Equal(Rect(1000, 2000, 0, 2000), opening.Model);
        Assert.Equal(
            [(1000, 0), (2000, 0), (2000, 1500), (1500, 2000), (1000, 1500)],
            opening.Outline!.Value.Select(point => (point.S.Mm, point.Z.Mm)));
    }

    [Fact]
    public void A_hole_in_the_body_counts_as_an_opening()
    {
        var text = new ModelText();
        var profile = text.Add($"IFCARBITRARYPROFILEDEFWITHVOIDS(.AREA.,$,#{text.Polyline((0, 0), (4000, 0), (4000, 2500), (0, 2500))},(#{text.Polyline((1000, 900), (2000, 900), (2000, 2100), (1000, 2100))}))");
        text.Wall("A", text.Add($"IFCEXTRUDEDAREASOLID(#{profile},#{text.Axes(0, 240, 0, [1, 0, 0], [0, -1, 0])},#{text.Direction(0, 0, 1)},240.)"));
        var read = Assert.Single(text.Walls().Walls);
        Assert.Equal(Rect(1000, 2000, 900, 2100), Assert.Single(read.Openings).Model);
        Assert.Equal(4, read.Outline.Length);
    }

    [Fact]
    public void A_body_exported_without_its_voids_gets_them_back()
    {
        var text = new ModelText();
        // Drawn in elevation with a door notch and a window hole; both have their opening elements too.
        var outer = text.Polyline((0, 0), (500, 0), (500, 2100), (1500, 2100), (1500, 0), (4000, 0), (4000, 2500), (0, 2500));
        var profile = text.Add($"IFCARBITRARYPROFILEDEFWITHVOIDS(.AREA.,$,#{outer},(#{text.Polyline((2000, 900), (3000, 900), (3000, 2100), (2000, 2100))}))");
        var wall = text.Wall("A", text.Add($"IFCEXTRUDEDAREASOLID(#{profile},#{text.Axes(0, 240, 0, [1, 0, 0], [0, -1, 0])},#{text.Direction(0, 0, 1)},240.)"));
        text.Opening(wall, "Door", text.Box(500, 0, 0, 1500, 240, 2100), filling: "IFCDOOR");
        text.Opening(wall, "Window", text.Box(2000, 0, 900, 3000, 240, 2100), filling: "IFCWINDOW");
        var read = Assert.Single(text.Walls().Walls);
        Assert.Equal([(0, 0), (4000, 0), (4000, 2500), (0, 2500)], WallReaderTests.Points(read));
        Assert.Equal([OpeningKind.Door, OpeningKind.Window], read.Openings.Select(opening => opening.Kind));
        Assert.Equal([Rect(500, 1500, 0, 2100), Rect(2000, 3000, 900, 2100)], read.Openings.Select(opening => opening.Model));
        Assert.DoesNotContain(read.Findings, finding => finding.Code == FindingCodes.HoleInBody);
    }

    [Fact]
    public void Openings_move_with_the_run_when_a_corner_lengthens_it()
    {
        var text = new ModelText();
        // A stops on B's far face (x = 0) and is lengthened by B's 175 mm at its start.
        var wall = text.Straight("A", 3825, 240, 2500, 175);
        text.Wall("B", text.Box(0, 0, 0, 3000, 175, 2500), 175, 0, along: [0, 1, 0]);
        text.Opening(wall, "O", text.Box(1000, -50, 900, 2000, 290, 2100), 175);
        var read = text.Walls().Walls[0];
        Assert.Equal(Length.FromMm(4000), read.Frame.Length);
        Assert.Equal(Rect(1175, 2175, 900, 2100), Assert.Single(read.Openings).Model);
    }

    /// <summary>A semicircle of radius 500 over 1500: every point of the outline above it lies on the circle, within the chords' rise.</summary>
    [Fact]
    public void An_arched_opening_keeps_its_arch_in_its_rectangle()
    {
        var text = new ModelText();
        var wall = text.Straight("A", 4000, 240, 2500);
        var points = text.Add("IFCCARTESIANPOINTLIST2D(((1000.,0.),(2000.,0.),(2000.,1500.),(1500.,2000.),(1000.,1500.)))");
        var curve = text.Add($"IFCINDEXEDPOLYCURVE(#{points},(IFCLINEINDEX((1,2,3)),IFCARCINDEX((3,4,5)),IFCLINEINDEX((5,1))),.F.)");
        text.Opening(wall, "O", Upright(text, text.Add($"IFCARBITRARYCLOSEDPROFILEDEF(.AREA.,$,#{curve})")));
        var opening = Assert.Single(Assert.Single(text.Walls().Walls).Openings);
        Assert.Equal(Rect(1000, 2000, 0, 2000), opening.Model);
        var arch = opening.Outline!.Value.Where(point => point.Z.Mm > 1500).Select(point => (S: point.S.Mm - 1500, Z: point.Z.Mm - 1500)).ToList();
        Assert.True(arch.Count > 8);
        Assert.All(arch, point => Assert.Equal(500, Math.Sqrt((point.S * point.S) + (point.Z * point.Z)), 0.1));
    }

    [Fact]
    public void A_round_opening_has_the_square_around_it()
    {
        var text = new ModelText();
        var wall = text.Straight("A", 4000, 240, 2500);
        text.Opening(wall, "O", Upright(text, text.Add($"IFCCIRCLEPROFILEDEF(.AREA.,$,#{text.Add($"IFCAXIS2PLACEMENT2D(#{text.Point(2000, 1200)},$)")},400.)")));
        var opening = Assert.Single(Assert.Single(text.Walls().Walls).Openings);
        Assert.Equal(Rect(1600, 2400, 800, 1600), opening.Model);
        Assert.NotNull(opening.Outline);
    }

    [Fact]
    public void A_small_opening_in_a_niche_is_both()
    {
        var text = new ModelText();
        var wall = text.Straight("A", 4000, 240, 2500);
        var niche = text.Box(1000, -10, 300, 2000, 120, 1300);
        text.Opening(wall, "O", text.Add($"IFCBOOLEANRESULT(.UNION.,#{niche},#{text.Box(1350, 120, 650, 1650, 250, 950)})"));
        var openings = Assert.Single(text.Walls().Walls).Openings;
        Assert.Equal([(OpeningKind.Recess, Rect(1000, 2000, 300, 1300)), (OpeningKind.Void, Rect(1350, 1650, 650, 950))], openings.Select(opening => (opening.Kind, opening.Model)));
        Assert.Equal(2, openings.Select(opening => opening.GlobalId).Distinct(StringComparer.Ordinal).Count());
    }

    /// <summary>A rebate of 60 mm on each jamb: the mason's opening is as wide as its wider part, 1120.</summary>
    [Fact]
    public void A_rebated_opening_is_one_as_wide_as_its_rebate()
    {
        var text = new ModelText();
        var wall = text.Straight("A", 4000, 240, 2500);
        text.Opening(wall, "O", text.Add($"IFCBOOLEANRESULT(.UNION.,#{text.Box(1060, -10, 0, 2060, 80, 2000)},#{text.Box(1000, 80, 0, 2120, 250, 2000)})"));
        Assert.Equal((OpeningKind.Void, Rect(1000, 2120, 0, 2000)), Assert.Single(Assert.Single(text.Walls().Walls).Openings.Select(opening => (opening.Kind, opening.Model))));
    }

    [Fact]
    public void Niches_from_both_sides_with_masonry_between_them_are_no_opening()
    {
        var text = new ModelText();
        var wall = text.Straight("A", 4000, 240, 2500);
        text.Opening(wall, "O", text.Add($"IFCBOOLEANRESULT(.UNION.,#{text.Box(1000, -10, 300, 2000, 90, 1300)},#{text.Box(1000, 150, 300, 2000, 250, 1300)})"));
        Assert.Equal(OpeningKind.Recess, Assert.Single(Assert.Single(text.Walls().Walls).Openings).Kind);
    }

    [Fact]
    public void A_window_in_its_rough_opening_is_one_opening_of_the_rough_size()
    {
        var text = new ModelText();
        var wall = text.Straight("A", 4000, 240, 2500);
        text.Opening(wall, "Rough", text.Box(1000, -50, 900, 2000, 290, 2100));
        text.Opening(wall, "Window", text.Box(1020, -50, 920, 1980, 290, 2080), filling: "IFCWINDOW");
        var read = Assert.Single(text.Walls().Walls);
        Assert.Equal((OpeningKind.Window, Rect(1000, 2000, 900, 2100)), Assert.Single(read.Openings.Select(opening => (opening.Kind, opening.Model))));
        Assert.Equal(
            "IFCWINDOW Window and Rough share one void and are laid out as one opening.",
            Assert.Single(read.Findings, finding => finding.Code == FindingCodes.OpeningsMerged).Message);
    }

    [Fact]
    public void Voids_side_by_side_are_one_but_two_windows_side_by_side_stay_two()
    {
        var text = new ModelText();
        var wall = text.Straight("A", 6000, 240, 2500);
        text.Opening(wall, "Left", text.Box(500, -50, 900, 1000, 290, 2100));
        text.Opening(wall, "Right", text.Box(1002, -50, 900, 1500, 290, 2100));
        text.Opening(wall, "W1", text.Box(3000, -50, 900, 3500, 290, 2100), filling: "IFCWINDOW");
        text.Opening(wall, "W2", text.Box(3500, -50, 900, 4000, 290, 2100), filling: "IFCWINDOW");
        Assert.Equal(
            [Rect(500, 1500, 900, 2100), Rect(3000, 3500, 900, 2100), Rect(3500, 4000, 900, 2100)],
            Assert.Single(text.Walls().Walls).Openings.Select(opening => opening.Model));
    }

    [Fact]
    public void The_share_that_a_lining_has_of_a_window_is_not_reported()
    {
        var text = new ModelText();
        var wall = text.Wall("A", text.Box(0, 0, 0, 4000, 300, 2500), material: null);
        text.Layers(wall, 0, true, ("Plaster", 60), ("Block", 240));
        text.Opening(wall, "In plaster", text.Box(1000, -10, 900, 2000, 60, 2100));
        text.Opening(wall, "In block", text.Box(1000, 60, 900, 2000, 310, 2100));
        var read = Assert.Single(text.Walls().Walls);
        Assert.Equal("In block", Assert.Single(read.Openings).Name);
        Assert.Empty(read.Findings);
    }

    /// <summary>The void takes the last 500 over the whole height: the wall ends at 3500.</summary>
    [Fact]
    public void A_void_that_takes_a_whole_end_shortens_the_wall()
    {
        var text = new ModelText();
        var wall = text.Straight("A", 4000, 240, 2500);
        text.Opening(wall, "End", text.Box(3500, -50, -10, 4100, 290, 2600));
        text.Opening(wall, "Top", text.Box(-10, -50, 2300, 4100, 290, 2600));
        var read = Assert.Single(text.Walls().Walls);
        Assert.Equal([(0, 0), (3500, 0), (3500, 2300), (0, 2300)], WallReaderTests.Points(read));
        Assert.Empty(read.Openings);
        Assert.Equal(2, read.Findings.Count(finding => finding.Code == FindingCodes.OpeningCutsRim));
    }

    [Fact]
    public void A_void_that_takes_everything_is_a_reason_of_its_own()
    {
        var text = new ModelText();
        var wall = text.Straight("A", 4000, 240, 2500);
        text.Opening(wall, "All", text.Box(20, -50, -10, 3980, 290, 2600));
        Assert.Equal(FindingCodes.OpeningTakesWall, Assert.Single(text.Walls().Skipped).Reason.Code);
    }

    [Fact]
    public void Openings_of_the_whole_reach_the_walls_it_is_made_of()
    {
        var text = new ModelText();
        var whole = text.Add("IFCWALL('1whole00000000000000AA',$,'Whole',$,$,$,$,$,$)");
        var (left, right) = (text.Straight("L", 3000, 240, 2500), text.Straight("R", 3000, 240, 2500, 3000));
        text.Add($"IFCRELAGGREGATES('1agg0000000000000000AA',$,$,$,#{whole},(#{left},#{right}))");
        text.Opening(whole, "In the left one", text.Box(1000, -50, 900, 2000, 290, 2100));
        var model = text.Walls();
        Assert.Equal(["In the left one"], model.Walls[0].Openings.Select(opening => opening.Name), StringComparer.Ordinal);
        Assert.Empty(model.Walls[1].Openings);
        Assert.Empty(model.Walls[1].Findings);
        Assert.Equal(FindingCodes.MadeOfWalls, Assert.Single(model.Skipped).Reason.Code);
    }

    [Fact]
    public void A_window_that_stands_in_an_opening_fills_it_without_a_relation()
    {
        var text = new ModelText();
        var wall = text.Straight("A", 4000, 240, 2500);
        text.Opening(wall, "O", text.Box(1000, -50, 900, 2000, 290, 2100));
        text.Loose("IFCWINDOW", "W", text.Box(1010, 80, 910, 1990, 140, 2090));
        var read = Assert.Single(text.Walls().Walls);
        Assert.Equal((OpeningKind.Window, "IFCWINDOW W", Rect(1000, 2000, 900, 2100)), Assert.Single(read.Openings.Select(o => (o.Kind, o.Name!, o.Model))));
        Assert.Empty(read.Findings);
    }

    [Theory]
    [InlineData(0, 0, 1)]
    [InlineData(30_000_000, 0.6, 1)]
    public void A_door_in_the_masonry_is_reported_where_it_stands_and_not_cut(double east, double y, int reported)
    {
        var text = new ModelText(east: east);
        double[] along = [Math.Sqrt(1 - (y * y)), y, 0];
        text.Wall("A", text.Box(0, 0, 0, 4000, 240, 2500), along: along);
        text.Wall("B", text.Box(0, 0, 0, 4000, 240, 2500), y: 3000, along: along);
        text.Loose("IFCDOOR", "D", text.Box(1200, 90, 0, 2085, 150, 2010), along: along);
        var model = text.Walls();
        Assert.All(model.Walls, wall => Assert.Empty(wall.Openings));
        var finding = Assert.Single(model.Walls[0].Findings, finding => finding.Code == FindingCodes.DoorWithoutOpening);
        Assert.Equal((Length.FromMm(1200), Length.FromMm(0)), (finding.At!.S, finding.At.Z));
        Assert.Contains("IFCDOOR D, 885 mm wide and 2010 mm high", finding.Message, StringComparison.Ordinal);
        Assert.Equal(reported, model.Walls.Sum(wall => wall.Findings.Length));
    }

    /// <summary>The opening has no body; the window's size stands in its type: 1000 x 1200 from its placement at 1000, 900.</summary>
    [Fact]
    public void An_opening_without_a_body_takes_the_size_that_the_types_window_has()
    {
        var text = new ModelText();
        var wall = text.Straight("A", 4000, 240, 2500);
        var opening = text.Add("IFCOPENINGELEMENT('1open0000000000000000A',$,'O',$,$,$,$,$,.OPENING.)");
        text.Add($"IFCRELVOIDSELEMENT('1void0000000000000000A',$,$,$,#{wall},#{opening})");
        var window = text.Loose("IFCWINDOW", "W", null, 1000, 100, 900);
        text.Add($"IFCRELFILLSELEMENT('1fill0000000000000000A',$,$,$,#{opening},#{window})");
        var width = text.Add("IFCPROPERTYSINGLEVALUE('Width',$,IFCPOSITIVELENGTHMEASURE(1000.),$)");
        var height = text.Add("IFCPROPERTYSINGLEVALUE('Height',$,IFCPOSITIVELENGTHMEASURE(1200.),$)");
        var set = text.Add($"IFCPROPERTYSET('1pset0000000000000000A',$,'Sizes',$,(#{width},#{height}))");
        var type = text.Add($"IFCWINDOWTYPE('1type0000000000000000A',$,'T',$,$,(#{set}),$,$,$,.WINDOW.,.NOTDEFINED.,$,$)");
        text.Add($"IFCRELDEFINESBYTYPE('1rdt00000000000000000A',$,$,$,(#{window}),#{type})");
        var read = Assert.Single(text.Walls().Walls);
        Assert.Equal((OpeningKind.Window, Rect(1000, 2000, 900, 2100)), Assert.Single(read.Openings.Select(o => (o.Kind, o.Model))));
        Assert.Single(read.Findings, finding => finding.Code == FindingCodes.OpeningByFilling);
        Assert.Equal((4 * 2.5 * 0.24) - (1 * 1.2 * 0.24), read.Body.NetVolume, 1e-9);
    }

    private static int Upright(ModelText text, int profile) =>
        text.Add($"IFCEXTRUDEDAREASOLID(#{profile},#{text.Axes(0, 300, 0, [1, 0, 0], [0, -1, 0])},#{text.Direction(0, 0, 1)},400.)");

    private static ElevationRect Rect(double left, double right, double bottom, double top) =>
        new(Length.FromMm(left), Length.FromMm(right), Length.FromMm(bottom), Length.FromMm(top));
}
