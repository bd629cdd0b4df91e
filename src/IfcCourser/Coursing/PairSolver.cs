using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>
/// Fills two segments that lie above each other together, laps between them counted. A state is the cells that both rows have come to; the
/// row that is behind lays the next piece, so that its joint meets but one of the other row's. States that can't end below the limit by
/// what each row needs at least on its own are dropped; the limit rises from few cuts to more.
/// </summary>
/// <remarks>
/// Of two ways to a state that end with joints of different widths the cheaper is kept, and breaches that neither row needs on its own are
/// avoided at the price of few cuts or not at all: a better pair may be missed, but what is returned costs less than what was known.
/// Not for use by several threads at once.
/// </remarks>
internal sealed class PairSolver(RowLaps laps, PairEffort effort, LayoutRules rules)
{
    /// <summary>Cuts over what the two rows need on their own at which the search ends.</summary>
    private const int MostCutsMore = 8;

    /// <summary>States at which a search ends without a result.</summary>
    private const int MostNodes = 250_000;

    /// <summary>The cell of a row that is filled.</summary>
    private const int Done = int.MaxValue;

    /// <summary>A row that lays a piece comes to be fewer cells ahead of the other.</summary>
    private readonly int _reach = Reach(rules);

    private readonly Length _cell = rules.Catalog.CutGrid;
    private readonly List<Node> _nodes = [];

    /// <summary>Nodes that wait, plus one, by the cell of the row behind (as a ring), which row that is, and how far the other is ahead.</summary>
    private readonly int[] _waiting = new int[Reach(rules) * 2 * (Reach(rules) + 2)];

    /// <summary>Their costs.</summary>
    private readonly long[] _costs = new long[Reach(rules) * 2 * (Reach(rules) + 2)];
    private PairRow[] _rows = [];
    private int[] _offsets = [];
    private long _limit;
    private int _count;
    private int _end;

    /// <summary>The rows' pieces, from each segment's start; null where none are found that cost less than what is known.</summary>
    /// <param name="a">A row.</param>
    /// <param name="b">Another row; both share a part of the wall.</param>
    /// <param name="known">What the rows are known to cost together.</param>
    public (ImmutableArray<Interval> A, ImmutableArray<Interval> B)? Solve(PairRow a, PairRow b, long known)
    {
        var origin = Length.Min(a.Left, b.Left);
        if ((b.Left - origin).Modulo(_cell) < (a.Left - origin).Modulo(_cell))
        {
            return Solve(b, a, known) is { } turned ? (turned.B, turned.A) : null;
        }

        _rows = [a, b];
        _offsets = [(int)((a.Left - origin) / _cell), (int)((b.Left - origin) / _cell)];
        _limit = 0;
        _nodes.Clear();
        var alone = a.Least[0] + b.Least[0];
        for (var more = 1; more <= MostCutsMore && _limit < known && _nodes.Count < MostNodes && !effort.IsSpent; more *= 2)
        {
            _limit = Math.Min(known, alone + (more * rules.Set.Aims.Cut));
            Run();
            effort.Spend(_nodes.Count);
            if (_end >= 0)
            {
                return (a.Pieces(Starts(0)), b.Pieces(Starts(1)));
            }
        }

        return null;
    }

    private static int Reach(LayoutRules rules) => (int)((rules.Catalog.UnitLength + rules.Catalog.HeadJoint.Max) / rules.Catalog.CutGrid) + 2;

    private void Run()
    {
        _nodes.Clear();
        (_end, _count) = (-1, 0);
        Array.Clear(_waiting);

        Offer(default, -1, 0, 0, 0, 0);
        for (var cell = 0; _count > 0 && _nodes.Count < MostNodes; cell++)
        {
            for (var row = 0; row < 2; row++)
            {
                var from = ((cell % _reach * 2) + row) * (_reach + 2);
                for (var place = from; place < from + _reach + 2; place++)
                {
                    if (_waiting[place] > 0)
                    {
                        var node = _waiting[place] - 1;
                        _waiting[place] = 0;
                        _count--;
                        GoOn(node, row);
                    }
                }
            }
        }
    }

