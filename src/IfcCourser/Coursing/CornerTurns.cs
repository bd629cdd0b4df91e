using System.Collections.Immutable;
using IfcCourser.Rules;
using IfcCourser.Walls;

namespace IfcCourser.Coursing;

/// <summary>
/// Chooses for each bonded corner which wall runs through in odd courses, so that the walls' plain courses, odd and
/// even, cost least together. A wall couples the corners at its two ends and a corner joins two walls, so corners form
/// chains and rings: dynamic programming along them is exact.
/// </summary>
internal sealed class CornerTurns
{
    private readonly ImmutableArray<Junction> _junctions;
    private readonly JunctionPlan _plan;
    private readonly PlainCourseCost _cost;

    public CornerTurns(ImmutableArray<WallLines> walls, ImmutableArray<Junction> junctions, JunctionPlan plan, LayoutRules rules, RestTables tables)
    {
        _junctions = junctions;
        _plan = plan;
        _cost = new PlainCourseCost(walls, junctions, rules, tables);
    }

    /// <summary>One choice a junction; of no meaning for junctions that are not bonded corners.</summary>
    public ImmutableArray<CornerTurn> Choose()
    {
        var turns = new CornerTurn[_junctions.Length];
        var seen = new bool[_junctions.Length];
        foreach (var start in ChainStarts())
        {
            if (!seen[start])
            {
                Settle(Chain(start, seen), turns);
            }
        }

        return [.. turns];
    }

    /// <summary>The corners where chains end first, so that what is left are rings.</summary>
    private IEnumerable<int> ChainStarts()
    {
        var corners = Enumerable.Range(0, _junctions.Length).Where(j => _plan.IsBonded(_junctions[j])).ToList();
        return corners.Where(j => Next(j, null).Count() < 2).Concat(corners);
    }

    private List<int> Chain(int start, bool[] seen)
    {
        var chain = new List<int>();
        for (int? at = start; at is { } corner; at = Next(corner, seen).Select(j => (int?)j).FirstOrDefault())
        {
            seen[corner] = true;
            chain.Add(corner);
        }

        return chain;
    }

    private IEnumerable<int> Next(int corner, bool[]? seen) =>
        new[] { _junctions[corner].First, _junctions[corner].Second }
            .SelectMany(CornersOf)
            .Where(j => j != corner && seen?[j] != true)
            .Distinct();

    /// <summary>The bonded corners of a wall: at most one at each end.</summary>
    private IEnumerable<int> CornersOf(int wall) => _plan.JunctionsOf(wall)
        .Where(j => _plan.IsBonded(_junctions[j]))
        .DistinctBy(j => JunctionPlan.PlaceOn(_junctions[j], wall).Side);

    private void Settle(List<int> chain, CornerTurn[] turns)
    {
        var best = long.MaxValue;
        foreach (var first in Enum.GetValues<CornerTurn>())
        {
            var (cost, choice) = Along(chain, first);
            if (cost < best)
            {
                best = cost;
                for (var i = 0; i < chain.Count; i++)
                {
                    turns[chain[i]] = choice[i];
                }
            }
        }
    }

    /// <summary>The cheapest turns of a chain whose first corner is given.</summary>
    private (long Cost, CornerTurn[] Turns) Along(List<int> chain, CornerTurn first)
    {
        var states = new Dictionary<CornerTurn, (long Cost, ImmutableList<CornerTurn> Turns)> { [first] = (0, [first]) };
        for (var i = 1; i < chain.Count; i++)
        {
            var next = new Dictionary<CornerTurn, (long Cost, ImmutableList<CornerTurn> Turns)>();
            foreach (var turn in Enum.GetValues<CornerTurn>())
            {
                foreach (var (before, state) in states)
                {
                    var cost = state.Cost + CostBetween(chain[i - 1], before, chain[i], turn);
                    if (!next.TryGetValue(turn, out var known) || cost < known.Cost)
                    {
                        next[turn] = (cost, state.Turns.Add(turn));
                    }
                }
            }

            states = next;
        }

        var (total, turns) = states
            .Select(state => (Cost: state.Value.Cost + CostOfEnds(chain, first, state.Key), state.Value.Turns))
            .MinBy(state => state.Cost);
        return (total, [.. turns]);
    }

    /// <summary>Cost of the wall that joins two corners of a chain.</summary>
    private long CostBetween(int a, CornerTurn turnA, int b, CornerTurn turnB) =>
        WallsOf(a).Intersect(WallsOf(b)).Sum(wall => _cost.Of(wall, [(a, turnA), (b, turnB)]));

    /// <summary>Cost of the walls beyond the chain's ends, or of the one that closes a ring.</summary>
    private long CostOfEnds(List<int> chain, CornerTurn first, CornerTurn last)
    {
        if (chain.Count == 1)
        {
            return WallsOf(chain[0]).Sum(wall => _cost.Of(wall, [(chain[0], first)]));
        }

        var outer = WallsOf(chain[0]).Except(WallsOf(chain[1]));
        var beyond = WallsOf(chain[^1]).Except(WallsOf(chain[^2]));
        return outer.Union(beyond).Sum(wall => _cost.Of(
            wall, [.. new[] { (Corner: chain[0], Turn: first), (Corner: chain[^1], Turn: last) }.Where(c => WallsOf(c.Corner).Contains(wall))]));
    }

    private int[] WallsOf(int corner) => [_junctions[corner].First, _junctions[corner].Second];
}
