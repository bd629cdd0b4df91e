using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Runs;

/// <summary>Bars of a finished wall that came to stand further apart than the largest spacing, told from its pieces and bars alone.</summary>
internal static class BarGaps
{
    /// <summary>The wall with its gaps named: those named before whose bar still stands there, and new ones.</summary>
    public static WallLayout Again(WallLayout wall, LayoutRules rules)
    {
        if (rules.Set.Bars is not { } rule)
        {
            return wall;
        }

        var places = Bars(wall).Select(bar => bar.At).ToHashSet();
        var kept = wall.Findings.Where(finding => finding.Code != FindingCodes.BarsFarApart || (finding.At?.S is { } at && places.Contains(at))).ToList();
        var named = kept.Where(finding => finding.Code == FindingCodes.BarsFarApart).Select(finding => finding.At!.S!.Value).ToHashSet();
        return wall with
        {
            Findings =
            [
                .. kept,
                .. Of(wall, rule, rules.Catalog.HeadJoint.Max).Where(gap => !named.Contains(gap.From)).Select(gap => new Finding(
                    FindingCodes.BarsFarApart, Messages.BarsFarApart(gap.From, gap.To, rule.LargestSpacing, rules.Catalog.Units), new FindingPlace { S = gap.From })),
            ],
        };
    }

    private static IEnumerable<Interval> Of(WallLayout wall, BarRule rule, Length joint) => wall.Courses
        .SelectMany((course, i) =>
        {
            var bars = Bars(wall).Where(bar => bar.Heights.From <= course.Bottom && bar.Heights.To >= course.Top).Select(bar => bar.At).Order().ToList();
            return bars.Zip(bars.Skip(1), (from, to) => new Interval(from, to))
                .Where(gap => gap.Size > rule.LargestSpacing && Masonry(wall, i, gap, joint) is var height && height > Length.Zero && height >= rule.SpacingFromHeight);
        })
        .Distinct()
        .OrderBy(gap => gap.From).ThenBy(gap => gap.To);

    /// <summary>How high the courses over and under one are, itself included, in all of which pieces run on from bar to bar; zero where its own do not.</summary>
    private static Length Masonry(WallLayout wall, int course, Interval gap, Length joint)
    {
        if (!RunsOn(wall.Courses[course], gap, joint))
        {
            return Length.Zero;
        }

        var under = wall.Courses.Take(course).Reverse().TakeWhile(other => RunsOn(other, gap, joint)).LastOrDefault(wall.Courses[course]);
        var over = wall.Courses.Skip(course).TakeWhile(other => RunsOn(other, gap, joint)).Last();
        return over.Top - under.Bottom;
    }

    private static bool RunsOn(Course course, Interval gap, Length joint)
    {
        var reached = gap.From;
        foreach (var piece in course.Pieces.Where(piece => piece.Bottom == course.Bottom && piece.Top == course.Top && piece.To > gap.From)
            .OrderBy(piece => piece.From).TakeWhile(piece => piece.From - reached <= joint))
        {
            reached = piece.To;
        }

        return reached >= gap.To;
    }

    private static IEnumerable<(Length At, Interval Heights)> Bars(WallLayout wall) => wall.Cores.Select(core => (core.At, new Interval(core.Bottom, core.Top)))
        .Concat(wall.CornerCores.Select(core => (core.At, new Interval(core.Bottom, core.Top))));
}
