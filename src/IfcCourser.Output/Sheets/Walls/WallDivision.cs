namespace IfcCourser.Output.Sheets.Walls;

/// <summary>
/// Parts a wall over as few sheets as it takes where no sheet holds it at a scale that can be read: courses must be as high on the paper as their numbers.
/// </summary>
internal static class WallDivision
{
    /// <summary>Sheets of a wall: as few as it takes, those with its tables counted, then as few parts; its own page where no division saves a roll.</summary>
    /// <param name="papers">Smallest first.</param>
    public static ImmutableArray<WallPage> Of(WallPage page, ImmutableArray<PaperSize> papers)
    {
        var facts = page.Views[0].Facts;
        var scale = WallPage.LegibleFor(facts)[^1];
        ImmutableArray<WallPage>? best = papers.Contains(page.Paper) ? [page] : null;
        var shortest = 3 * facts.Layout.Rules.Catalog.Pitch.Mm;
        for (var count = 2; (facts.Right - facts.Left) / count > shortest && (best is not { } found || count < Sheets(found)); count++)
        {
            if (Lines(facts, count) is { } lines && Pages(facts, lines, scale, papers) is { } pages && (best is not { } fewest || Sheets(pages) < Sheets(fewest)))
            {
                best = pages;
            }
        }

        return best ?? [page];

        static int Sheets(ImmutableArray<WallPage> pages) => pages.Sum(one => 1 + one.Further.Length);
    }

    private static ImmutableArray<WallPage>? Pages(WallFacts facts, ImmutableArray<MatchLine> lines, DrawingScale scale, ImmutableArray<PaperSize> papers)
    {
        var pages = ImmutableArray.CreateBuilder<WallPage>();
        for (var i = 0; i <= lines.Length; i++)
        {
            var stretch = new WallStretch(i + 1, lines.Length + 1, i == 0 ? null : lines[i - 1], i == lines.Length ? null : lines[i]);
            if (WallPage.On(new WallFacts(facts.Layout, facts.Whole, stretch, facts.Revision), scale, papers) is not { } page)
            {
                return null;
            }

            pages.Add(page);
        }

        return pages.ToImmutable();
    }

    /// <summary>Near the ends of equal parts; null where openings or lintels leave no joint there.</summary>
    private static ImmutableArray<MatchLine>? Lines(WallFacts facts, int count)
    {
        var part = (facts.Right - facts.Left) / count;
        var joints = Joints(facts).ToArray();
        var lines = ImmutableArray.CreateBuilder<MatchLine>();
        for (var i = 1; i < count; i++)
        {
            var wanted = facts.Left + (i * part);
            var near = joints.Where(joint => Math.Abs(joint.At - wanted) < 0.3 * part).OrderBy(joint => joint.Rank).ThenBy(joint => Math.Abs(joint.At - wanted)).ToArray();
            if (near.Length == 0)
            {
                return null;
            }

            lines.Add(MatchLine.Of(facts.Whole, near[0].At));
        }

        return lines.ToImmutable();
    }

    /// <summary>
    /// Movement joints first, then joints of the first course that are clear of bars, then others, then those of the second course: none where blocks beside the line would reach an opening or a lintel.
    /// </summary>
    private static IEnumerable<(double At, int Rank)> Joints(WallFacts facts)
    {
        var (wall, reach) = (facts.Whole, facts.Layout.Rules.Catalog.UnitLength.Mm / 2);
        var heads = from course in wall.Courses.Take(2)
                    from span in course.Spans
                    from piece in course.Pieces
                    where piece.From > span.Run.From && piece.To <= span.Run.To
                    let isNearBar = wall.Cores.Any(core => Math.Abs(core.At.Mm - piece.From.Mm) < reach)
                    select (At: piece.From.Mm, Rank: (isNearBar ? 2 : 1) + (2 * (course.Number - wall.Courses[0].Number)));
        return wall.MovementJoints.Select(joint => (At: joint.At.Mm, Rank: 0)).Concat(heads).Where(joint =>
            !wall.Openings.Any(opening => joint.At > opening.Placed.Left.Mm - reach && joint.At < opening.Placed.Right.Mm + reach)
            && !wall.Lintels.Any(lintel => joint.At > lintel.From.Mm - reach && joint.At < lintel.To.Mm + reach));
    }
}
