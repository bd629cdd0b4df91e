using System.Collections.Immutable;

namespace IfcCourser.Coursing;

/// <summary>
/// Gathers for every segment the cheapest rows beside rows of the segments below and above it. Which rows are answered: the cheapest, and those that the wall
/// reaches at least cost from its foot or from its top, for a row that costs more may be the one that lets all the rest of the wall cost less.
/// </summary>
/// <param name="segments">The wall's segments, numbered from below; equal ones share their rows.</param>
/// <param name="pairs">Segments whose joints may come near each other.</param>
/// <param name="choice">What the wall costs up to a row.</param>
/// <param name="solvers">What laps cost.</param>
internal sealed class RowAnswers(ImmutableArray<SegmentRows> segments, ImmutableArray<(int Lower, int Upper)> pairs, RowChoice choice, BondSolvers solvers)
{
    /// <summary>How many rows of a neighbour are answered one by one, of either kind.</summary>
    private const int MostAnswered = 24;

    /// <summary>How many rows below are answered together with as many above.</summary>
    private const int MostBetween = 8;

    private readonly ILookup<int, int> _below = pairs.ToLookup(pair => pair.Upper, pair => pair.Lower);

    private readonly ILookup<int, int> _above = pairs.ToLookup(pair => pair.Lower, pair => pair.Upper);

    /// <summary>Gathers answers to single rows; whether any is new.</summary>
    public bool ToRows()
    {
        var isNew = false;
        foreach (var (lower, upper) in pairs.Select(pair => (segments[pair.Lower], segments[pair.Upper])).Distinct())
        {
            isNew |= Add(lower, Cheapest(upper)) | Add(upper, Cheapest(lower));
        }

        var (below, above) = (choice.Reaching(isFromBelow: true), choice.Reaching(isFromBelow: false));
        foreach (var (lower, upper) in pairs)
        {
            isNew |= Add(segments[lower], Reached(upper, above).Take(MostAnswered)) | Add(segments[upper], Reached(lower, below).Take(MostAnswered));
        }

        return isNew;
    }

    /// <summary>Gathers answers to a row below together with a row above: those that are reached at least cost and those of a wall, which also lie all about them.</summary>
    public void Between(int[] wall)
    {
        var (below, above) = (choice.Reaching(isFromBelow: true), choice.Reaching(isFromBelow: false));
        for (var s = 0; s < segments.Length; s++)
        {
            foreach (var (lower, upper) in _below[s].SelectMany(lower => _above[s].Select(upper => (lower, upper))))
            {
                var others = _below[s].Concat(_above[s]).Where(other => other != lower && other != upper).Select(other => segments[other].Rows[wall[other]]).ToList();
                var (under, over) = (With(lower, below), With(upper, above));
                foreach (var (first, second) in under.SelectMany(first => over.Select(second => (first, second))))
                {
                    segments[s].AddCheapest(new JointsBeside(solvers.Laps, [first.Joints, second.Joints, .. others.Select(row => row.Joints)], []));
                }
            }
        }

        List<SegmentRows.Row> With(int segment, long[][] costs) => [.. Reached(segment, costs).Take(MostBetween).Prepend(segments[segment].Rows[wall[segment]]).Distinct()];
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

    private static IEnumerable<SegmentRows.Row> Cheapest(SegmentRows segment) => segment.Rows.OrderBy(row => row.Cost).Take(MostAnswered);

    /// <summary>A segment's rows, those first that the wall reaches at least cost; rows gathered since the costs were taken are left out.</summary>
    private IEnumerable<SegmentRows.Row> Reached(int segment, long[][] costs) =>
        Enumerable.Range(0, costs[segment].Length).OrderBy(row => costs[segment][row]).Select(row => segments[segment].Rows[row]);
}
