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
        text.Wall("A", text.Box(0, 0, 0, 6000, 240, 2500));
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

    /// <summary>
    /// A lining of 12.5 mm stands on the near face of a wall of 240 mm, y = 240 to 252.5, and a partition is drawn through it to
    /// the wall: it stops at the lining, y = 252.5, as high as that stands, whichever of the two is named first.
    /// </summary>
    [Theory]
    [InlineData("A", "B", 2500)]
    [InlineData("B", "A", 2500)]
    [InlineData("A", "B", 1200)]
    [InlineData("B", "A", 1200)]
    public void An_end_stops_at_the_lining_in_front_of_the_wall_it_is_drawn_to(string wall, string lining, double height)
    {
        var text = new ModelText();
        text.Wall(wall, text.Box(0, 0, 0, 6000, 240, 2500));
        text.Wall(lining, text.Box(0, 0, 0, 6000, 12.5, height), 0, 240);
        text.Wall("C", text.Box(0, 0, 0, 2760, 115, 2500), 2115, 240, along: [0, 1, 0]);

        var model = text.Walls();

        var partition = model.Walls[2];
        if (height < 2500)
        {
            Assert.Equal(2, model.Junctions.Length);
            Assert.Equal(
                [(12.5, 0), (2760, 0), (2760, 2500), (0, 2500), (0, 1200), (12.5, 1200)],
                partition.Outline.Select(point => (point.S.Mm, point.Z.Mm)));
            return;
        }

        Assert.Equal(lining, model.Walls[Assert.Single(model.Junctions).First].Identity.Name);
        Assert.Equal((Mm(2747.5), 252.5), (partition.Frame.Length, Math.Round(partition.Frame.Origin.Y, 6)));
    }

    [Theory]
    [InlineData(270, 1)]
    [InlineData(530, 1)]
    [InlineData(560, 0)]
    public void From_20_to_300_mm_apart_is_a_near_miss(double from, int misses)
    {
        var text = new ModelText();
        text.Wall("A", text.Box(0, 0, 0, 6000, 240, 2500));
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
        // A: 15 plaster, 240 block from y = 15 to 255, 15 plaster. B: 10 + 115 + 10 stops on the plaster at y = 270.
        text.Layers(text.Wall("A", text.Box(0, 0, 0, 6000, 270, 2500), material: null), 0, true, ("Plaster", 15), ("Block", 240), ("Plaster", 15));
        text.Layers(text.Wall("B", text.Box(0, 0, 0, 2730, 135, 2500), 2135, 270, along: [0, 1, 0], material: null), 0, true, ("Plaster", 10), ("Block", 115), ("Plaster", 10));
        var model = text.Walls();
        Assert.Equal((Mm(2745), 255), (model.Walls[1].Frame.Length, Math.Round(model.Walls[1].Frame.Origin.Y, 6)));
        Assert.Equal(new JunctionPlace(JunctionSide.Along, Mm(2010), Mm(2125)), Assert.Single(model.Junctions).FirstPlace);
    }

    /// <summary>The host's block lies behind 60 of insulation: the abutting wall, which stops on that, goes on to the block.</summary>
    [Fact]
    public void A_wall_that_stops_on_a_thick_lining_goes_on_to_the_block_behind_it()
    {
        var text = new ModelText();
        text.Layers(text.Wall("A", text.Box(0, 0, 0, 6000, 300, 2500), material: null), 0, true, ("Block", 240), ("Insulation", 60));
        text.Straight("B", 2700, 115, 2500, 2115, 300, along: [0, 1, 0]);
        Assert.Equal(Mm(2760), text.Walls().Walls[1].Frame.Length);
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
        // Both ends are cut along the other's faces: 200 cot 60 = 115.470 from face to face.
        Assert.Equal(115.470, Math.Abs(junction.FirstPlace.Slant.Mm), 1e-3);
        Assert.Equal(115.470, Math.Abs(junction.SecondPlace.Slant.Mm), 1e-3);
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

    /// <summary>The larger wall keeps its run, the other ends where it begins, and the two continue each other.</summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void What_two_walls_in_line_share_is_laid_once(bool turnedRound)
    {
        var text = new ModelText();
        text.Straight("A", 3000, 240, 2500);
        _ = turnedRound ? text.Straight("B", 3500, 240, 2500, 6000, 240, along: [-1, 0, 0]) : text.Straight("B", 3500, 240, 2500, 2500);
        var model = text.Walls();
        Assert.Equal([Mm(2500), Mm(3500)], model.Walls.Select(wall => wall.Frame.Length));
        Assert.Equal(JunctionKind.Continued, Assert.Single(model.Junctions).Kind);
        var finding = Assert.Single(model.Findings);
        Assert.Equal(FindingCodes.WallsOverlap, finding.Code);
        Assert.Equal(["A000000000000000000000", "B000000000000000000000"], finding.At!.Walls);
    }

    /// <summary>A is 400 high over 4000; B, 1000 x 2500, stands in its middle: A's upper part is free, B stands on it.</summary>
    [Fact]
    public void A_high_wall_in_the_place_of_a_low_one_stands_on_it()
    {
        var text = new ModelText();
        text.Straight("A", 10000, 240, 400);
        text.Straight("B", 1000, 240, 2500, 1500);
        var model = text.Walls();
        Assert.Equal([(0, 0), (10000, 0), (10000, 400), (0, 400)], WallReaderTests.Points(model.Walls[0]));
        Assert.Equal((400, Mm(2100)), (model.Walls[1].Frame.Origin.Z, model.Walls[1].Outline.Max(point => point.Z)));
    }

    [Fact]
    public void A_wall_in_the_opening_of_another_is_no_overlap()
    {
        var text = new ModelText();
        var wall = text.Straight("A", 4000, 240, 2500);
        text.Opening(wall, "O", text.Box(1000, -50, 0, 2000, 290, 2100));
        text.Straight("B", 1000, 240, 2100, 1000);
        var model = text.Walls();
        Assert.Equal(2, model.Walls.Length);
        Assert.Empty(model.Findings);
    }

    /// <summary>A partition that runs through a lining of 50 into the wall behind it: the lining is laid around it.</summary>
    [Fact]
    public void A_wall_that_runs_through_a_lining_to_turn_a_corner_interrupts_the_lining()
    {
        var text = new ModelText();
        // Main wall along x to x = 4000, lining before it over the whole length and beyond, partition at its end.
        text.Wall("A", text.Box(0, 0, 0, 4000, 240, 2500));
        text.Wall("B", text.Box(0, 0, 0, 5000, 50, 2500), 0, 240);
        text.Wall("C", text.Box(240, 0, 0, 3000, 115, 2500), 4000, 0, along: [0, 1, 0]);
        var model = text.Walls();
        Assert.Equal(JunctionKind.Corner, Assert.Single(model.Junctions).Kind);
        Assert.Equal(FindingCodes.WallsOverlap, Assert.Single(model.Findings).Code);
        var lining = model.Walls[1];
        Assert.Equal((Mm(3885), Mm(4000)), (Assert.Single(lining.Openings).Model.Left, lining.Openings[0].Model.Right));
    }

    /// <summary>C turns a corner with A below 1000 and butts on B above: both hold, at their heights.</summary>
    [Fact]
    public void A_corner_below_and_a_tee_above_hold_at_one_end()
    {
        var text = new ModelText();
        text.Wall("A", text.Box(0, 0, 0, 4000, 240, 1000));
        text.Wall("B", text.Box(0, 0, 1000, 8000, 240, 2500));
        text.Wall("C", text.Box(240, 0, 0, 3000, 175, 2500), 4000, 0, along: [0, 1, 0]);
        var model = text.Walls();
        Assert.Equal(
            [(JunctionKind.Corner, 0, 2), (JunctionKind.Tee, 1, 2)], model.Junctions.Select(junction => (junction.Kind, junction.First, junction.Second)));
        Assert.Equal([(0, 0), (3000, 0), (3000, 2500), (240, 2500), (240, 1000), (0, 1000)], WallReaderTests.Points(model.Walls[2]));
    }

    /// <summary>A low wall on the other side does not turn a high corner into two tees.</summary>
    [Fact]
    public void A_corner_twice_as_high_as_the_wall_on_the_other_side_stays_one()
    {
        var text = new ModelText();
        text.Wall("A", text.Box(0, 0, 0, 4000, 240, 2500));
        text.Wall("B", text.Box(0, 0, 0, 3000, 240, 2500), 4000, 240, along: [0, 1, 0]);
        text.Wall("C", text.Box(0, 0, 0, 3000, 240, 900), 3760, 0, along: [0, -1, 0]);
        Assert.Equal(
            [(JunctionKind.Corner, 0, 1), (JunctionKind.Tee, 0, 2)],
            text.Walls().Junctions.Select(junction => (junction.Kind, junction.First, junction.Second)));
    }

    /// <summary>A and its lining B both meet the end of C: the outer one turns the corner, the lining butts.</summary>
    [Fact]
    public void Of_two_walls_that_leave_an_end_to_one_side_the_outer_turns_the_corner()
    {
        var text = new ModelText();
        // C's body stops in A, 15 short of the lining.
        text.Wall("A", text.Box(0, 0, 0, 4000, 60, 2500));
        text.Wall("B", text.Box(0, 0, 0, 4000, 50, 2500), 0, 60);
        text.Wall("C", text.Box(45, 0, 0, 3000, 240, 2500), 4240, 0, along: [0, 1, 0]);
        var model = text.Walls();
        Assert.Equal(
            [(JunctionKind.Corner, 0, 2), (JunctionKind.Tee, 2, 1)],
            model.Junctions.Select(junction => (junction.Kind, junction.First, junction.Second)));
        Assert.Equal([Mm(4240), Mm(4000), Mm(3000)], model.Walls.Select(wall => wall.Frame.Length));
    }

    /// <summary>
    /// B, 100 thick, leaves A, 240 thick, at 60 degrees from (3000, 0). Its left face passes A's near face y = 240 after
    /// (240 - 50) / sin 60 = 219.393 mm, its right face after 240 / sin 60 = 277.128 mm: 57.735 = 100 cot 60 farther.
    /// </summary>
    [Fact]
    public void An_oblique_tee_reaches_as_far_as_its_longer_face()
    {
        var text = new ModelText();
        text.Wall("A", text.Box(0, 0, 0, 6000, 240, 2500));
        text.Wall("B", text.Box(0, 0, 0, 3000, 100, 2500), 3000, 0, along: [0.5, Math.Sqrt(0.75), 0]);
        var model = text.Walls();
        Assert.Equal((JunctionKind.Tee, 0, 1), (model.Junctions[0].Kind, model.Junctions[0].First, model.Junctions[0].Second));
        var wall = model.Walls[1];
        Assert.Equal(3000 - 219.393, wall.Frame.Length.Mm, 1e-3);
        Assert.Equal(57.735, wall.Start.Slant.Mm, 1e-3);
        Assert.Equal(Length.Zero, wall.End.Slant);
        var finding = Assert.Single(wall.Findings, finding => finding.Code == FindingCodes.EndOnSlant);
        Assert.StartsWith("The end is cut on a slant: its left face is 57.7 mm", finding.Message, StringComparison.Ordinal);
        Assert.Equal(Length.Zero, finding.At!.S);
    }

    /// <summary>A's body stops on B's near face below 1500 and on its axis above: both go on to B's outer face.</summary>
    [Fact]
    public void Every_step_of_an_end_that_stops_in_the_other_wall_goes_on_to_the_corner()
    {
        var text = new ModelText();
        var axes = text.Axes(0, 240, 0, [1, 0, 0], [0, -1, 0]);
        text.Wall("A", text.Extruded(240, [(0, 0), (3825, 0), (3825, 1500), (3910, 1500), (3910, 2500), (0, 2500)], axes));
        text.Wall("B", text.Box(0, 0, 0, 3000, 175, 2500), 4000, 0, along: [0, 1, 0]);
        Assert.Equal([(0, 0), (4000, 0), (4000, 2500), (0, 2500)], WallReaderTests.Points(text.Walls().Walls[0]));
    }

    /// <summary>The gable falls from 3000 to 1000 over 3825: at its end it is 1000 high, and so it stays to B's outer face.</summary>
    [Fact]
    public void A_sloping_top_is_as_high_in_the_corner_as_at_its_end()
    {
        var text = new ModelText();
        var axes = text.Axes(0, 240, 0, [1, 0, 0], [0, -1, 0]);
        text.Wall("A", text.Extruded(240, [(0, 0), (3825, 0), (3825, 1000), (0, 3000)], axes));
        text.Wall("B", text.Box(0, 0, 0, 3000, 175, 2500), 4000, 0, along: [0, 1, 0]);
        Assert.Equal([(0, 0), (4000, 0), (4000, 1000), (3825, 1000), (0, 3000)], WallReaderTests.Points(text.Walls().Walls[0]));
    }

    private static Length Mm(double mm) => Length.FromMm(mm);
}
