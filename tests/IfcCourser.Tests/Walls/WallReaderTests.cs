using IfcCourser.Findings;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Tests.Walls;

public sealed class WallReaderTests
{
    [Theory]
    [InlineData(1, 0, 0, 1, 0)]
    [InlineData(1000, 0, 0, 0, 1)]
    [InlineData(304.8, 0, 0, -1, 0)]
    [InlineData(1, 30_000_000, -5_000_000, 0.8, 0.6)]
    [InlineData(1000, 30_000_000, 4_000_000, -0.6, 0.8)]
    public void A_straight_wall_is_its_length_height_and_thickness_wherever_it_stands(double unit, double east, double north, double x, double y)
    {
        var text = new ModelText(unit, east, north);
        text.Wall("A", text.Box(0, 0, 0, 4000, 240, 2500), 1000, 2000, 300, [x, y, 0]);

        var wall = Assert.Single(text.Walls().Walls);

        Assert.Equal([(0, 0), (4000, 0), (4000, 2500), (0, 2500)], Points(wall));
        Assert.Equal((Mm(4000), Mm(240)), (wall.Frame.Length, wall.Frame.Thickness));
        Assert.Equal((x, y), (Math.Round(wall.Frame.Direction.X, 9), Math.Round(wall.Frame.Direction.Y, 9)));
        // The left face is the one at y = 240 of the wall's own axes.
        Assert.Equal(east + 1000 - (240 * y), wall.Frame.Origin.X, 1e-6);
        Assert.Equal(north + 2000 + (240 * x), wall.Frame.Origin.Y, 1e-6);
        Assert.Equal(300, wall.Frame.Origin.Z, 1e-6);
        Assert.Equal(4 * 2.5 * 0.24, wall.Body.NetVolume, 1e-9);
    }

    [Fact]
    public void A_wall_without_a_body_is_skipped_with_that_reason()
    {
        var text = new ModelText();
        text.Add("IFCWALL('0wall00000000000000000',$,'A',$,$,$,$,$,$)");
        Assert.Equal(FindingCodes.NoBody, Assert.Single(text.Walls().Skipped).Reason.Code);
    }

    [Theory]
    [InlineData("Concrete Block", null)]
    [InlineData("Porenbeton PP2", null)]
    [InlineData("Metal - Stud Layer", "no-masonry-layer")]
    [InlineData("Gypsum block", "no-masonry-layer")]
    public void The_materials_name_decides_whether_a_wall_is_masonry(string material, string? reason)
    {
        var text = new ModelText();
        text.Wall("A", text.Box(0, 0, 0, 4000, 240, 2500), material: material);
        Assert.Equal(reason, text.Walls().Skipped.SingleOrDefault()?.Reason.Code.Id);
    }

    [Fact]
    public void With_all_walls_asked_for_the_whole_body_is_laid_out()
    {
        var text = new ModelText();
        text.Wall("A", text.Box(0, 0, 0, 4000, 240, 2500), material: "Timber");
        Assert.Single(text.Walls(new WallSelection { Walls = WallChoice.All, Width = WidthMatch.Any }).Walls);
    }

    [Theory]
    [InlineData(WidthMatch.Exact, 0)]
    [InlineData(WidthMatch.Nearest, 1)]
    [InlineData(WidthMatch.Any, 1)]
    public void A_width_that_no_unit_has_is_taken_only_when_asked_for(WidthMatch match, int laidOut)
    {
        var text = new ModelText();
        text.Wall("A", text.Box(0, 0, 0, 4000, 217, 2500));
        var model = text.Walls(new WallSelection { Width = match });
        Assert.Equal(laidOut, model.Walls.Length);
        Assert.Equal(1 - laidOut, model.Skipped.Count(wall => wall.Reason.Code == FindingCodes.WidthNotInCatalog));
    }

    [Fact]
    public void Only_exclude_and_storey_leave_walls_out_by_name_or_id()
    {
        var text = new ModelText();
        text.Straight("Wall 1", 4000, 240, 2500);
        text.Straight("Wall 2", 4000, 240, 2500, y: 3000);
        var only = text.Walls(new WallSelection { Width = WidthMatch.Any, Only = ["*1"] });
        var exclude = text.Walls(new WallSelection { Width = WidthMatch.Any, Exclude = ["Wall 10000000000000000"] });
        var storey = text.Walls(new WallSelection { Width = WidthMatch.Any, Storeys = ["Ground"] });
        Assert.Equal("Wall 1", Assert.Single(only.Walls, wall => wall.IsSelected).Identity.Name);
        Assert.Equal("Wall 2", Assert.Single(exclude.Walls, wall => wall.IsSelected).Identity.Name);
        Assert.DoesNotContain(storey.Walls, wall => wall.IsSelected);
    }

