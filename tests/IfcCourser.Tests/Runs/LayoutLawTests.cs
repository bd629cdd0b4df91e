using CsCheck;
using IfcCourser.Layouts;
using IfcCourser.Tests.Support;

namespace IfcCourser.Tests.Runs;

[Collection(FinishedLayouts.Collection)]
public sealed class LayoutLawTests
{
    [Fact]
    public void Every_layout_keeps_the_laws() => FinishedLayouts.ForAll(layout => Assert.Empty(LayoutLaws.Breaches(layout)), cases: 60);

    [Fact]
    public void Every_lintel_keeps_the_laws() => FinishedLayouts.ForAll(layout => Assert.Empty(LintelLaws.Breaches(layout)), cases: 60);

    [Fact]
    public void Every_long_wall_keeps_the_laws_panel_by_panel() => WallGen.Long.ForAll(
        given => Assert.Empty(LayoutLaws.Breaches(WallSketch.LayOut(given.Model, given.Rules))), cases: 20);

    [Fact]
    public void Every_bonded_tee_keeps_the_laws() => WallGen.BondedTees.ForAll(
        given =>
        {
            var layout = WallSketch.LayOut(given.Model, given.Rules);
            Assert.Empty(LayoutLaws.Breaches(layout));
            Assert.Empty(layout.Walls.Length == 2 ? TeeLaws.Breaches(layout, given.Model.Junctions[0].FirstPlace) : []);
        },
        cases: 60);

    [Fact]
    public void The_same_walls_give_the_same_pieces() => FinishedLayouts.ForAll(
        (model, layout) => Assert.Equal(Pieces(layout), Pieces(WallSketch.LayOut(model, layout.Rules))), cases: 10);

    private static List<string> Pieces(Layout layout) =>
    [
        .. layout.Walls
            .SelectMany(wall => wall.Courses)
            .SelectMany(course => course.Pieces)
            .Select(piece => $"{piece.Id} {piece.From} {piece.To} {piece.Cut}"),
    ];
}
