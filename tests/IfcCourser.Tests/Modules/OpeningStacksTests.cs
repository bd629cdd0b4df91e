using IfcCourser.Geometry;
using IfcCourser.Modules;
using IfcCourser.Units;

namespace IfcCourser.Tests.Modules;

/// <summary>What counts as in line, on a lower window from 1000 to 2000 mm (its middle at 1500) and one over it, with a tolerance of 5 mm.</summary>
public sealed class OpeningStacksTests
{
    [Theory]
    [InlineData(1000, 2600, true)] // Left jambs.
    [InlineData(1005, 2600, true)]
    [InlineData(1006, 2600, false)]
    [InlineData(400, 2000, true)] // Right jambs.
    [InlineData(400, 1995, true)]
    [InlineData(400, 1994, false)]
    [InlineData(1200, 1800, true)] // Middles: 1500.
    [InlineData(1205, 1805, true)] // 1505.
    [InlineData(1207, 1805, false)] // 1506.
    [InlineData(1193, 1795, false)] // 1494.
    public void Jambs_or_middles_in_line_make_a_stack(double left, double right, bool isStack) =>
        Assert.Equal(isStack, StacksOf(Window(1000, 2000, 0), Window(left, right, 3000)) is [0, 0]);

    /// <summary>Of one wall, windows at the same height stand beside each other; in two walls that lie in each other's place they do not.</summary>
    [Theory]
    [InlineData(0, false)]
    [InlineData(1, true)]
    public void Windows_beside_each_other_in_a_wall_are_no_stack(int wall, bool isStack) =>
        Assert.Equal(isStack, StacksOf(Window(1000, 2000, 0), Window(1000, 2600, 500) with { Wall = wall }) is [0, 0]);

    [Fact]
    public void What_stays_belongs_to_no_stack() =>
        Assert.Equal([0, 1, 0], StacksOf(Window(1000, 2000, 0), Window(1000, 2000, 3000) with { IsFixed = true }, Window(1000, 2000, 6000)));

    /// <summary>The third is in line with the first by its left jamb and with the second by its right one.</summary>
    [Fact]
    public void What_is_in_line_with_two_joins_their_stacks() =>
        Assert.Equal([0, 1, 0, 0], StacksOf(Window(1000, 2000, 0), Window(5000, 6000, 0), Window(2500, 3300, 3000), Window(1000, 3300, 6000)));

    private static int[] StacksOf(params MovableOpening[] openings) => [.. OpeningStacks.InLine([.. openings], Length.FromMm(5)).Select(opening => opening.Stack)];

    private static MovableOpening Window(double left, double right, double bottom) => new(
        new ElevationRect(Length.FromMm(left), Length.FromMm(right), Length.FromMm(bottom), Length.FromMm(bottom + 1200)), new Interval(Length.Zero, Length.FromMm(8000)), 0, 0);
}
