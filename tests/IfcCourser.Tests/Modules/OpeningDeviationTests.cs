using IfcCourser.Catalogs;
using IfcCourser.Modules;
using IfcCourser.Rules;
using IfcCourser.Tests.Support;
using IfcCourser.Units;

namespace IfcCourser.Tests.Modules;

/// <summary>
/// Lines of aac-mm from the wall's start: right jambs on 125 k, left jambs one joint before; courses of 249 from 20 with
/// 1 mm joints: tops at 19 + 250 n, undersides at 20 + 250 n. Distances worked by hand.
/// </summary>
public sealed class OpeningDeviationTests
{
    [Theory]
    [InlineData(999, 2000, 1019, 2020, 0, 0, 0.0, 0.0)]
    [InlineData(1009, 2010, 1029, 2030, -10, -10, -10.0, 240.0)]
    [InlineData(989, 1990, 1009, 2010, 10, 10, 10.0, 10.0)]
    [InlineData(999, 2060, 0, 2020, 0, -60, null, 0.0)]
    [InlineData(999, 2000, 1019, 2300, 0, 0, 0.0, null)]
    public void Distances_point_from_the_drawn_edge_to_its_line(
        double left, double right, double bottom, double top, double leftToLine, double rightToLine, double? sill, double? head)
    {
        var rules = LayoutRules.For(
            BuiltInRuleSets.Get("none") with { Datum = Datum.Start }, BuiltInCatalogs.Get("aac-mm"), OpeningPolicy.Keep);
        var wall = WallSketch.Straight(Length.FromMm(5999), Length.FromMm(2519), Length.FromMm(240), (left, right, bottom, top));
        var layout = WallSketch.LayOut(wall, rules);

        var deviation = OpeningDeviation.Of(layout, layout.Openings.Single(), rules);

        Assert.Equal((leftToLine, rightToLine, sill, head), (deviation.Left.Mm, deviation.Right.Mm, deviation.Sill?.Mm, deviation.Head?.Mm));
    }
}
