using System.Collections.Immutable;
using IfcCourser.Layouts;

namespace IfcCourser.Coursing;

/// <summary>
/// Bonds a wall. Where a search leaves cuts or broken rules that may be saved, a second one starts from nothing and answers other rows, for
/// what a search finds hangs on the rows that it met first; the better bond is taken.
/// </summary>
internal sealed class WallBond(ImmutableArray<ShapedCourse> shapes, ImmutableArray<Lintel> lintels, ImmutableArray<Bar> bars, BondSolvers solvers)
{
    /// <summary>More rows of a segment than this are seldom worth the search among them.</summary>
    private const int MostRows = 200;

    /// <summary>Where a second search is worth its time, it may gather more.</summary>
    private const int MostRowsAnew = 1000;

    /// <param name="isDraft">Whether to leave out what takes long and saves little: to tell one attempt from another.</param>
    public ImmutableArray<LaidCourse> Solve(bool isDraft = false)
    {
        var wall = new WallRows(shapes, lintels, bars, MostRows, solvers);
        var search = new BondSearch(wall, AnswerOrder.Cheapest, solvers);
        var best = search.Best(isDraft);
        var mayBeBettered = !isDraft && !search.HasFewestCuts(best) && !solvers.Effort.IsCutShort;
        return (mayBeBettered ? Anew(wall.CostOf(best)) : null) ?? wall.Settle(best);
    }

    /// <summary>A bond that costs less than the one known.</summary>
    private ImmutableArray<LaidCourse>? Anew(long known)
    {
        solvers.Effort.StartAnew(true);
        var wall = new WallRows(shapes, lintels, bars, MostRowsAnew, solvers);
        var best = solvers.Effort.MaySearch() ? new BondSearch(wall, AnswerOrder.Reached, solvers).Best(isDraft: false) : null;
        solvers.Effort.StartAnew(false);
        return best is not null && wall.CostOf(best) < known ? wall.Settle(best) : null;
    }
}
