using IfcCourser.Catalogs;
using IfcCourser.Rules;
using IfcCourser.Tests.Support;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Tests.Coursing;

public sealed class SlantedEndTests
{
    /// <summary>
    /// The slant at an end runs through one piece, which keeps the least piece on its shorter face: 180 + 100 = 280. Four units and a cut of
    /// 124 would put the cut piece at an end in every second course, as joints lap there.
    /// </summary>
    [Theory]
    [InlineData(180, 0)]
    [InlineData(0, -180)]
    [InlineData(-180, 180)]
    public void A_piece_at_an_end_on_a_slant_is_longer_than_the_slant(double start, double end)
    {
        var rules = LayoutRules.For(BuiltInRuleSets.Get("none"), BuiltInCatalogs.Get("aac-mm"), OpeningPolicy.Keep);
        var wall = WallSketch.Straight(Length.FromMm(2624), Length.FromMm(1019), Length.FromMm(240)) with
        {
            Start = WallEnd.Free with { Slant = Length.FromMm(start) },
            End = WallEnd.Free with { Slant = Length.FromMm(end) },
        };
        var model = new WallModel { Walls = [wall], Skipped = [], Junctions = [], Findings = [] };
        var courses = Assert.Single(WallSketch.LayOut(model, rules).Walls).Courses;
        Assert.Equal(4, courses.Length);
        Assert.All(courses, course =>
        {
            Assert.True(start == 0 || course.Pieces[0].Length >= Length.FromMm(280));
            Assert.True(end == 0 || course.Pieces[^1].Length >= Length.FromMm(280));
        });
    }
}
