using IfcCourser.Findings;
using IfcCourser.Walls;

namespace IfcCourser.Tests.Walls;

/// <summary>Bodies that lack a part of their thickness or of their run.</summary>
public sealed class PocketAndGapTests
{
    [Fact]
    public void A_pocket_in_one_face_where_another_wall_enters_is_laid_through()
    {
        var text = new ModelText();
        text.Wall("A", text.Extruded(2500, [(0, 0), (4000, 0), (4000, 240), (2200, 240), (2200, 100), (2000, 100), (2000, 240), (0, 240)]));
        var wall = Assert.Single(text.Walls().Walls);
        Assert.Equal([(0, 0), (4000, 0), (4000, 2500), (0, 2500)], WallReaderTests.Points(wall));
        Assert.Empty(wall.Openings);
        Assert.Contains(wall.Findings, finding => finding.Code == FindingCodes.PocketFilled);
    }

    [Fact]
    public void A_niche_in_one_face_is_a_recess()
    {
        var text = new ModelText();
        var niche = text.Box(1000, 100, 500, 2000, 300, 1500);
        text.Wall("A", text.Add($"IFCBOOLEANRESULT(.DIFFERENCE.,#{text.Box(0, 0, 0, 4000, 240, 2500)},#{niche})"), kind: "CSG");
        var wall = Assert.Single(text.Walls().Walls);
        var opening = Assert.Single(wall.Openings);
        Assert.Equal(OpeningKind.Recess, opening.Kind);
        Assert.Equal((1000, 2000, 500, 1500), (opening.Model.Left.Mm, opening.Model.Right.Mm, opening.Model.Bottom.Mm, opening.Model.Top.Mm));
        Assert.Contains(wall.Findings, finding => finding.Code == FindingCodes.HoleInBody);
    }

    /// <summary>Pieces of 1500 and 2000 with 500 between; the right one is 2000 high.</summary>
    [Fact]
    public void A_gap_between_two_pieces_is_an_opening_as_high_as_both()
    {
        var text = new ModelText();
        text.Wall("A", text.Add($"IFCBOOLEANRESULT(.UNION.,#{text.Box(0, 0, 0, 1500, 240, 2500)},#{text.Box(2000, 0, 0, 4000, 240, 2000)})"), kind: "CSG");
        var wall = Assert.Single(text.Walls().Walls);
        Assert.Equal([(0, 0), (4000, 0), (4000, 2000), (1500, 2000), (1500, 2500), (0, 2500)], WallReaderTests.Points(wall));
        var opening = Assert.Single(wall.Openings);
        Assert.Equal((OpeningKind.Void, true, 1500, 2000, 0, 2000), (opening.Kind, opening.IsFixed, opening.Model.Left.Mm, opening.Model.Right.Mm, opening.Model.Bottom.Mm, opening.Model.Top.Mm));
        Assert.Contains("500 mm", Assert.Single(wall.Findings, finding => finding.Code == FindingCodes.BodyInPieces).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_another_wall_runs_through_the_gap_there_is_a_crossing_and_no_opening()
    {
        var text = new ModelText();
        text.Wall("A", text.Add($"IFCBOOLEANRESULT(.UNION.,#{text.Box(0, 0, 0, 2000, 115, 2500)},#{text.Box(2240, 0, 0, 4000, 115, 2500)})"), kind: "CSG");
        text.Straight("B", 4000, 240, 2500, 2240, -2000, along: [0, 1, 0]);
        var model = text.Walls();
        Assert.All(model.Walls, wall => Assert.Empty(wall.Openings));
        Assert.DoesNotContain(model.Walls.SelectMany(wall => wall.Findings), finding => finding.Code == FindingCodes.BodyInPieces);
        var junction = Assert.Single(model.Junctions);
        // The wall that is cut yields, although it stands first in the file.
        Assert.Equal((JunctionKind.Cross, 1, 0), (junction.Kind, junction.First, junction.Second));
        Assert.Equal((2000, 2240), (junction.SecondPlace.From.Mm, junction.SecondPlace.To.Mm));
    }

    [Fact]
    public void A_piece_above_the_rest_is_left_out_and_told()
    {
        var text = new ModelText();
        text.Wall("A", text.Add($"IFCBOOLEANRESULT(.UNION.,#{text.Box(0, 0, 0, 4000, 240, 2500)},#{text.Box(0, 0, 2700, 4000, 240, 3200)})"), kind: "CSG");
        var wall = Assert.Single(text.Walls().Walls);
        Assert.Equal([(0, 0), (4000, 0), (4000, 2500), (0, 2500)], WallReaderTests.Points(wall));
        Assert.Contains("2 m2", Assert.Single(wall.Findings, finding => finding.Code == FindingCodes.PieceLeftOut).Message, StringComparison.Ordinal);
    }

    /// <summary>Two leaves 30 apart; the inner one stops 160 short of the outer one at both ends, and 200 below and above it.</summary>
    [Fact]
    public void Ends_that_step_back_layer_by_layer_are_filled_as_high_as_both_leaves_stand()
    {
        var text = new ModelText();
        var body = text.Add($"IFCBOOLEANRESULT(.UNION.,#{text.Box(0, 0, 0, 4000, 100, 2500)},#{text.Box(160, 130, 200, 3840, 300, 2300)})");
        text.Wall("A", body, kind: "CSG");
        var wall = Assert.Single(text.Walls().Walls);
        Assert.Equal([(0, 0), (4000, 0), (4000, 2100), (0, 2100)], WallReaderTests.Points(wall));
        Assert.Equal(200, wall.Frame.Origin.Z, 1e-6);
        Assert.Contains(wall.Findings, finding => finding.Code == FindingCodes.BevelledAcross);
    }
}
