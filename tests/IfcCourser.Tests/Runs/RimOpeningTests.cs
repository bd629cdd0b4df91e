using IfcCourser.Catalogs;
using IfcCourser.Geometry;
using IfcCourser.Rules;
using IfcCourser.Tests.Support;
using IfcCourser.Units;

namespace IfcCourser.Tests.Runs;

/// <summary>Openings that hang over the outline's rim leave nothing under them there.</summary>
public sealed class RimOpeningTests
{
    [Fact]
    public void No_piece_is_laid_below_an_opening_that_stands_out_of_the_outline()
    {
        // A gusset on its point, and an opening put back beside it that starts in the third course.
        var wall = WallSketch.Straight(Length.FromMm(1100), Length.FromMm(2200), Length.FromMm(240), (0, 50, 608, 2200)) with
        {
            Outline = [Point(50, 0), Point(1100, 2200), Point(0, 2200), Point(0, 608), Point(50, 608)],
        };
        var outline = new ElevationOutline(wall.Outline);

        var layout = WallSketch.LayOut(wall, LayoutRules.For(BuiltInRuleSets.Get("eu"), BuiltInCatalogs.Get("aac-mm"), OpeningPolicy.Keep));

        var pieces = layout.Courses.SelectMany(course => course.Pieces).ToList();
        Assert.NotEmpty(pieces);
        Assert.All(pieces, piece => Assert.NotEmpty(outline.Within(new ElevationRect(piece.From, piece.To, piece.Bottom, piece.Top))));
    }

    private static ElevationPoint Point(double s, double z) => new(Length.FromMm(s), Length.FromMm(z));
}
