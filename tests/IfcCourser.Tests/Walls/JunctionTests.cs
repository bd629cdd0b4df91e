using IfcCourser.Findings;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Tests.Walls;

/// <summary>
/// Walls A along x and B along y, A's right face on y = 0 and its outer corner at x = 4000. Outlines are worked out by hand
/// from the corner rule: at a corner both runs reach the other's outer face, at a tee the abutting run stops at the near face.
/// </summary>
public sealed class JunctionTests
{
    /// <summary>How programs end two bodies at one and the same corner: A 240 thick, B 175 thick.</summary>
    public static TheoryData<string> CornerEnds => ["A runs through", "B runs through", "mitred", "both overlap", "hole", "turned round"];

    [Theory]
    [MemberData(nameof(CornerEnds))]
    public void A_corner_is_the_same_however_the_bodies_end_there(string ends)
    {
        var text = new ModelText();
        // B's faces stand at x = 3825 and x = 4000, A's at y = 0 and y = 240; B ends at y = 3000.
        var (a, b) = ends switch
        {
            "B runs through" => (3825.0, 0.0),
            "both overlap" => (4000.0, 0.0),
            "hole" => (3825.0, 240.0),
            _ => (4000.0, 240.0),
        };
        if (ends is "mitred")
        {
            text.Wall("A", text.Extruded(2500, [(0, 0), (4000, 0), (3825, 240), (0, 240)]));
            text.Wall("B", text.Extruded(2500, [(0, 0), (3000, 0), (3000, 175), (240, 175)]), 4000, 0, along: [0, 1, 0]);
        }
        else
        {
            text.Straight("A", a, 240, 2500);
            _ = ends is "turned round"
                ? text.Straight("B", 3000 - b, 175, 2500, 3825, 3000, along: [0, -1, 0])
                : text.Straight("B", 3000 - b, 175, 2500, 4000, b, along: [0, 1, 0]);
        }

        var model = text.Walls();

        var junction = Assert.Single(model.Junctions);
        Assert.Equal((JunctionKind.Corner, 0, 1, true), (junction.Kind, junction.First, junction.Second, junction.IsSquare));
        Assert.Equal((Mm(4000), Mm(3000)), (model.Walls[0].Frame.Length, model.Walls[1].Frame.Length));
        Assert.Equal((Mm(175), Mm(240)), (junction.FirstShare, junction.SecondShare));
        Assert.Equal(new JunctionPlace(JunctionSide.End, Mm(3825), Mm(4000)), junction.FirstPlace);
        var second = ends is "turned round"
            ? new JunctionPlace(JunctionSide.End, Mm(2760), Mm(3000))
            : new JunctionPlace(JunctionSide.Start, Mm(0), Mm(240));
        Assert.Equal(second, junction.SecondPlace);
        Assert.Equal((EndKind.Free, EndKind.Corner), (model.Walls[0].Start.Kind, model.Walls[0].End.Kind));
        Assert.Empty(model.Findings);
    }

    [Theory]
    [InlineData(240, 0)]
    [InlineData(120, 0)]
    [InlineData(0, 0)]
    [InlineData(243, 0)]
    [InlineData(252, 1)]
    public void A_tee_stops_at_the_near_face_whether_the_body_stops_short_or_runs_in(double from, int notes)
    {
        var text = new ModelText();
        text.Wall("Host", text.Box(0, 0, 0, 6000, 240, 2500));
        text.Wall("B", text.Box(0, 0, 0, 3000 - from, 115, 2500), 2115, from, along: [0, 1, 0]);

        var model = text.Walls();

        var junction = Assert.Single(model.Junctions);
        Assert.Equal((JunctionKind.Tee, 0, 1), (junction.Kind, junction.First, junction.Second));
        Assert.Equal((Mm(6000), Mm(2760)), (model.Walls[0].Frame.Length, model.Walls[1].Frame.Length));
        Assert.Equal(240, model.Walls[1].Frame.Origin.Y, 1e-6);
        Assert.Equal(new JunctionPlace(JunctionSide.Along, Mm(2000), Mm(2115)), junction.FirstPlace);
        Assert.Equal(new JunctionPlace(JunctionSide.Start, Mm(-240), Mm(0)), junction.SecondPlace);
        Assert.Equal((EndKind.Tee, EndKind.Free), (model.Walls[1].Start.Kind, model.Walls[1].End.Kind));
        Assert.Equal(notes, model.Findings.Count(finding => finding.Code == FindingCodes.GapClosed));
        Assert.Equal(notes, model.Findings.Length);
    }

