using IfcCourser.Catalogs;
using IfcCourser.Geometry;
using IfcCourser.Output.Bcf;
using IfcCourser.Output.Tests.Support;
using IfcCourser.Units;

namespace IfcCourser.Output.Tests.Bcf;

/// <summary>
/// The sample's opening stands at s 1010 to 2011, z 1000 to 2000 in a wall along x, its right face at y = -t. 1000 around it: 3001 by 3000. From d its half height is seen under 30
/// degrees where d = 1500 / tan 30 = 2598.076; the width, 1500.5 / (1.6 tan 30) = 1624.3, asks for less.
/// </summary>
public sealed class IssueCameraTests
{
    private static readonly double _thickness = BcfSamples.Layout.Walls[0].Frame.Thickness.Mm;

    [Fact]
    public void It_faces_the_opening_from_the_right_side_in_metres()
    {
        var camera = IssueCamera.Facing(BcfSamples.Layout, BcfSamples.Layout.Walls[0], BcfSamples.Layout.Walls[0].Openings[0]);
        Assert.Equal(1.5105, camera.At.X, 6);
        Assert.Equal((-_thickness - 2598.076) / 1000, camera.At.Y, 6);
        Assert.Equal(1.5, camera.At.Z, 6);
        Assert.Equal((0d, 1d, 0d), (camera.Towards.X + 0, camera.Towards.Y, camera.Towards.Z));
        Assert.Equal((0d, 0d, 1d), (camera.Up.X, camera.Up.Y, camera.Up.Z));
    }

    /// <summary>A wall 1 m before the right face: the camera goes to the left one.</summary>
    [Fact]
    public void Where_a_wall_is_in_the_way_it_stands_on_the_other_side()
    {
        var near = new SampleWall(BuiltInCatalogs.Get("aac-mm"), "Near", Length.FromMm(5999), 10) { Origin = new Vector3(0, -_thickness - 1000, 0), StepId = 300 }.Laid();
        var layout = BcfSamples.Layout with { Walls = [BcfSamples.Layout.Walls[0], near] };
        var camera = IssueCamera.Facing(layout, layout.Walls[0], layout.Walls[0].Openings[0]);
        Assert.Equal(2.598076, camera.At.Y, 6);
        Assert.Equal(-1, camera.Towards.Y);
    }

    /// <summary>A wall that is not laid out, 4 m along x: seen from the south, 5 by 3.5 m: 1750 / tan 30 = 3031.089.</summary>
    [Fact]
    public void A_wall_that_is_not_laid_out_is_faced_by_its_box()
    {
        var camera = IssueCamera.Facing(new Vector3(0, 1000, 0), new Vector3(4000, 1200, 2500));
        Assert.Equal((2d, 1.25), (camera.At.X, camera.At.Z));
        Assert.Equal(1 - 3.031089, camera.At.Y, 6);
    }
}