    /// <summary>Lays every piece that may come next in the row that is behind.</summary>
    private void GoOn(int number, int behind)
    {
        var node = _nodes[number];
        var (row, other) = (_rows[behind], _rows[1 - behind]);
        var (from, ahead) = (node.Cell(behind), node.Cell(1 - behind));
        var spent = node.Cost + (ahead == Done ? 0 : other.Least[ahead]);
        if (spent + row.LastCost(from) < _limit)
        {
            Offer(node, number, behind, Done, 0, node.Cost + row.LastCost(from));
        }

        Length? joint = ahead is 0 or Done ? null : other.Centre(ahead, node.Joint(1 - behind));
        void Lay(int end, int width, long cost)
        {
            var total = node.Cost + cost + (joint is { } near ? laps.Of(near, row.Centre(end, width)) : 0);
            if (total - node.Cost + spent + row.Least[end] < _limit)
            {
                Offer(node, number, behind, end, width, total);
            }
        }

        foreach (var whole in row.Wholes)
        {
            var end = from + whole.Shortest;
            if (end < row.Cells)
            {
                Lay(end, whole.Joint, whole.Cost + row.JointCost(end, whole.Joint));
            }
        }

        var least = row.LeastAfterCut;
        foreach (var cut in row.Cuts)
        {
            var cost = cut.Cost + (from == 0 ? row.FirstCutCost : 0);
            for (var end = from + cut.Shortest; end <= from + cut.Longest && end < row.Cells && spent + cost < _limit; end++)
            {
                if (spent + cost + least[end] < _limit)
                {
                    Lay(end, cut.Joint, cost + row.JointCost(end, cut.Joint));
                }
            }
        }
    }

    /// <summary>Lets a node wait where it is the cheapest of its state.</summary>
    private void Offer(in Node from, int number, int row, int cell, int joint, long cost)
    {
        var other = from.Cell(1 - row);
        if (cell == Done && other == Done)
        {
            (_end, _limit) = (_nodes.Count, cost);
            _nodes.Add(from.After(number, row, cell, joint, cost));
            return;
        }

        var place = row == 0 ? PlaceOf(cell, other) : PlaceOf(other, cell);
        if (_waiting[place] == 0)
        {
            _nodes.Add(from.After(number, row, cell, joint, cost));
            (_waiting[place], _costs[place]) = (_nodes.Count, cost);
            _count++;
        }
        else if (cost < _costs[place])
        {
            _nodes[_waiting[place] - 1] = from.After(number, row, cell, joint, cost);
            _costs[place] = cost;
        }
    }

    private int PlaceOf(int firstCell, int secondCell)
    {
        var first = firstCell == Done ? Done : firstCell + _offsets[0];
        var second = secondCell == Done ? Done : secondCell + _offsets[1];
        var (behind, cell, ahead) = second < first ? (1, second, first) : (0, first, second);

        // Further ahead than a piece reaches is but a row that has not begun.
        var lead = ahead == Done ? _reach + 1 : Math.Min(_reach, ahead - cell);
        return (((cell % _reach * 2) + behind) * (_reach + 2)) + lead;
    }

    /// <summary>Where the pieces of a row start, with the joints before them.</summary>
    private List<(int Start, int Joint)> Starts(int row)
    {
        var starts = new List<(int Start, int Joint)>();
        for (var (number, last) = (_end, Done); number >= 0; number = _nodes[number].From)
        {
            var cell = _nodes[number].Cell(row);
            if (cell != last)
            {
                starts.Add((cell, _nodes[number].Joint(row)));
                last = cell;
            }
        }

        starts.Reverse();
        return starts;
    }

    /// <summary>How far both rows have come.</summary>
    /// <param name="First">The cell where the first row's next piece starts.</param>
    /// <param name="FirstJoint">The width in cells of the joint before it.</param>
    /// <param name="Second">The cell where the second row's next piece starts.</param>
    /// <param name="SecondJoint">The width in cells of the joint before it.</param>
    /// <param name="Cost">Of all so far.</param>
    /// <param name="From">The node before the last piece.</param>
    private readonly record struct Node(int First, int FirstJoint, int Second, int SecondJoint, long Cost, int From)
    {
        public int Cell(int row) => row == 0 ? First : Second;

        public int Joint(int row) => row == 0 ? FirstJoint : SecondJoint;

        public Node After(int number, int row, int cell, int joint, long cost) => row == 0
            ? this with { First = cell, FirstJoint = joint, Cost = cost, From = number }
            : this with { Second = cell, SecondJoint = joint, Cost = cost, From = number };
    }
}
