using IfcCourser.Findings;
using IfcCourser.Tests.Support;

namespace IfcCourser.Tests.Runs;

/// <summary>The walls of fixtures/coursing/joints.txt: movement joints and bonded tees against what was worked by hand.</summary>
public sealed class JointCorpusTests
{
    private static readonly FindingCode[] _aboutJoints =
        [FindingCodes.MovementJointMissing, FindingCodes.MovementJointNotPlaced, FindingCodes.TeeNotBonded];

    public static TheoryData<string> Captions => [.. WallCorpus.Read("joints.txt").Select(drawn => drawn.Caption)];

    [Theory]
    [MemberData(nameof(Captions))]
    public void Joints_and_courses_are_as_drawn(string caption)
    {
        var drawn = WallCorpus.Read("joints.txt").Single(drawn => string.Equals(drawn.Caption, caption, StringComparison.Ordinal));
        var layout = WallSketch.LayOut(drawn.Model, drawn.Rules);
        Assert.Equal(drawn.Joints, layout.Walls.SelectMany(wall => wall.MovementJoints.Select(joint => (wall.Identity.Name!, joint.At, joint.Why))));
        Assert.All(drawn.Expected, column =>
        {
            var wall = layout.Walls.Single(wall => string.Equals(wall.Identity.Name, column.Wall, StringComparison.Ordinal));
            Assert.Equal(column.Courses.Select(course => course.Height), wall.Courses.Select(course => course.Top - course.Bottom));
            Assert.All(
                column.Courses.Zip(wall.Courses).Where(pair => pair.First.Run.Length > 0),
                pair => Assert.Equal(pair.First.Run, CorpusDrawing.Of(wall, pair.Second, drawn.Rules.Catalog.Units)));
        });
        var found = layout.Findings.Concat(layout.Walls.SelectMany(wall => wall.Findings)).Select(finding => finding.Code).Intersect(_aboutJoints).Select(code => code.Id);
        Assert.Equal(drawn.Finds.Order(StringComparer.Ordinal), found.Order(StringComparer.Ordinal));
        Assert.Empty(LayoutLaws.Breaches(layout));
    }
}
