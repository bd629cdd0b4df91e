using IfcCourser.Catalogs;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Runs;
using IfcCourser.Tests.Walls;

namespace IfcCourser.Tests.Runs;

/// <summary>Walls of 600 mm and less are returns: bonded with their neighbour, on its course lines.</summary>
public sealed class ReturnTests
{
    [Theory]
    [InlineData(600)]
    [InlineData(490)]
    public void A_return_is_coursed_and_bonded_with_its_neighbour(double length)
    {
        var text = new ModelText();
        text.Straight("A", 4000, 240, 2519);
        // Drawn from A's near face.
        text.Wall("B", text.Box(240, 0, 0, length, 240, 2519), 4000, 0, along: [0, 1, 0]);
        var rules = LayoutRules.For(BuiltInRuleSets.Get("eu"), BuiltInCatalogs.Get("aac-mm"), OpeningPolicy.Keep);

        var layout = LayoutBuilder.Build(text.Walls(), rules, new ModelFacts("t.ifc", string.Empty, "IFC4", 1, null, null, string.Empty));

        Assert.Empty(layout.Skipped);
        Assert.Single(layout.Walls.Select(wall => wall.Group).Distinct(StringComparer.Ordinal));
        Assert.Equal(JunctionHow.Bonded, Assert.Single(layout.Junctions).How);
        Assert.Equal(length, layout.Walls[1].Wall.Frame.Length.Mm);
        Assert.All(layout.Walls[1].Courses, course => Assert.NotEmpty(course.Pieces));
    }
}
