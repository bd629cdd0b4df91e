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

    private static ElevationRect Rect(double left, double right, double bottom, double top) =>
        new(Length.FromMm(left), Length.FromMm(right), Length.FromMm(bottom), Length.FromMm(top));
}