    [Theory]
    [InlineData(270, 1)]
    [InlineData(530, 1)]
    [InlineData(560, 0)]
    public void From_20_to_300_mm_apart_is_a_near_miss(double from, int misses)
    {
        var text = new ModelText();
        text.Wall("Host", text.Box(0, 0, 0, 6000, 240, 2500));
        text.Wall("B", text.Box(0, 0, 0, 3000 - from, 115, 2500), 2115, from, along: [0, 1, 0]);
        var model = text.Walls();
        Assert.Empty(model.Junctions);
        Assert.Equal(Enumerable.Repeat(FindingCodes.NearMiss, misses), model.Findings.Select(finding => finding.Code));
        Assert.Equal(Mm(3000 - from), model.Walls[1].Frame.Length);
    }

    [Fact]
    public void Masonry_layers_are_trimmed_to_each_other_through_plaster_and_lining()
    {
        var text = new ModelText();
        // Host: 15 plaster, 240 block from y = 15 to 255, 15 plaster. B: 10 + 115 + 10 stops on the plaster at y = 270.
        text.Layers(text.Wall("Host", text.Box(0, 0, 0, 6000, 270, 2500), material: null), 0, true, ("Plaster", 15), ("Block", 240), ("Plaster", 15));
        text.Layers(text.Wall("B", text.Box(0, 0, 0, 2730, 135, 2500), 2135, 270, along: [0, 1, 0], material: null), 0, true, ("Plaster", 10), ("Block", 115), ("Plaster", 10));
        var model = text.Walls();
        Assert.Equal((Mm(2745), 255), (model.Walls[1].Frame.Length, Math.Round(model.Walls[1].Frame.Origin.Y, 6)));
        Assert.Equal(new JunctionPlace(JunctionSide.Along, Mm(2010), Mm(2125)), Assert.Single(model.Junctions).FirstPlace);
    }

    [Fact]
    public void Two_walls_that_pass_through_each_other_cross()
    {
        var text = new ModelText();
        text.Wall("A", text.Box(0, 0, 0, 6000, 240, 2500));
        text.Wall("B", text.Box(0, 0, 0, 4000, 240, 2500), 3240, -2000, along: [0, 1, 0]);
        var junction = Assert.Single(text.Walls().Junctions);
        Assert.Equal(JunctionKind.Cross, junction.Kind);
        Assert.Equal(new JunctionPlace(JunctionSide.Along, Mm(3000), Mm(3240)), junction.FirstPlace);
        Assert.Equal(new JunctionPlace(JunctionSide.Along, Mm(2000), Mm(2240)), junction.SecondPlace);
    }

    [Fact]
    public void A_wall_in_the_same_line_continues_and_meets_in_the_middle_of_the_gap()
    {
        var text = new ModelText();
        text.Straight("A", 3000, 240, 2500);
        text.Straight("B", 2996, 240, 2500, 3004);
        var model = text.Walls();
        Assert.Equal(JunctionKind.Continued, Assert.Single(model.Junctions).Kind);
        Assert.Equal((Mm(3002), Mm(2998)), (model.Walls[0].Frame.Length, model.Walls[1].Frame.Length));
        Assert.Equal((EndKind.Continued, EndKind.Continued), (model.Walls[0].End.Kind, model.Walls[1].Start.Kind));
    }

    [Fact]
    public void Two_leaves_side_by_side_do_not_meet()
    {
        var text = new ModelText();
        text.Straight("A", 4000, 115, 2500);
        text.Straight("B", 4000, 240, 2500, y: 115);
        var model = text.Walls();
        Assert.Empty(model.Junctions);
        Assert.Empty(model.Findings);
    }

    [Fact]
    public void A_wall_above_another_does_not_meet_it()
    {
        var text = new ModelText();
        text.Straight("Below", 4000, 240, 2500);
        text.Straight("Above", 4000, 240, 2500, 3760, 0, 2500, [0, 1, 0]);
        Assert.Empty(text.Walls().Junctions);
    }

