using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Runs;

/// <summary>Bars of a finished wall that, as built, stand further apart or further from an opening than rules allow, told from its pieces and bars alone.</summary>
internal static class BarGaps
{
    /// <summary>The wall with what is found of its gaps now: those named before whose bar still stands there, and new ones.</summary>
    /// <param name="wall">With its bars as built.</param>
    /// <param name="planned">The same with its bars as planned.</param>
    /// <param name="rules">Of the layout.</param>
    public static WallLayout Again(WallLayout wall, WallLayout planned, LayoutRules rules)
    {
        if (rules.Set.Bars is not { } rule)
        {
            return wall;
        }

        var units = rules.Catalog.Units;
        var places = Bars(wall).Select(bar => bar.At).ToHashSet();
        var kept = wall.Findings.Where(finding => finding.Code != FindingCodes.BarsFarApart || (finding.At?.S is { } at && places.Contains(at))).ToList();
        var named = kept.Where(finding => finding.Code == FindingCodes.BarsFarApart).Select(finding => finding.At!.S!.Value).ToHashSet();
        return wall with
        {
            Findings =
            [
                .. kept,
                .. Of(wall, rule, rules.Catalog.HeadJoint.Max).Where(gap => !named.Contains(gap.From)).Select(gap => new Finding(
                    FindingCodes.BarsFarApart, Messages.BarsFarApartAsBuilt(gap.From, gap.To, rule.LargestSpacing, units), new FindingPlace { S = gap.From })),
                .. Jambs(wall, rule).Where(side => HasBar(planned, side) && !HasBar(wall, side)).Select(side => new Finding(
                    FindingCodes.BarFarFromJamb, Messages.BarFarFromJamb(side.Opening.Opening.Label, side.Jamb, rule.FromJamb.Largest, units),
                    new FindingPlace { S = side.Jamb, Opening = side.Opening.Opening.GlobalId })),
            ],
        };
    }

    /// <summary>Where bars beside openings may stand.</summary>
    private static IEnumerable<(OpeningLayout Opening, Length Jamb, Interval Range)> Jambs(WallLayout wall, BarRule rule) => wall.Openings
        .Where(opening => opening.Interrupts && rule.AsksAtOpening(opening.Placed.Width, opening.Placed.Height))
        .SelectMany(opening => new[]
        {
            (opening, opening.Placed.Left, new Interval(opening.Placed.Left - rule.FromJamb.Largest, opening.Placed.Left)),
            (opening, opening.Placed.Right, new Interval(opening.Placed.Right, opening.Placed.Right + rule.FromJamb.Largest)),
        });

    private static bool HasBar(WallLayout wall, (OpeningLayout Opening, Length Jamb, Interval Range) side) => Bars(wall)
        .Any(bar => side.Range.Contains(bar.At) && bar.Heights.Overlaps(new Interval(side.Opening.Placed.Bottom, side.Opening.Placed.Top)));

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
