using System.Collections.Immutable;
using CsCheck;
using IfcCourser.Coursing;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Modules;
using IfcCourser.Rules;
using IfcCourser.Runs;
using IfcCourser.Tests.Support;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Tests.Coursing;

/// <summary>The laws of lintels on thousands of walls, before any course is bonded: openings side by side and above each other, on lines and off them.</summary>
public sealed class LintelLawTests
{
    private static readonly Gen<(int Pier, int Width, int Sill, int Head)[]> _openings = Gen
        .Select(Gen.Int[0, 900], Gen.Int[250, 3200], Gen.Int[0, 1500], Gen.Int[1600, 2950])
        .Select(o => (o.Item1, o.Item2, o.Item3, o.Item4))
        .Array[1, 5];

    [Fact]
    public void Every_lintel_keeps_the_laws() => Gen.Select(WallGen.Rules, _openings, Gen.Int[0, 5], Gen.Int[1, 2]).ForAll(
        (rules, openings, width, loadClass) =>
        {
            var classed = rules with { Set = rules.Set with { LintelLoadClass = loadClass } };
            Assert.Empty(LintelLaws.Breaches(Planned(Wall(openings, rules.Catalog.Widths[width % rules.Catalog.Widths.Length].Actual), classed)));
        },
        cases: 3000);

    private static Wall Wall((int Pier, int Width, int Sill, int Head)[] openings, Length thickness)
    {
        var placed = new List<WallOpening>();
        var at = 0;
        foreach (var (pier, width, sill, head) in openings)
        {
            placed.Add(WallSketch.Opening(placed.Count, at + pier, at + pier + width, sill < 200 ? 0 : sill, head));
            at += pier + width;
        }

        return WallSketch.Straight(Length.FromMm(at + 150), Length.FromMm(3100), thickness) with { Openings = [.. placed] };
    }

    /// <summary>A wall with its lintels and findings and no pieces.</summary>
    private static Layout Planned(Wall wall, LayoutRules rules)
    {
        var catalog = rules.Catalog;
        var bands = Enumerable.Range(0, 40)
            .Select(i => (Bottom: catalog.LevellingBed.Nominal + (catalog.CoursePitch * i), Index: i))
            .TakeWhile(course => course.Bottom + catalog.UnitHeight <= Length.FromMm(3100))
            .Select(course => new CourseBand(course.Index + 1, course.Index, CourseKind.Unit, course.Bottom, course.Bottom + catalog.UnitHeight))
            .ToImmutableArray();
        ImmutableArray<Interval> courses = [.. bands.Select(band => new Interval(band.Bottom, band.Top))];
        var placed = OpeningPlacement.Settle([(wall, courses)], rules)[0];
        var lines = new WallLines(
            wall, new LevelGroup("G1", new CourseLines(catalog.LevellingBed.Nominal, catalog)), new ElevationOutline(wall.Outline), WallHeights.Of(wall, wall.Outline.Max(point => point.Z), rules), bands);
        var (lintels, findings) = new LintelPlan(lines, placed.Openings, _ => [], [], rules).Solve();
        var laid = new WallLayout
        {
            Wall = wall,
            Group = "G1",
            LevelLine = bands[0].Top,
            Openings = placed.Openings,
            ModuleLines = placed.Lines,
            Courses = [.. bands.Select(band => new Course(band.Number, band.Kind, band.Bottom, band.Top, [], []))],
            Lintels = lintels,
            Cores = [],
            BondBeams = [],
            MovementJoints = [],
            Embeds = [],
            Quantities = new WallQuantities(0, 0, 0, 0, 0, 0, 0, 0),
            Findings = [.. findings, .. new OpeningHeightFindings(courses, lintels, rules).Of(placed.Openings), .. GapsOf(placed.Openings, lintels)],
        };
        return WallSketch.LayOut(new WallModel { Walls = [], Skipped = [], Junctions = [], Findings = [] }, rules) with { Walls = [laid] };
    }

    /// <summary>Courses name what they leave open; here there are none.</summary>
    private static IEnumerable<Findings.Finding> GapsOf(ImmutableArray<OpeningLayout> openings, ImmutableArray<Lintel> lintels) => openings
        .Where(opening => lintels.Any(lintel => lintel.From <= opening.Placed.Left && lintel.To >= opening.Placed.Right && lintel.Bottom > opening.Placed.Top))
        .Select(_ => new Findings.Finding(Findings.FindingCodes.OutlineNotFilled, "A gap"));
}
