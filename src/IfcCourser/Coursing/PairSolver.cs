using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>
/// Fills two segments that lie above each other together, laps between them counted. A state is the cells that both rows have come to; the
/// row that is behind lays the next piece, so that its joint meets but one of the other row's. States that can't end below the limit by
/// what each row needs at least on its own are dropped; the limit rises from few cuts to all that is known. Where that finds nothing, whole
/// pieces have joints of every width after them, so that joints can dodge those of the other row.
/// </summary>
/// <remarks>
/// Of two ways to a state that end with joints of different widths the cheaper is kept, and pieces that are too short are tried at the ends
/// alone: a better pair may be missed, but what is returned costs less than what was known. Laps past the last joint of a row that is
/// done are not counted: they are a least piece long or more, but may be under the preferred lap.
/// Not for use by several threads at once.
/// </remarks>
internal sealed class PairSolver(RowLaps laps, BondEffort effort, LayoutRules rules)
{
    /// <summary>Cuts over what the two rows need on their own at which the search ends.</summary>
    private const int MostCutsMore = 8;

    /// <summary>States at which a search ends without a result.</summary>
    private const int MostNodes = 250_000;

    /// <summary>The cell of a row that is filled.</summary>
    private const int Done = int.MaxValue;

    /// <summary>A row that lays a piece comes to be fewer cells ahead of where it was.</summary>
    private readonly int _reach = Reach(rules);

    private readonly Length _cell = rules.Catalog.CutGrid;
    private readonly CellSizes _sizes = new(rules);
    private readonly List<Node> _nodes = [];
    private readonly Dictionary<PairTask, PairRow> _taken = [];
    private readonly Dictionary<(PairTask Lower, PairTask Upper, long Known), Answer> _found = [];

    /// <summary>Nodes that wait, by the cell of the row behind (as a ring) and which row that is.</summary>
    private readonly List<int>[] _waiting = [.. Enumerable.Range(0, 2 * Reach(rules)).Select(_ => new List<int>())];

    /// <summary>The node of a state, by the cells of both rows.</summary>
    private readonly Dictionary<(int First, int Second), int> _known = [];
    private PairRow[] _rows = [];
    private int[] _offsets = [];
    private PairLandings _landings = null!;
    private bool _isWide;
    private long _limit;
    private int _count;
    private int _end;

    /// <summary>The rows' pieces where some are found that cost less than what is known, and what was searched in full.</summary>
    /// <param name="lower">A row.</param>
    /// <param name="upper">Another row; both share a part of the wall.</param>
    /// <param name="known">What the rows are known to cost together.</param>
    public Answer Solve(PairTask lower, PairTask upper, long known)
    {
        // Other attempts at the wall ask for the same rows again.
        if (!_found.TryGetValue((lower, upper, known), out var answer))
        {
            answer = Sought(RowOf(lower), RowOf(upper), known);
            _found.Add((lower, upper, known), answer);
        }

        return answer;
    }

    private PairRow RowOf(PairTask task)
    {
        if (!_taken.TryGetValue(task, out var row))
        {
            row = new PairRow(task, rules);
            _taken.Add(task, row);
        }

        return row;
    }

    private Answer Sought(PairRow a, PairRow b, long known)
    {
        var origin = Length.Min(a.Left, b.Left);
        if ((b.Left - origin).Modulo(_cell) < (a.Left - origin).Modulo(_cell))
        {
            var turned = Sought(b, a, known);
            return turned with { Pieces = turned.Pieces is { } pieces ? (pieces.Upper, pieces.Lower) : null };
        }

        _rows = [a, b];
        _offsets = [(int)((a.Left - origin) / _cell), (int)((b.Left - origin) / _cell)];
        var answer = Sought(known, isWide: false);
        if (answer.Pieces is not null || effort.AreWidePairsSpent)
        {
            return answer;
        }

        var wide = Sought(known, isWide: true);
        return wide.Pieces is null ? wide with { Least = Math.Max(answer.Least, wide.Least) } : wide;
    }

