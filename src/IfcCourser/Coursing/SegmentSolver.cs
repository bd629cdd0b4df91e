using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>
/// Fills one segment of a course exactly: the cheapest sequence of pieces and head joints by dynamic programming
/// over every cell of the cut grid. A state is the cell where a piece starts; a step is a piece and the joint after it.
/// Full units take any joint width within the limits, cut pieces the nominal one. Free cuts of all lengths are one
/// step each thanks to a sliding minimum, so the work grows with the segment's cells, not with their square.
/// Not for use by several threads at once.
/// </summary>
/// <remarks>
/// A segment that is no whole number of cells long puts its remainder into the last joint, or, where joints have no
/// play, into the last piece, which is then cut; a segment of one piece is cut to its exact length.
/// </remarks>
internal sealed class SegmentSolver
{
    private const long Unreachable = long.MaxValue / 4;

    private readonly PieceCosts _costs;
    private readonly Length _cell;
    private readonly int _unit;
    private readonly int _least;
    private readonly int _preferred;
    private readonly int _joint;
    private readonly int _jointMin;
    private readonly int _jointMax;
    private readonly ImmutableArray<int> _wholes;
    private readonly ImmutableArray<(int Shortest, int Longest, long Weight)> _cutClasses;
    private readonly Search _search;
    private readonly Dictionary<SegmentTask, long[]> _leastFrom = [];

    public SegmentSolver(LayoutRules rules)
    {
        var (catalog, aims) = (rules.Catalog, rules.Set.Aims);
        _costs = new PieceCosts(rules);
        _cell = catalog.CutGrid;
        _unit = Cells(catalog.UnitLength);
        _least = Cells(rules.MinPiece.CeilingTo(_cell));
        _preferred = Math.Max(_least, Cells(rules.PreferredPiece.CeilingTo(_cell)));
        _joint = Cells(catalog.HeadJoint.Nominal);
        _jointMin = Cells(catalog.HeadJoint.Min.CeilingTo(_cell));
        _jointMax = Cells(catalog.HeadJoint.Max.FloorTo(_cell));
        _wholes = [_unit, .. catalog.PartLengths.Select(Cells)];
        _cutClasses =
        [
            (_preferred, _unit - 1, aims.Cut),
            (_least, _preferred - 1, aims.Cut + aims.Short),
            (1, _least - 1, aims.Cut + BondAims.Breach),
        ];
        _search = new Search(this, aims);
    }

    /// <summary>The pieces of a cheapest filling, from the segment's start; null where none is cheaper than a known one.</summary>
    /// <param name="task">The segment.</param>
    /// <param name="known">Cost of a filling that is known; what can't come below it is not searched.</param>
    public ImmutableArray<Interval>? Solve(SegmentTask task, long known = Unreachable)
    {
        var whole = new Interval(Length.Zero, task.Size);
        var single = _costs.IsTooLong(whole) ? Unreachable : _costs.Of(whole, task);
        var grid = GridOf(task.Size);
        if (grid.Target >= 2)
        {
            _search.Run(task, grid, Math.Min(known, single), LeastFrom(task, grid));
            var (start, cost) = _search.Last();
            if (cost < single && cost < known)
            {
                return _search.Pieces(start);
            }
        }

        return single < known || known == Unreachable ? [whole] : null;
    }

    /// <summary>From each cell, the least that the rest of the segment costs whatever stands beside it.</summary>
    private long[] LeastFrom(SegmentTask task, Grid grid)
    {
        var alone = task with { Zones = [] };
        if (!_leastFrom.TryGetValue(alone, out var least))
        {
            // The segment seen from its other end: what reaches a cell there is what is left from it here.
            var turned = alone with { Start = task.End, End = task.Start };
            _search.Run(turned, grid, Unreachable, null);
            least = _search.Turned();
            _leastFrom.Add(alone, least);
        }

        return least;
    }

    private Grid GridOf(Length size)
    {
        var whole = (int)(size / _cell);
        var rest = size - (_cell * whole);
        if (rest == Length.Zero)
        {
            return new Grid(whole, Length.Zero, _jointMin, _jointMax, LastIsCut: false);
        }

        return _joint < _jointMax ? new Grid(whole, rest, _jointMin, _jointMax - 1, LastIsCut: false)
            : _joint > _jointMin ? new Grid(whole + 1, rest - _cell, _jointMin + 1, _jointMax, LastIsCut: false)
            : new Grid(whole, Length.Zero, _jointMin, _jointMax, LastIsCut: true);
    }

