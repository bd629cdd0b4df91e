using IfcCourser.Layouts;
using IfcCourser.Output.Page;
using IfcCourser.Output.Sheets;
using IfcCourser.Output.Sheets.Sets;
using IfcCourser.Output.Tests.Page;
using IfcCourser.Output.Tests.Support;

namespace IfcCourser.Output.Tests.Sheets.Sets;

/// <summary>Openings that are moved or overlap can leave no piece of a wall, which is no reason to draw none of the others. Found by mutants.</summary>
public sealed class WallWithoutPiecesTests
{
    private static readonly Layout _layout = Emptied(FixtureLayouts.Of("oddities/opening-round", "aac-mm", "none"));

    [Fact]
    public void Every_sheet_of_the_set_is_drawn() =>
        Assert.All(DrawingSet.Of(_layout, PaperSize.Iso), sheet => Assert.NotEmpty(sheet.Compose().Name));

    [Theory]
    [InlineData(PageKind.Report)]
    [InlineData(PageKind.Findings)]
    public void Its_pages_are_written(PageKind kind) => Assert.NotEmpty(PageReading.Bytes(_layout, kind));

    private static Layout Emptied(Layout layout) => layout with
    {
        Walls = [.. layout.Walls.Select(wall => wall with { Courses = [.. wall.Courses.Select(course => course with { Pieces = [] })], Cores = [], Lintels = [] })],
    };
}
