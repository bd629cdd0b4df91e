using IfcCourser.Findings;
using IfcCourser.Tests.Support;

namespace IfcCourser.Tests.Runs;

/// <summary>The walls of fixtures/coursing/bond.txt: their cuts against what was worked by hand.</summary>
public sealed class BondCorpusTests
{
    private static readonly FindingCode[] _breaches = [FindingCodes.OverlapShort, FindingCodes.PieceShort];

    public static TheoryData<string> Captions => [.. WallCorpus.Read("bond.txt").Select(drawn => drawn.Caption)];

    [Theory]
    [MemberData(nameof(Captions))]
    public void Cuts_are_as_few_as_worked_by_hand(string caption)
    {
        var drawn = WallCorpus.Read("bond.txt").Single(drawn => string.Equals(drawn.Caption, caption, StringComparison.Ordinal));
        var layout = WallSketch.LayOut(drawn.Model, drawn.Rules);
        var catalog = drawn.Rules.Catalog;
        var cuts = layout.Walls.Select(wall => (wall.Identity.Name!, wall.Courses.SelectMany(course => course.Pieces)
            .Count(piece => piece.To - piece.From != catalog.UnitLength && !catalog.PartLengths.Contains(piece.To - piece.From))));
        Assert.Equal(drawn.Cuts, cuts);
        Assert.DoesNotContain(layout.Walls.SelectMany(wall => wall.Findings), finding => _breaches.Contains(finding.Code));
        Assert.Empty(LayoutLaws.Breaches(layout));
    }
}
