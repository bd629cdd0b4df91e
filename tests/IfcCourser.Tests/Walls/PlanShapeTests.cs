using IfcCourser.Findings;
using IfcCourser.Units;

namespace IfcCourser.Tests.Walls;

/// <summary>Bodies that are no straight wall of one thickness, each with its reason, and near misses that are.</summary>
public sealed class PlanShapeTests
{
    /// <summary>
    /// Radius 3000 on the centre line, 240 thick. Head joints of 0 to 3 mm, less 1 mm that the saw leaves to them, let units of
    /// 624 follow (624 + 3) x 240 / 2 = 75240 mm, pieces of 100 follow 103 x 240 / 2 = 12360 mm.
    /// </summary>
    [Theory]
    [InlineData(90)]
    [InlineData(200)]
    public void A_curved_wall_tells_its_radius_and_the_least_one(double degrees)
    {
        var text = new ModelText();
        (double X, double Y) P(double radius, double angle) => (radius * Math.Cos(angle * Math.PI / 180), radius * Math.Sin(angle * Math.PI / 180));
        var steps = Enumerable.Range(0, (int)(degrees / 5) + 1).Select(i => i * 5.0).ToList();
        text.Wall("A", text.Extruded(2500, [.. steps.Select(angle => P(3120, angle)), .. steps.AsEnumerable().Reverse().Select(angle => P(2880, angle))]));
        var reason = Assert.Single(text.Walls().Skipped).Reason;
        Assert.Equal(FindingCodes.CurvedInPlan, reason.Code);
        Assert.Contains("radius of 3000 mm", reason.Message, StringComparison.Ordinal);
        Assert.Contains("75240 mm or more, pieces of 100 mm one of 12360 mm", reason.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_rounded_end_does_not_make_a_wall_curved()
    {
        var text = new ModelText();
        var end = Enumerable.Range(0, 19).Select(i => (-90 + (i * 10)) * Math.PI / 180).Select(angle => (4000 + (120 * Math.Cos(angle)), 120 + (120 * Math.Sin(angle))));
        text.Wall("A", text.Extruded(2500, [(0, 0), .. end, (0, 240)]));
        Assert.Equal((Length.FromMm(4120), Length.FromMm(240)), Assert.Single(text.Walls().Walls) is var wall ? (wall.Frame.Length, wall.Frame.Thickness) : default);
    }

    [Fact]
    public void Corners_branches_and_rooms_turn_in_plan()
    {
        (double, double)[][] plans =
        [
            [(0, 0), (4000, 0), (4000, 240), (240, 240), (240, 3000), (0, 3000)],
            [(0, 0), (4000, 0), (4000, 240), (2240, 240), (2240, 3000), (2000, 3000), (2000, 240), (0, 240)],
            // Four walls of 200 around a room, open by a slot of 10.
            [(0, 0), (4000, 0), (4000, 3000), (0, 3000), (0, 110), (200, 110), (200, 2800), (3800, 2800), (3800, 200), (200, 200), (200, 100), (0, 100)],
        ];
        Assert.All(plans, plan =>
        {
            var text = new ModelText();
            text.Wall("A", text.Extruded(2500, plan));
            Assert.Equal(FindingCodes.TurnsInPlan, Assert.Single(text.Walls().Skipped).Reason.Code);
        });
    }

    /// <summary>A pier of 500 x 240 on a wall of 4000 x 240: 11 % of the body.</summary>
    [Fact]
    public void A_pier_on_a_wall_is_told_and_not_laid_out()
    {
        var text = new ModelText();
        text.Wall("A", text.Extruded(2500, [(0, 0), (4000, 0), (4000, 240), (2500, 240), (2500, 480), (2000, 480), (2000, 240), (0, 240)]));
        var wall = Assert.Single(text.Walls().Walls);
        Assert.Equal(Length.FromMm(240), wall.Frame.Thickness);
        Assert.Contains("11.1 %", Assert.Single(wall.Findings, finding => finding.Code == FindingCodes.BodyBeyondFaces).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_wedge_has_no_parallel_faces()
    {
        var text = new ModelText();
        text.Wall("A", text.Extruded(2500, [(0, 0), (4000, 0), (4000, 400), (0, 200)]));
        Assert.Equal(FindingCodes.NoParallelFaces, Assert.Single(text.Walls().Skipped).Reason.Code);
    }

    [Fact]
    public void A_battered_wall_has_a_leaning_face()
    {
        var text = new ModelText();
        // Seen from the end: 400 wide at the foot, 240 at the top.
        text.Wall("A", text.Extruded(4000, [(0, 0), (400, 0), (240, 2500), (0, 2500)], text.Axes(0, 0, 0, [0, 1, 0], [1, 0, 0])));
        Assert.Equal(FindingCodes.FacesNotUpright, Assert.Single(text.Walls().Skipped).Reason.Code);
    }

    /// <summary>Half the wall is 300 thick, half 100: neither thickness runs through most of it.</summary>
    [Fact]
    public void A_wall_of_two_thicknesses_is_no_layer()
    {
        var text = new ModelText();
        text.Wall("A", text.Extruded(2500, [(0, 0), (8000, 0), (8000, 100), (3900, 100), (3900, 300), (0, 300)]));
        Assert.Equal(FindingCodes.FacesNotUpright, Assert.Single(text.Walls().Skipped).Reason.Code);
    }
}
