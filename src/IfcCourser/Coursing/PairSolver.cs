using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>
/// Fills two segments that lie above each other together, laps between them counted. A state is the cells that both rows have come to; the
/// row that is behind lays the next piece, so that its joint meets but one of the other row's. States that can't end below the limit by
/// what each row needs at least on its own are dropped; the limit rises from few cuts to all that is known. Where that finds nothing,
/// joints have more widths (<see cref="JointWidths"/>).
/// </summary>
/// <remarks>
/// Of two ways to a state that end with joints of different widths the cheaper is kept but in the widest search, and pieces that are too short are tried at the ends
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

    /// <summary>The node of a state, by the cells of both rows and, where joints after cut pieces have all widths too, that of the row ahead.</summary>
    private readonly Dictionary<ulong, int> _known = [];
    private PairRow[] _rows = [];
    private int[] _offsets = [];
    private PairMoves[] _moves = [];
    private JointWidths _widths;
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
        var answer = Sought(known, JointWidths.Useful);
        foreach (var widths in (ReadOnlySpan<JointWidths>)[JointWidths.AfterWhole, JointWidths.All])
        {
            if (answer.Pieces is null && !effort.ArePairsSpent(widths))
            {
                var wider = Sought(known, widths);
                answer = wider.Pieces is null ? wider with { Least = Math.Max(answer.Least, wider.Least) } : wider;
            }
        }

        return answer;
    }

    private Answer Sought(long known, JointWidths joints)
    {
        var (a, b) = (_rows[0], _rows[1]);
        int[] widths = joints == JointWidths.Useful ? [_sizes.Joint] : [.. Enumerable.Range(_sizes.JointMin, _sizes.JointMax - _sizes.JointMin + 1)];
        _widths = joints;
        var landings = new PairLandings(_sizes, widths);
        var isAny = joints == JointWidths.All;
        int[] own = isAny ? widths : [_sizes.Joint];
        landings.Fill(_rows, [Moves(a.Left, b.Left, own, widths), Moves(b.Left, a.Left, own, widths)], isAny);
        _moves = [new PairMoves(a, landings.Of(0), joints), new PairMoves(b, landings.Of(1), joints)];
        var alone = a.Least[0] + b.Least[0];
        var least = Math.Min(alone, known);
        for (var more = 1; more <= 2 * MostCutsMore && least < known && !effort.ArePairsSpent(joints); more *= 2)
        {
            _limit = more > MostCutsMore ? known : Math.Min(known, alone + (more * rules.Set.Aims.Cut));
            (_moves[0].Spare, _moves[1].Spare) = (_limit - alone, _limit - alone);
            Run();
            effort.SpendPairs(_nodes.Count, joints);
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

    /// <summary>How many cells after the cell of another row's joint, of one width or another, a joint laps that one as it must.</summary>
    private int[] Moves(Length left, Length other, int[] own, int[] widths) =>
    [
        .. own.SelectMany(joint => widths.Select(width => (int)Math.Ceiling(
            (double)(rules.MinOverlap + other - left + (_cell * (joint - width) / 2) - new Length(PieceCosts.DustNanometres)).Nanometres
            / _cell.Nanometres))).Distinct(),
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
        foreach (var move in _moves[behind].From(from, _limit - spent - row.Least[from]))
        {
            if (spent + move.Whole >= _limit)
            {
                break;
            }

            var lap = joint is { } near ? laps.Of(near, move.Centre) : 0;
            if (spent + move.Whole + lap < _limit)
            {
                Offer(node, number, behind, move.End, move.Joint, node.Cost + move.Cost + lap);
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
        var key = KeyOf(after);
        if (_known.TryGetValue(key, out var known))
        {
            _nodes[known] = cost < _nodes[known].Cost ? after : _nodes[known];
            return;
        }

        _known.Add(key, _nodes.Count);
        _waiting[PlaceOf(after)].Add(_nodes.Count);
        _nodes.Add(after);
        _count++;
    }

    private int PlaceOf(in Node node)
    {
        var (behind, cell) = Behind(node);
        return (cell % _reach * 2) + behind;
    }

    /// <summary>A number of its own for each state: both cells and the joint side by side, spread by an odd factor so that they hash apart.</summary>
    private ulong KeyOf(in Node node)
    {
        const ulong Spread = 0x9E3779B97F4A7C15;
        var joint = _widths == JointWidths.All ? JointAhead(node) : 0;
        return unchecked(((((ulong)(uint)(node.First & Done >> 5) << 26 | (uint)(node.Second & Done >> 5)) << 12) + (uint)joint) * Spread);
    }

    private int JointAhead(in Node node)
    {
        var ahead = 1 - Behind(node).Row;
        return node.Cell(ahead) == Done ? 0 : node.Joint(ahead);
    }

    /// <summary>The row that is behind, and the cell that it has come to.</summary>
    private (int Row, int Cell) Behind(in Node node)
    {
        var first = node.First == Done ? Done : node.First + _offsets[0];
        var second = node.Second == Done ? Done : node.Second + _offsets[1];
        return second < first ? (1, second) : (0, first);
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
