using IfcCourser.Findings;
using IfcCourser.Tests.Support;
using IfcCourser.Units;

namespace IfcCourser.Tests.Runs;

/// <summary>The walls of fixtures/coursing/heights.txt: what is laid out against what was worked by hand.</summary>
public sealed class HeightCorpusTests
{
    private static readonly FindingCode[] _aboutHeights =
    [
        FindingCodes.HeightOffCourse, FindingCodes.SlabStep, FindingCodes.BedOutOfRange, FindingCodes.OutlineNotFilled, FindingCodes.LowerThanOneCourse,
    ];

    public static TheoryData<string> Captions => [.. WallCorpus.Read("heights.txt").Select(drawn => drawn.Caption)];

    [Theory]
    [MemberData(nameof(Captions))]
    public void Courses_are_as_drawn(string caption)
    {
        var drawn = WallCorpus.Read("heights.txt").Single(drawn => string.Equals(drawn.Caption, caption, StringComparison.Ordinal));
        var layout = WallSketch.LayOut(drawn.Model, drawn.Rules);
        Assert.All(drawn.Expected, column =>
        {
            var wall = layout.Walls.Single(wall => string.Equals(wall.Identity.Name, column.Wall, StringComparison.Ordinal));
            Assert.Equal(column.Courses.Select(course => course.Height), wall.Courses.Select(course => course.Top - course.Bottom));
            Assert.Equal(column.Bed, wall.Courses[0].Bottom);
            Assert.Equal(column.Gap, wall.Outline.Max(point => point.Z) - wall.Courses[^1].Top);
            Assert.All(wall.Courses.Zip(wall.Courses.Skip(1)), pair => Assert.Equal(drawn.Rules.Catalog.BedJoint.Nominal, pair.Second.Bottom - pair.First.Top));
            Assert.All(
                column.Courses.Zip(wall.Courses).Where(pair => pair.First.Run.Length > 0),
                pair => Assert.Equal(pair.First.Run, CorpusDrawing.Of(wall, pair.Second, drawn.Rules.Catalog.Units)));
        });
        var found = layout.Findings.Concat(layout.Walls.SelectMany(wall => wall.Findings)).Select(finding => finding.Code).Intersect(_aboutHeights).Select(code => code.Id);
        Assert.Equal(drawn.Finds.Order(StringComparer.Ordinal), found.Order(StringComparer.Ordinal));
    }

    /// <summary>Walls of one group whose courses are drawn in one row have them at one height in the model.</summary>
    [Theory]
    [MemberData(nameof(Captions))]
    public void Courses_drawn_in_a_row_lie_on_one_line(string caption)
    {
        var drawn = WallCorpus.Read("heights.txt").Single(drawn => string.Equals(drawn.Caption, caption, StringComparison.Ordinal));
        var layout = WallSketch.LayOut(drawn.Model, drawn.Rules);
        var rows = drawn.Expected.SelectMany(column =>
        {
            var wall = layout.Walls.Single(wall => string.Equals(wall.Identity.Name, column.Wall, StringComparison.Ordinal));
            var wallBase = Length.FromModelMm(wall.Frame.Origin.Z);
            return column.Courses.Zip(wall.Courses).SkipLast(1).Select(pair => (wall.Group, pair.First.Line, Top: wallBase + pair.Second.Top));
        });
        Assert.All(rows.GroupBy(row => (row.Group, row.Line)), row => Assert.Single(row.Select(course => course.Top).Distinct()));
    }
}
