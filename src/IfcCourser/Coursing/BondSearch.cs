using IfcCourser.Rules;

namespace IfcCourser.Coursing;

/// <summary>
/// One search for a wall's bond. Built from the bottom up, each course is filled exactly, given the one below; where the wall so reaches what
/// its segments cost at least on their own, nothing can save a cut. Otherwise rows of pieces are gathered for every segment
/// (exact answers to the neighbours' rows), the best wall that they can make is chosen exactly, and its neighbours'
/// answers are gathered in turn, until there are no new ones.
/// </summary>
internal sealed class BondSearch
{
    private const int MostRounds = 8;

    /// <summary>Where no cut can be saved.</summary>
    private const int FewRounds = 1;
    private const int MostSweeps = 4;

    /// <summary>How many rows of a segment where a rule is broken a wall is built from anew.</summary>
    private const int MostRestarts = 24;

    private readonly WallRows _wall;
    private readonly RowChoice _choice;
    private readonly RowAnswers _answers;
    private readonly BondSolvers _solvers;
    private readonly BondAims _aims;

    /// <summary>What the wall costs at least by what each segment does.</summary>
    private readonly long _least;

    /// <summary>What it costs at least by what pairs of segments do, as far as that is known.</summary>
    private long _leastInPairs;

    /// <param name="wall">Its segments, for which rows are gathered.</param>
    /// <param name="order">Which rows are answered first.</param>
    /// <param name="solvers">Find rows and pairs of them.</param>
    public BondSearch(WallRows wall, AnswerOrder order, BondSolvers solvers)
    {
        (_wall, _solvers, _aims) = (wall, solvers, solvers.Rules.Set.Aims);
        _choice = new RowChoice(wall.Segments, wall.Pairs, solvers);
        _answers = new RowAnswers(wall, _choice, order, solvers);
        _least = _leastInPairs = wall.LeastAlone();
    }

    /// <summary>Whether no bond has fewer cuts or keeps more rules, as far as that is known.</summary>
    public bool HasFewestCuts(int[] bond) => _wall.CostOf(bond) - _leastInPairs < _aims.Cut;

    /// <summary>The best bond found.</summary>
    /// <param name="isDraft">Whether to leave out what takes long and saves little: to tell one attempt from another.</param>
    public int[] Best(bool isDraft)
    {
        var best = _wall.BuildUp();
        if (!IsBest(best))
        {
            best = _wall.Better(best, _wall.BuildDown());
        }

        if (IsBest(best))
        {
            return best;
        }

        foreach (var segment in _wall.Segments.Distinct())
        {
            segment.AddLeaning(_aims.CutAtJamb);
        }

        _solvers.Effort.AllowPairs(_wall.CostOf(best) >= BondAims.Breach);
        var pairs = new RowPairs(_wall, _solvers);
        _leastInPairs += pairs.Gather();
        best = Choose(best);
        best = Improve(best, isDraft || HasFewestCuts(best) ? FewRounds : MostRounds);
        return isDraft ? best : Restarted(Swept(best, pairs));
    }

    private bool IsBest(int[] bond) => _wall.CostOf(bond) - _least < _aims.Short;

    /// <summary>Fills pairs of segments anew beside the best wall's rows, in turn with the choice among all rows, as long as that betters it.</summary>
    private int[] Swept(int[] best, RowPairs pairs)
    {
        var cost = long.MaxValue;
        for (var sweep = 0; !_solvers.Effort.ArePairsSpent(JointWidths.Useful) && sweep < MostSweeps && !HasFewestCuts(best) && _wall.CostOf(best) < cost && _solvers.Effort.MaySearch(); sweep++)
        {
            cost = _wall.CostOf(best);
            best = Improve(Choose(pairs.Improve(best)), MostRounds);
            if (!HasFewestCuts(best))
            {
                _answers.Between(best);
                var (below, above) = _answers.First();
                pairs.GatherBeside(below, above);
                best = Improve(Choose(best), MostRounds);
            }
        }

        return best;
    }

    /// <summary>
    /// The best of walls that are built up and down from other rows where a wall breaks a rule. Where several courses must change at once
    /// to keep it, such walls bring the rows that the next choice is made from.
    /// </summary>
    private int[] Restarted(int[] best)
    {
        if (_wall.CostOf(best) / BondAims.Breach <= _leastInPairs / BondAims.Breach || !_solvers.Effort.MaySearch())
        {
            return best;
        }

        var met = new HashSet<SegmentRows>();
        foreach (var (course, segment) in _wall.Broken(best).Where(place => met.Add(_wall.Segments[place.Segment])))
        {
            var rows = _wall.Segments[segment].Rows;
            foreach (var row in Enumerable.Range(0, rows.Count).OrderBy(row => rows[row].Cost).Take(MostRestarts).TakeWhile(_ => _solvers.Effort.MaySearch()).ToList())
            {
                best = _wall.Better(best, _wall.BuildFrom(course, segment, row));
            }
        }

        return Improve(Choose(best), MostRounds);
    }

    /// <summary>Gathers rows and chooses of them, in turn.</summary>
    private int[] Improve(int[] best, int rounds)
    {
        for (var (round, isNew) = (0, true); isNew && round < rounds && !IsBest(best) && _solvers.Effort.MaySearch(); round++)
        {
            isNew = _answers.ToRows() | _wall.AddAnswers(best);
            best = Choose(best);
        }

        return best;
    }

    private int[] Choose(int[] best) => _wall.Better(best, _choice.Best(best, _wall.CostOf(best)));
}
