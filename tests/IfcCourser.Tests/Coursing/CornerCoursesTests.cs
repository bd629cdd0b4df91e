using IfcCourser.Coursing;
using IfcCourser.Geometry;
using IfcCourser.Units;

namespace IfcCourser.Tests.Coursing;

/// <summary>Which courses stop at a corner, worked out by hand: courses of 249 with joints of 1 from 20 above the base, mm.</summary>
public sealed class CornerCoursesTests
{
    private static readonly (double, double)[] _three = [(20, 269), (270, 519), (520, 769)];

    [Fact]
    public void Equal_courses_take_turns()
    {
        var corner = Corner([.. Courses(0, _three)], [.. Courses(0, _three)]);
        Assert.Equal([1], corner.OfFirst.Keys);
        Assert.Equal([0, 2], corner.OfSecond.Keys.Order());
        Assert.All(corner.OfFirst.Concat(corner.OfSecond), course => Assert.True(
            course.Value.From <= Mm(_three[course.Key].Item1) && course.Value.To >= Mm(_three[course.Key].Item2)));
    }

    /// <summary>
    /// The second wall's top is divided into two rips where the first has a whole course and a rip: its rip of 520 to 665 shares
    /// height with the first wall's third course, that of 666 to 812 with the third and fourth. All four are decided together.
    /// </summary>
    [Fact]
    public void A_top_that_is_divided_otherwise_is_shared_out_as_one()
    {
        var corner = Corner([.. Courses(0, [.. _three, (770, 812)])], [.. Courses(0, [_three[0], _three[1], (520, 665), (666, 812)])]);
        Assert.Equal([1], corner.OfFirst.Keys);
        Assert.Equal([0, 2, 3], corner.OfSecond.Keys.Order());
    }

    /// <summary>The third course of the first ends at 755, the second wall's two rips at 812: the second stands higher and runs through both.</summary>
    [Fact]
    public void The_higher_wall_runs_through_all_courses_that_hang_together()
    {
        var corner = Corner([.. Courses(0, [_three[0], _three[1], (520, 755)])], [.. Courses(0, [_three[0], _three[1], (520, 665), (666, 812)])]);
        Assert.Equal([1, 2], corner.OfFirst.Keys.Order());
        Assert.Equal([0], corner.OfSecond.Keys);
    }

    /// <summary>
    /// A gable that rises over the corner from 150 to 450 beside a wall of 301: the wall, which fills the whole corner, runs through,
    /// and the gable keeps what is above it and a bed of 1.
    /// </summary>
    [Fact]
    public void Beside_a_slope_the_level_wall_runs_through_and_the_gable_goes_on_over_it()
    {
        CornerCourse[] gable = [new(0, Mm(0), Mm(20), Mm(150), Mm(269)), new(1, Mm(270), Mm(270), Mm(150), Mm(450))];
        var corner = Corner(gable, [.. Courses(0, [(20, 160), (161, 301)])]);
        Assert.Empty(corner.OfSecond);
        Assert.Equal([(0, new Interval(Mm(0), Mm(302))), (1, new Interval(Mm(0), Mm(302)))], corner.OfFirst.OrderBy(c => c.Key).Select(c => (c.Key, c.Value)));
    }

    /// <summary>The first wall stands at the corner from 200 up only: under that the second wall's course must run through.</summary>
    [Fact]
    public void The_wall_that_reaches_under_the_other_runs_through()
    {
        CornerCourse[] stepped = [new(0, Mm(200), Mm(200), Mm(269), Mm(269))];
        var corner = Corner(stepped, [.. Courses(0, [_three[0]])]);
        Assert.Equal([0], corner.OfFirst.Keys);
        Assert.Empty(corner.OfSecond);
    }

    /// <summary>An opening of the first wall reaches into the corner over its lower two courses: the second wall runs through both, and they take turns above.</summary>
    [Fact]
    public void A_wall_whose_opening_reaches_into_the_corner_gives_way()
    {
        var corner = Corner([.. Courses(0, _three).Select(course => course with { IsOpen = course.Line < 2 })], [.. Courses(0, _three)]);
        Assert.Equal([0, 1], corner.OfFirst.Keys.Order());
        Assert.Equal([2], corner.OfSecond.Keys);
    }

    [Fact]
    public void Where_one_wall_has_no_masonry_the_other_is_not_stopped()
    {
        var corner = Corner([.. Courses(0, _three)], [.. Courses(0, [_three[0], _three[1]])]);
        Assert.Equal([1], corner.OfFirst.Keys);
        Assert.Equal([0], corner.OfSecond.Keys);
    }

    private static CornerCourses Corner(IEnumerable<CornerCourse> first, IEnumerable<CornerCourse> second) =>
        CornerCourses.That(first, second, CornerTurn.FirstInOdd, Mm(1));

    private static IEnumerable<CornerCourse> Courses(double wallBase, (double Bottom, double Top)[] bands) => bands.Select((band, line) =>
        new CornerCourse(line, Mm(line == 0 ? wallBase : band.Bottom), Mm(band.Bottom), Mm(band.Top), Mm(band.Top)));

    private static Length Mm(double mm) => Length.FromMm(mm);
}
