using IfcCourser.Catalogs;
using IfcCourser.Findings;
using IfcCourser.Rules;
using IfcCourser.Tests.Support;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Tests.Modules;

public sealed class FixedOpeningTests
{
    /// <summary>A gap from 1503 to 1903, as high as the wall, and a door from 2803 to 3804 (1001 = 8 x 125 + 1) that can go onto lines.</summary>
    [Fact]
    public void A_gap_of_the_body_stays_where_it_is()
    {
        var rules = LayoutRules.For(BuiltInRuleSets.Get("none") with { Datum = Datum.Start }, BuiltInCatalogs.Get("aac-mm"), OpeningPolicy.Move);
        var sketch = WallSketch.Straight(Length.FromMm(5000), Length.FromMm(2500), Length.FromMm(240), (1503, 1903, 0, 2500), (2803, 3804, 0, 2010));
        var gap = sketch.Openings[0] with { Kind = OpeningKind.Void, IsFixed = true };
        var wall = WallSketch.LayOut(sketch with { Openings = sketch.Openings.SetItem(0, gap) }, rules);

        Assert.Equal(gap.Model, wall.Openings[0].Placed);
        Assert.NotEqual(wall.Openings[1].Design, wall.Openings[1].Placed);
        Assert.All(
            wall.Findings.Where(finding => finding.Code == FindingCodes.OpeningMoved || finding.Code == FindingCodes.OpeningOffModule),
            finding => Assert.Equal("O1", finding.At?.Opening));
        Assert.All(wall.Courses, course => Assert.DoesNotContain(course.Pieces, piece => piece.From < gap.Model.Right && piece.To > gap.Model.Left));
    }

    /// <summary>A door from 2162 to 3163 needs -38 mm (2124 = 17 x 125 - 1): 221 mm would be left beside the gap, under the least pier of 249; the line on its other side lies 87 mm away, past 62.5.</summary>
    [Fact]
    public void No_opening_crowds_a_gap_of_the_body()
    {
        var rules = LayoutRules.For(BuiltInRuleSets.Get("none") with { Datum = Datum.Start }, BuiltInCatalogs.Get("aac-mm"), OpeningPolicy.Move);
        var sketch = WallSketch.Straight(Length.FromMm(5000), Length.FromMm(2500), Length.FromMm(240), (1503, 1903, 0, 2500), (2162, 3163, 0, 2020));
        var gap = sketch.Openings[0] with { Kind = OpeningKind.Void, IsFixed = true };
        var wall = WallSketch.LayOut(sketch with { Openings = sketch.Openings.SetItem(0, gap) }, rules);

        Assert.Equal(wall.Openings[1].Design.Left, wall.Openings[1].Placed.Left);
        Assert.Contains(
            wall.Findings, finding => finding.Code == FindingCodes.OpeningOffModule && finding.Message.Contains("a pier of 221 mm would be left", StringComparison.Ordinal));
    }
}
