using System.Globalization;
using IfcCourser.Layouts;
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
        // More than the 1 3/4 in that a bar of 1/2 in has in a core of 4 in.
        var (wall, core) = Core(SlabCase.Inch, core => core.PlayPlus > Length.FromMm(50) && core.SharedWith.IsEmpty);
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

    /// <summary>Along the wall as across it: 1 3/4 in are free in a core of 4 in beside a bar of 1/2 in, whatever play the joints leave.</summary>
    [Theory]
    [InlineData(1.7, BarAnswer.AsPlanned)]
    [InlineData(-1.7, BarAnswer.AsPlanned)]
    [InlineData(1.8, BarAnswer.Left)]
    public void A_bar_in_its_core_stays_as_planned(double inches, BarAnswer expected)
    {
        var (wall, core) = Core(SlabCase.Inch, core => core.PlayPlus < Length.FromInches(1));
        var at = wall.Frame.PointAt(core.At, core.Across, default).Plan + (wall.Frame.Direction * (inches * 25.4));
        Assert.Equal(expected, BarsAsBuilt.Held(new PlacedBar(1, "1", null, null, at), wall, core).Answer);
    }

    /// <summary>Along one wall of a corner is across the other: 2 in are out of a core with room for 1 3/4.</summary>
    [Fact]
    public void A_corner_bar_is_held_to_both_walls()
    {
        var (wall, core) = Core(SlabCase.Inch, core => !core.SharedWith.IsEmpty);
        var at = wall.Frame.PointAt(core.At, core.Across, default).Plan + (wall.Frame.Direction * 50.8);
        Assert.Equal(BarPlace.OffAcross, BarsAsBuilt.Held(new PlacedBar(1, "1", null, null, at), wall, core).Where);
    }

    /// <summary>TMS 602-16 3.4 B, read in a trade text (checkvalues.csv R-044): 2 in along the wall.</summary>
    [Theory]
    [InlineData(1.99, true)]
    [InlineData(-2.01, false)]
    public void A_bar_off_along_its_wall_is_held_to_the_standard(double inches, bool isKept)
    {
        var (wall, core) = Core(SlabCase.Inch, core => core.SharedWith.IsEmpty);
        var at = wall.Frame.PointAt(core.At, core.Across, default).Plan + (wall.Frame.Direction * (inches * 25.4));
        Assert.Equal(isKept, BarsAsBuilt.Tolerance([BarsAsBuilt.Held(new PlacedBar(1, "1", null, null, at), wall, core)], SlabCase.Inch.Rules.Set.Tolerances)!.IsKept);
    }

    private static (WallLayout Wall, Core Core) Core(Layout layout, Func<Core, bool> isWanted) =>
        layout.Walls.SelectMany(wall => wall.Cores.Select(core => (Wall: wall, Core: core))).First(bar => isWanted(bar.Core));
}
