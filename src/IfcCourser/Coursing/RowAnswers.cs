namespace IfcCourser.Coursing;

/// <summary>Gathers for every segment the cheapest rows beside rows of the segments below and above it.</summary>
/// <param name="wall">Its segments.</param>
/// <param name="choice">What the wall costs up to a row.</param>
/// <param name="order">Which rows are answered.</param>
/// <param name="solvers">What laps cost.</param>
internal sealed class RowAnswers(WallRows wall, RowChoice choice, AnswerOrder order, BondSolvers solvers)
{
    /// <summary>How many rows of a neighbour are answered one by one: the way to a better wall may lead over rows that help but later.</summary>
    private const int MostAnswered = 24;

    /// <summary>How many rows below are answered together with as many above.</summary>
    private const int MostBetween = 8;

    private readonly ILookup<int, int> _below = wall.Pairs.ToLookup(pair => pair.Upper, pair => pair.Lower);
    private readonly ILookup<int, int> _above = wall.Pairs.ToLookup(pair => pair.Lower, pair => pair.Upper);

    /// <summary>Gathers answers to single rows; whether any is new.</summary>
    public bool ToRows()
    {
        var isNew = false;
        foreach (var (lower, upper) in wall.Pairs.Select(pair => (wall.Segments[pair.Lower], wall.Segments[pair.Upper])).Distinct())
        {
            isNew |= Add(lower, Cheapest(upper).Take(MostAnswered)) | Add(upper, Cheapest(lower).Take(MostAnswered));
        }

        if (order == AnswerOrder.Reached)
        {
            var (below, above) = (choice.Reaching(isFromBelow: true), choice.Reaching(isFromBelow: false));
            foreach (var (lower, upper) in wall.Pairs)
            {
                isNew |= Add(wall.Segments[lower], Reached(upper, above).Take(MostAnswered)) | Add(wall.Segments[upper], Reached(lower, below).Take(MostAnswered));
            }
        }

        return isNew;
    }

    /// <summary>By segment the row that is answered first, from below and from above.</summary>
    public (int[] FromBelow, int[] FromAbove) First()
    {
        return order == AnswerOrder.Cheapest
            ? (new int[wall.Segments.Length], new int[wall.Segments.Length])
            : (Best(choice.Reaching(isFromBelow: true)), Best(choice.Reaching(isFromBelow: false)));

        static int[] Best(long[][] costs) => [.. costs.Select(rows => Array.IndexOf(rows, rows.Min()))];
    }

    /// <summary>Gathers answers to a row below together with a row above, those of a bond among them; its rows lie beside in the other places.</summary>
    public void Between(int[] bond)
    {
        var (below, above) = order == AnswerOrder.Reached ? (choice.Reaching(isFromBelow: true), choice.Reaching(isFromBelow: false)) : ([], []);
        var met = new HashSet<(SegmentRows Below, SegmentRows Between, SegmentRows Above)>();
        for (var s = 0; s < wall.Segments.Length; s++)
        {
            foreach (var (lower, upper) in _below[s].SelectMany(lower => _above[s].Select(upper => (lower, upper))))
            {
                // What the wall costs up to a row differs from course to course.
                if (met.Add((wall.Segments[lower], wall.Segments[s], wall.Segments[upper])) || order == AnswerOrder.Reached)
                {
                    Between(s, bond, (lower, Best(lower, below)), (upper, Best(upper, above)));
                }
            }
        }

        List<SegmentRows.Row> Best(int segment, long[][] costs) =>
        [
            .. (order == AnswerOrder.Reached ? Reached(segment, costs) : Cheapest(wall.Segments[segment])).Take(MostBetween)
                .Prepend(wall.Segments[segment].Rows[bond[segment]]).Distinct(),
        ];
    }

    private void Between(int segment, int[] bond, (int Segment, List<SegmentRows.Row> Rows) lower, (int Segment, List<SegmentRows.Row> Rows) upper)
    {
        var others = _above[segment].Concat(_below[segment]).Where(other => other != lower.Segment && other != upper.Segment)
            .Select(other => wall.Segments[other].Rows[bond[other]].Joints).ToList();
        foreach (var (below, above) in lower.Rows.SelectMany(below => upper.Rows.Select(above => (below, above))))
        {
            wall.Segments[segment].AddCheapest(new JointsBeside(solvers.Laps, [below.Joints, above.Joints, .. others], []));
        }
    }

    private bool Add(SegmentRows segment, IEnumerable<SegmentRows.Row> rows)
    {
        var isNew = false;
        foreach (var row in rows.ToList())
        {
            isNew |= segment.AddCheapest(new JointsBeside(solvers.Laps, [row.Joints], []));
        }

        return isNew;
    }

    private static IEnumerable<SegmentRows.Row> Cheapest(SegmentRows segment) => segment.Rows.OrderBy(row => row.Cost);

    /// <summary>A segment's rows, those first that the wall reaches at least cost; rows gathered since the costs were taken are left out.</summary>
    private IEnumerable<SegmentRows.Row> Reached(int segment, long[][] costs) =>
        Enumerable.Range(0, costs[segment].Length).OrderBy(row => costs[segment][row]).Select(row => wall.Segments[segment].Rows[row]);
}
