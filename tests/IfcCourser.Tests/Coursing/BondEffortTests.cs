using System.Collections.Immutable;
using IfcCourser.Catalogs;
using IfcCourser.Coursing;
using IfcCourser.Findings;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Runs;
using IfcCourser.Tests.Support;
using IfcCourser.Units;

namespace IfcCourser.Tests.Coursing;

/// <summary>A wall whose bond takes a search: octametric, 3.355 m long, an opening off the module.</summary>
public sealed class BondEffortTests
{
    private static readonly LayoutRules _rules = LayoutRules.For(BuiltInRuleSets.Get("de"), BuiltInCatalogs.Get("octametric"), OpeningPolicy.Keep);

    [Fact]
    public void Where_no_effort_is_left_a_wall_is_bonded_from_end_to_end_and_it_is_told()
    {
        var wall = Wall();
        var shapes = new FinishedBond(wall, _rules).Shapes;
        var (searched, spent) = (Solvers(wall), Solvers(wall));
        spent.Effort.SpendPieces(BondEffort.Most);
        var (full, quick) = (new WallBond(shapes, wall.Lintels, [], searched).Solve(), new WallBond(shapes, wall.Lintels, [], spent).Solve());
        Assert.False(searched.Effort.IsCutShort);
        Assert.True(spent.Effort.IsCutShort);
        Assert.True(Score(quick, wall).CompareTo(Score(full, wall)) > 0, $"{Score(quick, wall)} without a search, {Score(full, wall)} with one");
        foreach (var (segment, row) in quick.SelectMany(course => course.Shape.Segments.Zip(course.Rows)))
        {
            Assert.Equal((Length.Zero, segment.Box.Width), (row[0].From, row[^1].To));
            Assert.All(row.Zip(row.Skip(1)), pair => Assert.InRange((pair.Second.From - pair.First.To).Nanometres, _rules.Catalog.HeadJoint.Min.Nanometres, _rules.Catalog.HeadJoint.Max.Nanometres));
        }
    }

    [Fact]
    public void An_ordinary_wall_is_searched_to_the_end() => Assert.DoesNotContain(Wall().Findings, finding => finding.Code == FindingCodes.BondSearchEnded);

    /// <summary>Nine openings side by side, seven times over each other: ways from foot to top along the piers are ten to the seventh power.</summary>
    [Fact]
    public void A_wall_of_many_openings_in_many_rows_is_bonded()
    {
        var (catalog, courses) = (_rules.Catalog, 28);
        var openings = Enumerable.Range(0, 7).SelectMany(row => Enumerable.Range(0, 9).Select(i => (500.0 + (1130 * i), 1180.0 + (1130 * i), 300.0 + (1000 * row), 700.0 + (1000 * row))));
        var height = catalog.LevellingBed.Nominal + (courses * catalog.CoursePitch) - catalog.BedJoint.Nominal;
        var laid = WallSketch.LayOut(WallSketch.Straight(Length.FromMm(10_600), height, catalog.Widths[^1].Actual, [.. openings]), _rules);
        Assert.Equal(courses, laid.Courses.Length);
        Assert.All(laid.Courses, course => Assert.NotEmpty(course.Pieces));
    }

    private static WallLayout Wall()
    {
        var catalog = _rules.Catalog;
        var height = catalog.LevellingBed.Nominal + (8 * catalog.CoursePitch) - catalog.BedJoint.Nominal;
        return WallSketch.LayOut(WallSketch.Straight(Length.FromMm(3355), height, catalog.Widths[^1].Actual, [(565, 1170, 300, 1300)]), _rules);
    }

    private static BondSolvers Solvers(WallLayout wall) => new(wall.Frame.Thickness, _rules, new RestTables());

    private static BondScore Score(ImmutableArray<LaidCourse> laid, WallLayout wall) => BondScore.Of(laid, [], wall.Lintels, _rules);
}