    private Answer Sought(long known, bool isWide)
    {
        var (a, b) = (_rows[0], _rows[1]);
        int[] widths = isWide ? [.. Enumerable.Range(_sizes.JointMin, _sizes.JointMax - _sizes.JointMin + 1)] : [_sizes.Joint];
        _isWide = isWide;
        _landings = new PairLandings(_sizes, widths);
        _landings.Fill(_rows, [Moves(a.Left, b.Left, widths), Moves(b.Left, a.Left, widths)]);
        var alone = a.Least[0] + b.Least[0];
        var least = Math.Min(alone, known);
        for (var more = 1; more <= 2 * MostCutsMore && least < known && !(isWide ? effort.AreWidePairsSpent : effort.ArePairsSpent); more *= 2)
        {
            _limit = more > MostCutsMore ? known : Math.Min(known, alone + (more * rules.Set.Aims.Cut));
            Run();
            effort.SpendPairs(_nodes.Count, isWide);
            var isWhole = _nodes.Count < MostNodes;
            least = isWhole ? _limit : least;
            if (_end >= 0)
            {
                return new Answer((a.Pieces(Starts(0)), b.Pieces(Starts(1))), least);
            }

            if (!isWhole)
            {
                break;
            }
        }

        return new Answer(null, least);
    }

    /// <summary>How many cells after the cell of another row's joint, of one width or another, a nominal joint laps that one as it must.</summary>
    private int[] Moves(Length left, Length other, IEnumerable<int> widths) =>
    [
        .. widths.Select(width => (int)Math.Ceiling(
            (double)(rules.MinOverlap + other - left + (_cell * (_sizes.Joint - width) / 2) - new Length(PieceCosts.DustNanometres)).Nanometres
            / _cell.Nanometres)).Distinct(),
    ];

    private static int Reach(LayoutRules rules) => (int)((rules.Catalog.UnitLength + rules.Catalog.HeadJoint.Max) / rules.Catalog.CutGrid) + 2;

    private void Run()
    {
        _nodes.Clear();
        _known.Clear();
        (_end, _count) = (-1, 0);
        Offer(default, -1, 0, 0, 0, 0);
        for (var place = 0; _count > 0; place = (place + 1) % _waiting.Length)
        {
            // Both rows at one cell: the first one's turn leads to states of the second one's.
            var waiting = _waiting[place];
            for (var i = 0; i < waiting.Count && _nodes.Count < MostNodes; i++)
            {
                GoOn(waiting[i], place % 2);
            }

            _count -= waiting.Count;
            waiting.Clear();
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
            if (end < row.Cells && (_isWide || row.IsOfUse(end, whole)))
            {
                Lay(end, whole.Joint, whole.Cost + row.JointCost(end, whole.Joint));
            }
        }

        var firstCutCost = from == 0 ? row.FirstCutCost : 0;
        foreach (var cut in from == 0 ? row.FirstTightCuts : row.TightCuts)
        {
            if (from + cut.Shortest < row.Cells)
            {
                Lay(from + cut.Shortest, cut.Joint, cut.Cost + firstCutCost + row.JointCost(from + cut.Shortest, cut.Joint));
            }
        }

        var least = row.LeastAfterCut;
        foreach (var cut in from == 0 ? row.FirstCuts : row.Cuts)
        {
            var cost = cut.Cost + firstCutCost;
            var last = Math.Min(from + cut.Longest, row.Cells - 1);
            for (var end = from + cut.Shortest; end <= last && spent + cost < _limit; end = _landings.Of(behind).Next(end + 1))
            {
                if (spent + cost + least[end] < _limit)
                {
                    Lay(end, cut.Joint, cost + row.JointCost(end, cut.Joint));
                }
            }
        }
    }

    /// <summary>Lets a node wait where it is the cheapest of its state.</summary>
    private void Offer(Node from, int number, int row, int cell, int joint, long cost)
    {
        var other = from.Cell(1 - row);
        if (cell == Done && other == Done)
        {
            (_end, _limit) = (_nodes.Count, cost);
            _nodes.Add(from.After(number, row, cell, joint, cost));
            return;
        }

        var after = from.After(number, row, cell, joint, cost);
        if (_known.TryGetValue((after.First, after.Second), out var known))
        {
            _nodes[known] = cost < _nodes[known].Cost ? after : _nodes[known];
            return;
        }

        _known.Add((after.First, after.Second), _nodes.Count);
        _waiting[PlaceOf(after)].Add(_nodes.Count);
        _nodes.Add(after);
        _count++;
    }

    private int PlaceOf(in Node node)
    {
        var first = node.First == Done ? Done : node.First + _offsets[0];
        var second = node.Second == Done ? Done : node.Second + _offsets[1];
        var (behind, cell) = second < first ? (1, second) : (0, first);
        return (cell % _reach * 2) + behind;
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

    /// <summary>What a search found.</summary>
    /// <param name="Pieces">The rows' pieces, each from its segment's start; null where none cost less than what was known.</param>
    /// <param name="Least">No pair costs less, but for what the search leaves out (see its remarks); under what was found where it ended early.</param>
    public readonly record struct Answer((ImmutableArray<Interval> Lower, ImmutableArray<Interval> Upper)? Pieces, long Least);

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