    private int Cells(Length length) => (int)(length / _cell);

    /// <summary>The dynamic program; its tables are kept for the next segment.</summary>
    private sealed class Search(SegmentSolver sizes, BondAims aims)
    {
        private readonly JointCosts _joints = new();
        private readonly SlidingMinimum[] _windows = [new(), new(), new()];
        private long[] _cost = [];
        private int[] _from = [];
        private int[] _jointBefore = [];
        private long[] _lastCost = [];
        private int[] _lastFrom = [];
        private int[] _lastJoint = [];
        private SegmentTask _task = new(default, default, default, []);
        private Grid _grid;
        private long _limit;
        private long[]? _leastFrom;
        private int _rakedTo;
        private int _rakedFrom;
        private int _firstLeast;
        private int _lastLeast;

        /// <summary>Fills the tables: the cheapest way to each cell where a piece may start.</summary>
        /// <param name="task">The segment.</param>
        /// <param name="grid">Its cells.</param>
        /// <param name="limit">Fillings that cost as much or more are left out.</param>
        /// <param name="leastFrom">
        /// From each cell, a cost that what follows can't come below but by zones that are worth something. Null while those costs
        /// themselves are sought: cut pieces then take any joint, as they may from the other side.
        /// </param>
        public void Run(SegmentTask task, Grid grid, long limit, long[]? leastFrom)
        {
            (_task, _grid, _leastFrom) = (task, grid, leastFrom);
            _limit = limit - task.Zones.Sum(zone => Math.Min(0, zone.Cost));
            Reset();
            var (narrowest, widest) = leastFrom is null ? (sizes._jointMin, sizes._jointMax) : (sizes._joint, sizes._joint);
            for (var start = 1; start < grid.Target; start++)
            {
                CutInto(start - sizes._jointMin, narrowest, widest);
                if (CanLead(start, 0))
                {
                    foreach (var length in sizes._wholes)
                    {
                        Whole(start, length);
                    }
                }
            }
        }

        /// <summary>The costs of <see cref="Run"/> as seen from the segment's other end: of what fills it from a piece's start to the end.</summary>
        public long[] Turned()
        {
            var turned = new long[_grid.Target];
            for (var start = sizes._joint + 1; start < turned.Length; start++)
            {
                turned[start] = _cost[_grid.Target - start + sizes._joint];
            }

            return turned;
        }

        /// <summary>Where the last piece starts, and the cost of the whole filling.</summary>
        public (int Start, long Cost) Last()
        {
            var best = (Start: 0, Cost: Unreachable);
            for (var start = Math.Max(1, _grid.Target - sizes._unit); start < _grid.Target; start++)
            {
                if (_lastCost[start] < Unreachable)
                {
                    var length = _grid.Target - start;
                    var isCut = _grid.LastIsCut || !sizes._wholes.Contains(length);
                    if (length == sizes._unit && isCut)
                    {
                        continue;
                    }

                    var cost = isCut
                        ? aims.Cut + _task.End.CutCost + (length < sizes._least ? BondAims.Breach : length < sizes._preferred ? aims.Short : 0)
                        : RakeCost(start, _grid.Target);
                    cost += length < _lastLeast ? aims.ShortAtRake : 0;
                    best = _lastCost[start] + cost < best.Cost ? (start, _lastCost[start] + cost) : best;
                }
            }

            return best;
        }

        /// <summary>The pieces back from the last one, which slides to the segment's end.</summary>
        public ImmutableArray<Interval> Pieces(int last)
        {
            var pieces = ImmutableArray.CreateBuilder<Interval>();
            pieces.Add(new Interval((sizes._cell * last) + _grid.Slide, _task.Size));
            var (start, from, joint) = (last, _lastFrom[last], _lastJoint[last]);
            while (start > 0)
            {
                pieces.Add(new Interval(sizes._cell * from, sizes._cell * (start - joint)));
                (start, from, joint) = (from, _from[from], _jointBefore[from]);
            }

            pieces.Reverse();
            return pieces.ToImmutable();
        }

