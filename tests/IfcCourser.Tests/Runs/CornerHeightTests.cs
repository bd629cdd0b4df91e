using IfcCourser.Catalogs;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Tests.Support;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Tests.Runs;

/// <summary>Corners of walls that do not stand and end alike: no place is laid twice, none is left out. Courses of 249 and joints of 1, mm.</summary>
public sealed class CornerHeightTests
{
    /// <summary>
    /// W0 stands from 1600 up, on no line of W1, which stands from 0: W0 runs through. W1's seventh course, 1520 to 1769, keeps
    /// 1520 to 1600 under it, and stops at it above; its sixth course and those below run to the end.
    /// </summary>
    [Fact]
    public void A_course_that_runs_under_the_neighbours_base_keeps_a_lower_piece_there()
    {
        var wall = Corner(firstBase: 1600, firstHeight: 1519, secondHeight: 3019).Walls[1];
        var course = wall.Courses.Single(course => course.Bottom == Mm(1520));
        Assert.Contains(course.Pieces, piece => (piece.From, piece.To, piece.Bottom, piece.Top) == (Mm(0), Mm(240), Mm(1520), Mm(1600)));
        Assert.Equal(Mm(241), course.Pieces.Where(piece => piece.Top > Mm(1600)).Min(piece => piece.From));
        Assert.Equal(Mm(0), wall.Courses.Single(course => course.Bottom == Mm(1270)).Pieces[0].From);
    }

    private static Layout Corner(double firstBase, double firstHeight, double secondHeight)
    {
        var box = WallSketch.Box(Mm(3000), Mm(3000), Mm(secondHeight), Mm(240));
        var first = box.Walls[0];
        var walls = new[]
        {
            first with
            {
                Frame = first.Frame with { Origin = first.Frame.Origin with { Z = firstBase } },
                Outline = WallSketch.Rectangle(Mm(3000), Mm(firstHeight)),
                Start = WallEnd.Free,
            },
            box.Walls[1] with { End = WallEnd.Free },
        };
        return WallSketch.LayOut(
            box with { Walls = [.. walls], Junctions = [box.Junctions[0]] },
            LayoutRules.For(BuiltInRuleSets.Get("eu"), BuiltInCatalogs.Get("aac-mm"), OpeningPolicy.Keep));
    }

    private static Length Mm(double mm) => Length.FromMm(mm);
}