    [Fact]
    public void Over_a_lower_partner_a_corner_keeps_the_bodys_own_end()
    {
        var text = new ModelText();
        // A stops on B's near face; B is 1000 high, A 2500: A reaches B's outer face only that far up.
        text.Wall("A", text.Box(0, 0, 0, 3825, 240, 2500));
        text.Wall("B", text.Box(0, 0, 0, 3000, 175, 1000), 4000, 0, along: [0, 1, 0]);
        var wall = text.Walls().Walls[0];
        Assert.Equal([(0, 0), (4000, 0), (4000, 1000), (3825, 1000), (3825, 2500), (0, 2500)], WallReaderTests.Points(wall));
    }

    [Fact]
    public void Where_two_walls_meet_an_end_from_both_sides_they_butt_against_it()
    {
        var text = new ModelText();
        text.Wall("A", text.Box(0, 0, 0, 4000, 240, 2500));
        text.Wall("Up", text.Box(0, 0, 0, 3000, 240, 2500), 4000, 240, along: [0, 1, 0]);
        text.Wall("Down", text.Box(0, 0, 0, 3000, 240, 2500), 3760, 0, along: [0, -1, 0]);
        var model = text.Walls();
        Assert.Equal([(JunctionKind.Tee, 0, 1), (JunctionKind.Tee, 0, 2)], model.Junctions.Select(j => (j.Kind, j.First, j.Second)));
        Assert.Equal([Mm(4000), Mm(3000), Mm(3000)], model.Walls.Select(wall => wall.Frame.Length));
        Assert.Empty(model.Findings);
    }

    [Fact]
    public void Where_two_walls_continue_each_other_a_third_butts_on_one_of_them()
    {
        var text = new ModelText();
        text.Straight("A", 3000, 240, 2500);
        text.Straight("B", 3000, 240, 2500, 3000);
        text.Wall("C", text.Box(0, 0, 0, 2760, 240, 2500), 3200, 240, along: [0, 1, 0]);
        var model = text.Walls();
        Assert.Equal(
            [(JunctionKind.Continued, 0, 1), (JunctionKind.Tee, 1, 2)],
            model.Junctions.Select(junction => (junction.Kind, junction.First, junction.Second)));
        Assert.Equal([Mm(3000), Mm(3000), Mm(2760)], model.Walls.Select(wall => wall.Frame.Length));
    }

    /// <summary>At 60 degrees B, 200 thick, takes 200 / sin 60 = 230.940 mm of A's run.</summary>
    [Fact]
    public void An_oblique_corner_measures_shares_along_the_run()
    {
        var text = new ModelText();
        text.Wall("A", text.Box(0, 0, 0, 4000, 200, 2500));
        text.Wall("B", text.Box(0, 0, 0, 3000, 200, 2500), 4000, 0, along: [-0.5, Math.Sqrt(0.75), 0]);
        var junction = Assert.Single(text.Walls().Junctions);
        Assert.Equal((JunctionKind.Corner, false), (junction.Kind, junction.IsSquare));
        Assert.Equal(230.940, junction.FirstShare.Mm, 1e-3);
        Assert.Equal(230.940, junction.SecondShare.Mm, 1e-3);
    }

    [Fact]
    public void A_wall_that_ends_in_front_of_its_hosts_door_is_reported()
    {
        var text = new ModelText();
        var host = text.Straight("Host", 6000, 240, 2500);
        text.Opening(host, "Door", text.Box(1900, -50, 0, 2900, 290, 2100), filling: "IFCDOOR");
        text.Straight("B", 2760, 115, 2500, 2115, 240, along: [0, 1, 0]);
        Assert.Equal(FindingCodes.TeeInOpening, Assert.Single(text.Walls().Findings).Code);
    }

    [Fact]
    public void Overlapping_runs_are_reported()
    {
        var text = new ModelText();
        text.Straight("A", 3000, 240, 2500);
        text.Straight("B", 3000, 240, 2500, 2500);
        Assert.Equal(FindingCodes.WallsOverlap, Assert.Single(text.Walls().Findings).Code);
    }

    private static Length Mm(double mm) => Length.FromMm(mm);
}
