using System.Collections.Immutable;
using CsCheck;
using IfcCourser.Catalogs;
using IfcCourser.Coursing;
using IfcCourser.Rules;
using IfcCourser.Tests.Support;
using IfcCourser.Units;

namespace IfcCourser.Tests.Coursing;

/// <summary>The choice of course lines against exhaustive search; all walls measure whole millimetres, so that half millimetres try everything.</summary>
public sealed class LineChoiceTests
{
    private static readonly Catalog[] _catalogs =
    [
        BuiltInCatalogs.Get("aac-mm"),
        BuiltInCatalogs.Get("aac-mm") with { OtherHeights = [Length.FromMm(124)] },
        BuiltInCatalogs.Get("aac-mm") with { OtherHeights = [Length.FromMm(199), Length.FromMm(124)], LeastRip = null },
        BuiltInCatalogs.Get("octametric"),
    ];

    private static readonly Gen<LayoutRules> _rules = Gen.Select(Gen.Int[0, _catalogs.Length - 1], Gen.Bool)
        .Select((catalog, keep) => LayoutRules.For(BuiltInRuleSets.Get("none"), _catalogs[catalog], keep ? OpeningPolicy.Keep : OpeningPolicy.Move));

    private static readonly Gen<WallHeights> _wall = Gen
        .Select(Gen.Int[0, 400], Gen.Int[150, 1900], Gen.Bool, Gen.Bool, Gen.Select(Gen.Int[50, 700], Gen.Int[200, 900]).Array[0, 2])
        .Select((foot, height, meetsAnotherTop, hasTopBeam, openings) => new WallHeights
        {
            Base = Mm(foot),
            Top = Mm(foot + height),
            IsLevel = true,
            Bed = default,
            MeetsAnotherTop = meetsAnotherTop,
            HasTopBeam = hasTopBeam,
            Sills = [.. openings.Where(o => o.Item1 + o.Item2 + 300 < height).Select(o => Mm(foot + o.Item1))],
            Heads = [.. openings.Where(o => o.Item1 + o.Item2 + 300 < height).Select(o => Mm(foot + o.Item1 + o.Item2))],
        });

    /// <summary>Every stack of courses that the rules allow is tried, with no notion of course lines.</summary>
    [Fact]
    public void The_courses_of_a_wall_are_the_best_of_all_stacks() => Gen.Select(_rules, _wall).ForAll(
        (rules, wall) =>
        {
            var over = new BedPlay(rules).Limit([wall]).Single();
            var stack = new LineChoice(rules).Choose([over]).Stacks.Single();
            var courses = stack is null ? [] : stack.Bands(Length.Zero, rules.Catalog).Select(band => (band.Bottom, band.Top)).ToImmutableArray();
            Assert.Equal(AllStacks.Least(over, rules), AllStacks.Cost(over, courses, stack?.Split is not null, stack?.EndsInBeam == true, rules));
        },
        cases: 200);

    [Fact]
    public void No_lines_on_a_half_millimetre_grid_suit_a_group_better() => Gen.Select(_rules, _wall.Array[1, 4]).ForAll(
        (rules, walls) =>
        {
            var sets = new LevelSets([.. walls.Select(wall => wall with { Bed = rules.Catalog.LevellingBed })], rules);
            for (var i = 1; i < walls.Length; i++)
            {
                sets.JoinByCutting(0, i);
            }

            var over = new BedPlay(rules).Limit([.. walls.Where((_, i) => sets.Share(0, i))]);
            var chosen = Cost(over, new LineChoice(rules).Choose(over).Lines, rules)!.Value;
            Assert.All(
                GridLines(over, rules.Catalog),
                lines => Assert.False(Cost(over, lines, rules) is { } cost && cost.IsLessThan(chosen, rules.Set.HeightAims)));
        },
        cases: 60);

    private static HeightCost? Cost(List<WallHeights> walls, CourseLines lines, LayoutRules rules)
    {
        var fit = new CourseFit(rules);
        var sum = default(HeightCost);
        foreach (var wall in walls)
        {
            if (fit.Best(wall, lines) is not { } best)
            {
                return null;
            }

            sum += best.Cost;
        }

        return sum;
    }

    private static IEnumerable<CourseLines> GridLines(List<WallHeights> walls, Catalog catalog)
    {
        var lines = Math.Ceiling(walls.Max(wall => wall.Top).Mm / 125);
        for (var start = 0.0; start < catalog.CoursePitch.Mm; start += 0.5)
        {
            yield return new CourseLines(Mm(start), catalog);
            foreach (var height in catalog.OtherHeights)
            {
                for (var line = -1; line <= lines; line++)
                {
                    yield return new CourseLines(Mm(start), catalog, new MakeUpCourse(line, height));
                }
            }
        }
    }

    private static Length Mm(double mm) => Length.FromMm(mm);
}
