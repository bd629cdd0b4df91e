using IfcCourser.Geometry;
using IfcCourser.Output.Sheets;
using IfcCourser.Output.Tests.Support;

namespace IfcCourser.Output.Tests.Sheets;

public static class RakeShapeTests
{
    /// <summary>3-4-5 triangle over a base of 400: the angle is atan(3/4).</summary>
    [Theory]
    [InlineData("0,0 400,0 400,240 320,240", 400, 80, 0, 240, 1)]
    [InlineData("0,0 400,0 80,240 0,240", 400, 80, 240, 0, -1)]
    [InlineData("0,0 400,0 200,150", 400, 0, 0, 0, 0)]
    public static void Edges_and_slope_are_those_of_the_outline(string outline, double below, double above, double left, double right, int rises)
    {
        var corners = outline.Split(' ').Select(pair => pair.Split(','))
            .Select(pair => new ElevationPoint(Samples.Mm(int.Parse(pair[0], null)), Samples.Mm(int.Parse(pair[1], null))));
        var piece = Samples.Metric.Walls[0].Courses[1].Pieces[0] with
        {
            From = Samples.Mm(0),
            To = Samples.Mm(400),
            Bottom = Samples.Mm(0),
            Top = Samples.Mm(240),
            Outline = [.. corners],
        };
        var rake = RakeShape.Of(piece)!;
        Assert.Equal(
            (below, above, left, right, rises), (rake.Below.Mm, rake.Above.Mm, rake.Left.Mm, rake.Right.Mm, rake.Rises));
        Assert.Equal(Math.Atan2(3, 4) * 180 / Math.PI, rake.Degrees, 9);
    }

    [Fact]
    public static void A_rectangle_has_no_rake() => Assert.Null(RakeShape.Of(Samples.Metric.Walls[0].Courses[1].Pieces[0]));
}
