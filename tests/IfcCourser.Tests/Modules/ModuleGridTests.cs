using IfcCourser.Layouts;
using IfcCourser.Modules;
using IfcCourser.Units;

namespace IfcCourser.Tests.Modules;

/// <summary>Lines of 125 mm from 10 mm, joint 1 mm: starts of masonry on 10, 135, 260, ends a joint before. Worked by hand; of two lines equally near the lower counts.</summary>
public sealed class ModuleGridTests
{
    private static readonly ModuleGrid _grid = new(new ModuleLines(Length.FromMm(10), Length.FromMm(125)), Length.FromMm(1));

    [Theory]
    [InlineData(135, 0)]
    [InlineData(140, -5)]
    [InlineData(130, 5)]
    [InlineData(197.5, -62.5)]
    [InlineData(197.6, 62.4)]
    [InlineData(0, 10)]
    public void A_right_jamb_goes_to_the_nearest_start_of_masonry(double jamb, double way) => Assert.Equal(way, _grid.RightJambToLine(Length.FromMm(jamb)).Mm);

    [Theory]
    [InlineData(134, 0)]
    [InlineData(139, -5)]
    [InlineData(196.5, -62.5)]
    public void A_left_jamb_goes_to_the_nearest_end_of_masonry(double jamb, double way) => Assert.Equal(way, _grid.LeftJambToLine(Length.FromMm(jamb)).Mm);
}
