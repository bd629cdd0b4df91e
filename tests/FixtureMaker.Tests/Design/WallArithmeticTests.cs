using FixtureMaker.Design;

namespace FixtureMaker.Tests.Design;

public class WallArithmeticTests
{
    private static readonly BuildUp _block = BuildUp.Centred("block", new Layer("block", 0.5));

    [Fact]
    public void A_box_with_a_window_and_a_door_that_reaches_under_its_base()
    {
        var wall = Make(new Body.Box(1, 11, 3)) with
        {
            Openings = [Opening.Window("w", 2, 2, 1, 1), new Opening("d", OpeningUse.Door, 6, 1, -0.5, 2.5)],
        };
        Assert.Equal(10, WallArithmetic.Length(wall), 12);
        Assert.Equal(30, WallArithmetic.GrossSideArea(wall), 12);
        Assert.Equal(26, WallArithmetic.NetSideArea(wall), 12); // 30 - 2 - 2
        Assert.Equal(15, WallArithmetic.GrossVolume(wall), 12);
        Assert.Equal(13, WallArithmetic.NetVolume(wall), 12);
        Assert.Equal(5, WallArithmetic.GrossFootprintArea(wall), 12);
    }

    [Fact]
    public void A_clipped_gable_and_its_upright_twin_have_the_same_area()
    {
        // 8 long, eaves 2, ridge 5: 8 x 2 + 8 x 3 / 2 = 28
        var clipped = Make(new Body.Clipped(
            0, 8, 9, ClipBounds.Endless, [new(new(0, 2), new(4, 5)), new(new(4, 5), new(8, 2))]));
        var upright = Make(new Body.Upright([new(0, 0), new(8, 0), new(8, 2), new(4, 5), new(0, 2)]));
        Assert.Equal(28, WallArithmetic.GrossSideArea(clipped), 12);
        Assert.Equal(28, WallArithmetic.GrossSideArea(upright), 12);
        Assert.Equal(5, WallArithmetic.Height(clipped), 12);
        Assert.Equal(14, WallArithmetic.GrossVolume(clipped), 12);
    }

    [Fact]
    public void A_mitred_wall_has_the_volume_of_its_plan_outline()
    {
        // A trapezium of 10 and 9 over a thickness of 0.5: 4.75, three high
        var wall = Make(new Body.Plan([new(0, 0), new(0.5, -0.5), new(9.5, -0.5), new(10, 0)], 3));
        Assert.Equal(14.25, WallArithmetic.GrossVolume(wall), 12);
        Assert.Equal(10, WallArithmetic.Length(wall), 12);
    }

    [Fact]
    public void A_sleeve_takes_its_circle()
    {
        var wall = Make(new Body.Box(0, 1, 1)) with { Openings = [Opening.Sleeve("s", 0.5, 0.2, 0.5)] };
        Assert.Equal(1 - (Math.PI * 0.01), WallArithmetic.NetSideArea(wall), 12);
    }

    private static Wall Make(Body body) => new("wall", _block, new(0, 0), Heading.East, body) { AxisFrom = 0, AxisTo = 1 };
}
