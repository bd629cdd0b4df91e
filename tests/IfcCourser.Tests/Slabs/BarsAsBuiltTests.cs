using System.Globalization;
using IfcCourser.Slabs;
using IfcCourser.Units;

namespace IfcCourser.Tests.Slabs;

/// <summary>Bars measured off their places by so much.</summary>
public sealed class BarsAsBuiltTests
{
    [Theory]
    [InlineData(0, 0, BarPlace.Inside)]
    [InlineData(0, 40, BarPlace.Inside)]
    [InlineData(0, 50, BarPlace.OffAcross)]
    [InlineData(0, -50, BarPlace.OffAcross)]
    [InlineData(0.9, 0, BarPlace.Inside)]
    [InlineData(1.1, 0, BarPlace.OffAlong)]
    public void A_bar_is_held_to_its_core_and_to_the_joints(double ofPlay, double across, BarPlace expected)
    {
        var wall = SlabCase.Inch.Walls.First(wall => wall.Cores.Any(core => core.PlayPlus > Length.FromMm(20)));
        var core = wall.Cores.First(core => core.PlayPlus > Length.FromMm(20));
        var along = core.PlayPlus.Mm * ofPlay;
        var place = wall.Frame.PointAt(core.At, core.Across, default).Plan + (wall.Frame.Direction * along) - (wall.Frame.Normal * across);
        var csv = string.Create(
            CultureInfo.InvariantCulture,
            $"x_mm,y_mm,z_mm,code,wall,core\n0,0,0,,,\n3000,0,0,,,\n0,2000,0,,,\n{place.X:R},{place.Y:R},,BAR,{wall.Identity.GlobalId},{core.Id}\n");
        var bar = Assert.Single(SlabCase.Survey(SlabCase.Inch, csv).Bars);
        Assert.Equal(along, bar.Along, 1e-6);
        Assert.Equal(across, bar.Across, 1e-6);
        Assert.Equal(expected, bar.Where);
    }
}
