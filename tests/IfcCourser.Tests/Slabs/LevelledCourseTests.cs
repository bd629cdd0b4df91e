using System.Globalization;
using IfcCourser.Layouts;
using IfcCourser.Slabs;

namespace IfcCourser.Tests.Slabs;

/// <summary>First courses read block by block.</summary>
public sealed class LevelledCourseTests
{
    [Theory]
    [InlineData(0, LevelWork.Right)]
    [InlineData(1.4, LevelWork.Right)]
    [InlineData(1.6, LevelWork.Sand)]
    [InlineData(-1.4, LevelWork.Right)]
    [InlineData(-1.6, LevelWork.Relay)]
    public void A_block_that_steps_from_its_neighbours_is_worked_on(double off, LevelWork expected)
    {
        var course = Read(i => i == 2 ? off : 0);
        Assert.Equal(expected, course.Blocks[2].Work);
        Assert.All(course.Blocks.Where((_, i) => i != 2), block => Assert.Equal(LevelWork.Right, block.Work));
    }

    /// <summary>1.5 mm between neighbours: common practice, no source.</summary>
    [Fact]
    public void Neighbours_that_differ_too_much_are_evened()
    {
        var course = Read(i => i == 2 ? 1 : i == 3 ? -1 : 0);
        Assert.Equal(LevelWork.Sand, course.Blocks[2].Work);
        Assert.Equal(LevelWork.Right, course.Blocks[3].Work);
    }

    [Fact]
    public void The_level_is_that_of_most_blocks()
    {
        Assert.Equal(1.5, LevelledCourse.LevelOf([0, 1, 2, 3, 40], 3).Level, 1e-9);
        Assert.Equal(101, LevelledCourse.LevelOf([0, 100, 101, 102], 2).Level, 1e-9);
    }

    /// <summary>TMS 602-16 3.3 F.2 (checkvalues.csv T-003, T-006): 1/4 in. in 10 ft; 3/8 in over 10 ft is too much.</summary>
    [Theory]
    [InlineData(0.375, false)]
    [InlineData(0.25, true)]
    public void A_fall_over_10_ft_is_held_to_the_standard(double inches, bool isKept)
    {
        var check = Read(SlabCase.Inch, i => i == 2 ? inches * 25.4 : 0).Tolerances[0];
        Assert.Equal(inches * 25.4, check.Value, 6);
        Assert.Equal(isKept, check.IsKept);
        Assert.Equal(6.35, check.Limit, 9);
    }

    /// <summary>DIN 18202 table 2, from memory (checkvalues.csv T-DIN2): 12 mm over 3 to 6 m; blocks nearer to each other have their own rows.</summary>
    [Theory]
    [InlineData(11.9, true)]
    [InlineData(12.1, false)]
    public void A_fall_along_a_wall_is_held_to_its_distance(double off, bool isKept)
    {
        // The ends of a wall 5 m long: its blocks rise evenly from end to end.
        var blocks = FirstCourseBlock.Of(SlabCase.Metric.Walls);
        var wall = blocks.Where(block => block.Wall == blocks[0].Wall).ToList();
        var (from, to) = (wall[0].Piece.From, wall[^1].Piece.From);
        var check = Read(SlabCase.Metric, i => i < wall.Count ? off * ((wall[i].Piece.From - from).Mm / (to - from).Mm) : 0).Tolerances[0];
        Assert.Equal(isKept, check.IsKept);
    }

    private static LevelledCourse Read(Func<int, double> off) => Read(SlabCase.Metric, off);

    private static LevelledCourse Read(Layout layout, Func<int, double> off)
    {
        var blocks = FirstCourseBlock.Of(layout.Walls);
        var rows = blocks.Select((block, i) => string.Create(CultureInfo.InvariantCulture, $"{block.Middle.X:R},{block.Middle.Y:R},{block.Top + off(i):R},TOP"));
        var file = ReadingsReader.Read("x_mm,y_mm,z_mm,code\n" + string.Join('\n', rows), "readings.csv", null);
        var course = LevelledCourse.Of(layout, file.Value!, null);
        Assert.True(course.IsOk, course.Fault?.ToString());
        return course.Value;
    }
}
