using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Tests.Support;

/// <summary>The laws of upright bars, checked on pieces and bars of the result alone; each breach is a line of text.</summary>
internal static class BarLaws
{
    public static IEnumerable<string> Breaches(WallLayout wall, LayoutRules rules) =>
        rules.Set.Bars is not { } rule || wall.Frame.Curve is not null || wall.Findings.Any(finding => finding.Code == FindingCodes.CoreNotPossible && finding.At is null)
            ? []
            : AreNoFurtherApart(wall, rule, rules.Catalog.HeadJoint.Max).Concat(StandBesideOpenings(wall, rule, rules.Catalog.HeadJoint.Max));

    /// <summary>
    /// In each course: where pieces run on from one bar to the next, through courses that are as high together as the rule asks for, the bars stand no further apart than the largest spacing, or a
    /// finding names the gap.
    /// </summary>
    private static IEnumerable<string> AreNoFurtherApart(WallLayout wall, BarRule rule, Length joint)
    {
        foreach (var course in wall.Courses)
        {
            var bars = Bars(wall).Where(bar => bar.Heights.From <= course.Bottom && bar.Heights.To >= course.Top).Select(bar => bar.At).Order().ToList();
            foreach (var (from, to) in bars.Zip(bars.Skip(1)).Where(pair => pair.Second - pair.First > rule.LargestSpacing))
            {
                if (HeightOfMasonry(wall, course, from, to, joint) >= rule.SpacingFromHeight
                    && HeightOfMasonry(wall, course, from, to, joint) > Length.Zero
                    && !wall.Findings.Any(finding => finding.Code == FindingCodes.BarsFarApart && finding.At?.S == from))
                {
                    yield return $"the bars at {from} and {to} stand too far apart in course {course.Number} and no finding names it";
                }
            }
        }
    }

    /// <summary>Beside every opening of the rule's size or more stands a bar at each side that has a piece, within the largest distance, or a finding says that it has no room.</summary>
    private static IEnumerable<string> StandBesideOpenings(WallLayout wall, BarRule rule, Length joint)
    {
        foreach (var opening in wall.Openings.Where(opening => opening.Interrupts && IsLarge(opening.Placed, rule) && !ReachesIntoCorner(opening)).Select(opening => opening.Placed))
        {
            var beside = wall.Courses.SelectMany(course => course.Pieces).Where(piece => piece.Bottom < opening.Top && piece.Top > opening.Bottom).ToList();
            if (beside.Exists(piece => piece.To <= opening.Left && piece.To + joint >= opening.Left) && !Has(opening.Left - rule.FromJamb.Largest, opening.Left, opening))
            {
                yield return $"the opening from {opening.Left} to {opening.Right} has no bar at its left";
            }

            if (beside.Exists(piece => piece.From >= opening.Right && piece.From - joint <= opening.Right) && !Has(opening.Right, opening.Right + rule.FromJamb.Largest, opening))
            {
                yield return $"the opening from {opening.Left} to {opening.Right} has no bar at its right";
            }
        }

        // The corner's bar is the one beside it, and stands in its middle: the opening is in its way, as the finding says.
        bool ReachesIntoCorner(OpeningLayout opening) =>
            wall.Findings.Any(finding => finding.Code == FindingCodes.OpeningAtCorner && string.Equals(finding.At?.Opening, opening.Opening.GlobalId, StringComparison.Ordinal));

        bool Has(Length from, Length to, ElevationRect opening) =>
            Bars(wall).Any(bar => bar.At >= from && bar.At <= to && bar.Heights.From < opening.Top && bar.Heights.To > opening.Bottom)
            || wall.Findings.Any(finding => (finding.Code == FindingCodes.CoreNotPossible || finding.Code == FindingCodes.BarFarFromJamb) && finding.At?.S is { } at && at >= from && at <= to);
    }

    private static IEnumerable<(Length At, Interval Heights)> Bars(WallLayout wall) => wall.Cores.Select(core => (core.At, new Interval(core.Bottom, core.Top)))
        .Concat(wall.CornerCores.Select(core => (core.At, new Interval(core.Bottom, core.Top))));

    private static bool IsLarge(ElevationRect opening, BarRule rule) =>
        (opening.Width >= rule.OpeningsFrom || opening.Height >= rule.OpeningsFrom) && opening.Width.Mm * opening.Height.Mm >= rule.OpeningsFromCm2 * 100.0;

    /// <summary>Of the courses over and under one, itself included, in all of which pieces run on between two places.</summary>
    private static Length HeightOfMasonry(WallLayout wall, Course course, Length from, Length to, Length joint)
    {
        var rows = wall.Courses.Select(row => RunsOn(row, from, to, joint)).ToList();
        var at = wall.Courses.IndexOf(course);
        if (!rows[at])
        {
            return Length.Zero;
        }

        var (first, last) = (at, at);
        while (first > 0 && rows[first - 1])
        {
            first--;
        }

        while (last + 1 < rows.Count && rows[last + 1])
        {
            last++;
        }

        return wall.Courses[last].Top - wall.Courses[first].Bottom;
    }

    private static bool RunsOn(Course course, Length from, Length to, Length joint)
    {
        var reached = from;
        foreach (var piece in course.Pieces.Where(piece => piece.Bottom == course.Bottom && piece.Top == course.Top && piece.To > from).OrderBy(piece => piece.From))
        {
            if (piece.From - reached > joint)
            {
                break;
            }

            reached = piece.To;
        }

        return reached >= to;
    }
}