        private void Reset()
        {
            var size = _grid.Target + 1;
            if (_cost.Length < size)
            {
                (_cost, _from, _jointBefore) = (new long[size], new int[size], new int[size]);
                (_lastCost, _lastFrom, _lastJoint) = (new long[size], new int[size], new int[size]);
            }

            Array.Fill(_cost, Unreachable, 0, size);
            Array.Fill(_lastCost, Unreachable, 0, size);
            _cost[0] = 0;
            _joints.Fill(_task, sizes._cell, _grid.Target, Length.Abs(_grid.Slide));
            foreach (var window in _windows)
            {
                window.Reset(size);
            }

            _rakedTo = sizes.Cells(_task.Start.Raked.CeilingTo(sizes._cell));
            _rakedFrom = _grid.Target - sizes.Cells(_task.End.Raked.CeilingTo(sizes._cell));
            _firstLeast = sizes.Cells(_task.Start.Least.CeilingTo(sizes._cell));
            _lastLeast = sizes.Cells(_task.End.Least.CeilingTo(sizes._cell));
        }

        /// <summary>A slope cuts even a piece of a whole unit's length.</summary>
        private long RakeCost(int from, int end) => from < _rakedTo || end > _rakedFrom ? aims.Cut : 0;

        /// <summary>A piece that needs no cut, with every joint width allowed after it.</summary>
        private void Whole(int start, int length)
        {
            for (var joint = sizes._jointMin; joint <= sizes._jointMax; joint++)
            {
                var from = start - joint - length;
                if (from >= 0 && _cost[from] < Unreachable)
                {
                    var cost = _cost[from] + (Math.Abs(joint - sizes._joint) * aims.JointStep) + _joints.At(start, joint) + RakeCost(from, from + length);
                    Offer(start, from, from == 0 && length < _firstLeast ? cost + aims.ShortAtRake : cost, joint);
                }
            }
        }

        /// <summary>The cheapest cut piece that ends at a cell, with joints of given widths after it.</summary>
        private void CutInto(int end, int narrowest, int widest)
        {
            var (from, cost) = (-1, Unreachable);
            for (var window = 0; window < _windows.Length; window++)
            {
                var (shortest, longest, weight) = sizes._cutClasses[window];
                var minimum = _windows[window];
                var newest = end - shortest;
                if (newest > 0 && longest >= shortest && _cost[newest] < Unreachable)
                {
                    minimum.Push(newest, _cost[newest]);
                }

                minimum.DropBefore(end - longest);
                if (!minimum.IsEmpty && minimum.Value + weight < cost)
                {
                    (from, cost) = (minimum.Place, minimum.Value + weight);
                }

                if (end >= shortest && end <= longest && FirstCut(end) + weight < cost)
                {
                    (from, cost) = (0, FirstCut(end) + weight);
                }
            }

            for (var joint = narrowest; from >= 0 && joint <= widest && end + joint < _grid.Target; joint++)
            {
                Offer(end + joint, from, cost + _joints.At(end + joint, joint), joint);
            }
        }

        /// <summary>What a first piece that is cut costs more than another.</summary>
        private long FirstCut(int end) => _task.Start.CutCost + (end < _firstLeast ? aims.ShortAtRake : 0);

        /// <summary>Whether a way to a cell can end below the limit.</summary>
        private bool CanLead(int start, long cost) => cost + (_leastFrom is null ? 0 : _leastFrom[start]) < _limit;

        private void Offer(int start, int from, long cost, int joint)
        {
            if (!CanLead(start, cost))
            {
                return;
            }

            if (cost < _cost[start])
            {
                (_cost[start], _from[start], _jointBefore[start]) = (cost, from, joint);
            }

            // The last joint takes up what the segment is off the grid.
            if (cost < _lastCost[start] && joint >= _grid.Narrowest && joint <= _grid.Widest)
            {
                (_lastCost[start], _lastFrom[start], _lastJoint[start]) = (cost, from, joint);
            }
        }
    }

    /// <summary>A segment on the cut grid.</summary>
    /// <param name="Target">Cells from its start to its end.</param>
    /// <param name="Slide">What the last joint gets wider or narrower by, so that the last piece ends at the segment's end.</param>
    /// <param name="Narrowest">Least last joint, in cells, that leaves room for the slide.</param>
    /// <param name="Widest">Largest last joint, in cells, that leaves room for the slide.</param>
    /// <param name="LastIsCut">Whether the last piece is cut off the grid, so that no whole piece may stand there.</param>
    private readonly record struct Grid(int Target, Length Slide, int Narrowest, int Widest, bool LastIsCut);
}