    /// <summary>Layers from the axis at y = 0: 15 + 240 + 60 mm. The block stands 15 to 255 mm to that side of the axis that the sense tells.</summary>
    [Theory]
    [InlineData(0, true, 255)]
    [InlineData(0, false, -15)]
    [InlineData(-157.5, true, 97.5)]
    [InlineData(157.5, false, 142.5)]
    public void The_masonry_layer_lies_where_offset_and_sense_say(double offset, bool positive, double leftFace)
    {
        var text = new ModelText();
        var (from, to) = positive ? (offset, offset + 315) : (offset - 315, offset);
        var wall = text.Wall("A", text.Box(0, from, 0, 4000, to, 2500), material: null);
        text.Layers(wall, offset, positive, ("Plaster", 15), ("Concrete Block", 240), ("Insulation", 60));

        var frame = Assert.Single(text.Walls().Walls).Frame;

        Assert.Equal(Mm(240), frame.Thickness);
        Assert.Equal(leftFace, frame.Origin.Y, 1e-6);
    }

    [Fact]
    public void Of_two_masonry_leaves_the_thicker_is_laid_out_and_the_other_named()
    {
        var text = new ModelText();
        var wall = text.Wall("A", text.Box(0, 0, 0, 4000, 400, 2500), material: null);
        text.Layers(wall, 0, true, ("Brick", 115), ("Insulation", 85), ("Concrete Block", 200));
        var read = Assert.Single(text.Walls().Walls);
        Assert.Equal((Mm(200), 400), (read.Frame.Thickness, Math.Round(read.Frame.Origin.Y, 6)));
        Assert.Contains("Brick", Assert.Single(read.Findings, f => f.Code == FindingCodes.SecondLeaf).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_gable_is_clipped_to_its_slopes()
    {
        var text = new ModelText();
        var left = text.Clipped(text.Box(0, 0, 0, 6000, 240, 4000), (0, 0, 1000), [-0.6, 0, 0.8]);
        text.Wall("A", text.Clipped(left, (6000, 0, 1000), [0.6, 0, 0.8]), kind: "Clipping");
        // The slopes rise 3 in 4: 2250 mm over the half run of 3000 mm.
        Assert.Equal([(0, 0), (6000, 0), (6000, 1000), (3000, 3250), (0, 1000)], Points(Assert.Single(text.Walls().Walls)));
    }

    [Fact]
    public void A_top_bevelled_across_the_thickness_stops_at_its_lower_edge_with_a_note()
    {
        var text = new ModelText();
        // Rises 1 in 1 across 240 mm: from 2260 to 2500.
        text.Wall("A", text.Clipped(text.Box(0, 0, 0, 4000, 240, 2500), (0, 240, 2500), [0, -Math.Sqrt(0.5), Math.Sqrt(0.5)]), kind: "Clipping");
        var wall = Assert.Single(text.Walls().Walls);
        var top = wall.Outline.Max(point => point.Z).Mm;
        Assert.Equal(2260, top, 1e-3);
        Assert.Contains(wall.Findings, finding => finding.Code == FindingCodes.BevelledAcross);
    }

    [Fact]
    public void Slanted_ends_reach_as_far_as_their_longer_face()
    {
        var text = new ModelText();
        text.Wall("A", text.Extruded(2500, [(0, 0), (4000, 0), (3760, 240), (240, 240)]));
        Assert.Equal([(0, 0), (4000, 0), (4000, 2500), (0, 2500)], Points(Assert.Single(text.Walls().Walls), round: 3));
    }

    [Fact]
    public void A_stepped_wall_extruded_across_its_thickness_keeps_its_steps()
    {
        var text = new ModelText();
        // Drawn in elevation: x along, y up, extruded away from the viewer.
        var axes = text.Axes(0, 0, 0, [1, 0, 0], [0, -1, 0]);
        text.Wall("A", text.Extruded(240, [(0, 0), (4000, 0), (4000, 1500), (2000, 1500), (2000, 2500), (0, 2500)], axes));
        Assert.Equal([(0, 0), (4000, 0), (4000, 1500), (2000, 1500), (2000, 2500), (0, 2500)], Points(Assert.Single(text.Walls().Walls)));
    }

    [Fact]
    public void Leaning_and_round_bodies_are_skipped_each_with_its_reason()
    {
        var leaning = new ModelText();
        var profile = leaning.Add($"IFCARBITRARYCLOSEDPROFILEDEF(.AREA.,$,#{leaning.Polyline((0, 0), (4000, 0), (4000, 240), (0, 240))})");
        leaning.Wall("A", leaning.Add($"IFCEXTRUDEDAREASOLID(#{profile},#{leaning.Axes(0, 0, 0)},#{leaning.Direction(0, 0.6, 0.8)},2500.)"));
        Assert.Equal(FindingCodes.FacesNotUpright, Assert.Single(leaning.Walls().Skipped).Reason.Code);

        var round = new ModelText();
        var circle = round.Add($"IFCCIRCLEPROFILEDEF(.AREA.,$,#{round.Add($"IFCAXIS2PLACEMENT2D(#{round.Point(0, 0)},$)")},1000.)");
        round.Wall("A", round.Add($"IFCEXTRUDEDAREASOLID(#{circle},#{round.Axes(0, 0, 0)},#{round.Direction(0, 0, 1)},2500.)"));
        Assert.Equal(FindingCodes.NoParallelFaces, Assert.Single(round.Walls().Skipped).Reason.Code);
    }

    [Fact]
    public void A_wall_drawn_twice_is_laid_out_once()
    {
        var text = new ModelText();
        text.Straight("A first", 4000, 240, 2500);
        text.Straight("B again", 4000, 240, 2500);
        var model = text.Walls();
        Assert.Equal("A first", Assert.Single(model.Walls).Identity.Name);
        Assert.Equal(FindingCodes.CoincidentWall, Assert.Single(model.Skipped).Reason.Code);
    }

    [Fact]
    public void Low_short_and_stubby_walls_are_skipped_each_with_its_reason()
    {
        var text = new ModelText();
        text.Straight("low", 4000, 240, 90);
        text.Straight("short", 90, 60, 2500, y: 2000);
        var taken = text.Wall("void", text.Box(0, 0, 0, 1000, 240, 2500), y: 9000);
        text.Opening(taken, "all", text.Box(-10, -10, -10, 1010, 250, 2510), y: 9000);
        var reasons = text.Walls().Skipped.Select(wall => wall.Reason.Code).ToList();
        Assert.Equal([FindingCodes.LowerThanOneCourse, FindingCodes.ShorterThanLeastPiece, FindingCodes.OpeningTakesWall], reasons);
    }

    [Fact]
    public void The_order_of_instances_means_nothing()
    {
        static WallModel Read(bool backwards)
        {
            var text = new ModelText { Backwards = backwards };
            var wall = text.Straight("A", 4000, 240, 2500);
            text.Straight("B", 3000, 240, 2500, 3760, 240, along: [0, 1, 0]);
            text.Opening(wall, "W", text.Box(1000, -50, 900, 2000, 290, 2100), filling: "IFCWINDOW");
            return text.Walls();
        }

        var (forwards, backwards) = (Read(false), Read(true));
        Assert.Equal(2, forwards.Walls.Length);
        foreach (var wall in forwards.Walls)
        {
            var other = backwards.Walls.Single(same => string.Equals(same.Identity.Name, wall.Identity.Name, StringComparison.Ordinal));
            Assert.Equal((wall.Frame, wall.Start.Kind, wall.End.Kind), (other.Frame, other.Start.Kind, other.End.Kind));
            Assert.Equal(wall.Outline, other.Outline);
            Assert.Equal(wall.Openings.Select(opening => opening.Model), other.Openings.Select(opening => opening.Model));
        }
    }

    internal static IEnumerable<(double S, double Z)> Points(Wall wall, int round = 6) =>
        wall.Outline.Select(point => (Math.Round(point.S.Mm, round), Math.Round(point.Z.Mm, round)));

    private static Length Mm(double mm) => Length.FromMm(mm);
}
