using IfcCourser.Layouts;
using IfcCourser.Units;

namespace IfcCourser.Output.Sheets.Walls;

/// <summary>
/// Where the head joints are not nominal: pieces come on the saw's grid, so a stretch is closed by its joints. A mason who lays the
/// nominal joint there ends short of the mark or past it.
/// </summary>
internal static class HeadJoints
{
    /// <summary>Finer than this no mason lays: half a millimetre, a thirty-second of an inch.</summary>
    public static Length Step(UnitSystem units) =>
        units == UnitSystem.Inch ? new Length(Length.NanometresPerInch / 32) : Length.FromMm(0.5);

    public static IEnumerable<HeadJointRun> OffNominal(WallFacts facts)
    {
        var nominal = facts.Layout.Rules.Catalog.HeadJoint.Nominal;
        return facts.Wall.Courses.SelectMany(course => Of(facts, course))
            .Where(stretch => stretch.Mean != nominal)
            .GroupBy(stretch => (stretch.Mean, stretch.From))
            .Select(group => new HeadJointRun(group.Key.Mean, group.Key.From, [.. group.Select(stretch => stretch.Course)]))
            .OrderBy(run => run.Mean).ThenBy(run => run.Courses[0]);
    }

    /// <summary>One for the course where all its stretches are alike, else one for each.</summary>
    private static IEnumerable<(Length Mean, Length? From, int Course)> Of(WallFacts facts, Course course)
    {
        var step = Step(facts.Text.Units);
        var means = course.Spans.Select(span => (span.Run.From, Gaps: Gaps(course, span)))
            .Where(span => span.Gaps.Length > 0)
            .Select(span => (span.From, Mean: (span.Gaps.Aggregate(Length.Zero, (sum, gap) => sum + gap) / span.Gaps.Length).RoundTo(step)))
            .ToArray();
        return means.Select(span => span.Mean).Distinct().Skip(1).Any()
            ? means.Select(span => (span.Mean, (Length?)span.From, course.Number))
            : means.Take(1).Select(span => (span.Mean, (Length?)null, course.Number));
    }

    /// <summary>Between neighbours that share a height: a span may have pieces above each other, or lower ones over a lintel.</summary>
    private static Length[] Gaps(Course course, Span span)
    {
        var pieces = course.Pieces.Where(piece => piece.From >= span.Run.From && piece.To <= span.Run.To).OrderBy(piece => piece.From).ToList();
        return
        [
            .. pieces.Select((left, i) => pieces.Skip(i + 1).FirstOrDefault(right => right.Bottom < left.Top && right.Top > left.Bottom) is { } right
                    ? (Length?)(right.From - left.To)
                    : null)
                .OfType<Length>(),
        ];
    }
}
