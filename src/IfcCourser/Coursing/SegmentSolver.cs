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

    private readonly Length _cell;
    private readonly int _unit;
    private readonly int _least;
    private readonly int _preferred;
    private readonly int _joint;
    private readonly int _jointMin;
    private readonly int _jointMax;
    private readonly ImmutableArray<int> _parts;
    private readonly Length _unitLength;
    private readonly ImmutableArray<Length> _partLengths;
    private readonly Length _leastLength;
    private readonly Length _preferredLength;
    private readonly ImmutableArray<(int Shortest, int Longest, long Weight)> _cutClasses;
    private readonly Search _search;

    public SegmentSolver(LayoutRules rules)
    {
        var catalog = rules.Catalog;
        _cell = catalog.CutGrid;
        _unitLength = catalog.UnitLength;
        _partLengths = catalog.PartLengths;
        _leastLength = rules.MinPiece;
        _preferredLength = rules.PreferredPiece;
        _unit = Cells(catalog.UnitLength);
        _least = Cells(rules.MinPiece.CeilingTo(_cell));
        _preferred = Math.Max(_least, Cells(rules.PreferredPiece.CeilingTo(_cell)));
        _joint = Cells(catalog.HeadJoint.Nominal);
        _jointMin = Cells(catalog.HeadJoint.Min.CeilingTo(_cell));
        _jointMax = Cells(catalog.HeadJoint.Max.FloorTo(_cell));
        _parts = [.. catalog.PartLengths.Select(Cells)];
        _cutClasses =
        [
            (_preferred, _unit - 1, BondWeights.Cut),
            (_least, _preferred - 1, BondWeights.Cut + BondWeights.Short),
            (1, _least - 1, BondWeights.Cut + BondWeights.Breach),
        ];
        _search = new Search(this);
    }

    public SegmentFill Solve(SegmentTask task)
    {
        var single = Single(task);
        var grid = GridOf(task.Size);
        if (grid.Target < 2)
        {
            return single;
        }

        _search.Run(task, grid);
        var (start, cost) = _search.Last();
        return cost < single.Cost ? new SegmentFill(_search.Pieces(start), cost) : single;
    }

    private Grid GridOf(Length size)
    {
        var whole = (int)(size / _cell);
        var rest = size - (_cell * whole);
        if (rest == Length.Zero)
        {
            return new Grid(whole, Length.Zero, _jointMin, _jointMax, LastIsCut: false);
        }

        return _joint < _jointMax ? new Grid(whole, rest, _jointMin, Math.Max(_joint, _jointMax - 1), LastIsCut: false)
            : _joint > _jointMin ? new Grid(whole + 1, rest - _cell, Math.Min(_joint, _jointMin + 1), _jointMax, LastIsCut: false)
            : new Grid(whole, Length.Zero, _jointMin, _jointMax, LastIsCut: true);
    }

    private int Cells(Length length) => (int)(length / _cell);

    /// <summary>The segment as one piece of its exact length; at a prohibitive cost where it is longer than a unit.</summary>
    private SegmentFill Single(SegmentTask task)
    {
        var cost = task.Size > _unitLength ? Unreachable
            : task.Size == _unitLength || _partLengths.Contains(task.Size) ? 0
            : BondWeights.Cut + task.StartCost + task.EndCost
                + (task.Size < _leastLength ? BondWeights.Breach : task.Size < _preferredLength ? BondWeights.Short : 0);
        return new SegmentFill([new Interval(Length.Zero, task.Size)], cost);
    }

    /// <summary>The dynamic program; its tables are kept for the next segment.</summary>
    private sealed class Search(SegmentSolver sizes)
    {
        private readonly JointCosts _joints = new();
        private readonly SlidingMinimum[] _windows = [new(), new(), new()];
        private long[] _cost = [];
        private int[] _from = [];
        private int[] _jointBefore = [];
        private SegmentTask _task = new(default, 0, 0, []);
        private Grid _grid;

        /// <summary>Fills the tables: the cheapest way to each cell where a piece may start.</summary>
        public void Run(SegmentTask task, Grid grid)
        {
            (_task, _grid) = (task, grid);
            Reset();
            for (var start = 1; start < grid.Target; start++)
            {
                Whole(start, sizes._unit);
                foreach (var part in sizes._parts)
                {
                    Whole(start, part);
                }

                var end = start - sizes._joint;
                if (end > 0)
                {
                    var joint = _joints.At(start, sizes._joint);
                    for (var window = 0; window < _windows.Length; window++)
                    {
                        CutInto(start, end, joint, window);
                    }
                }
            }
        }

        /// <summary>Where the last piece starts, and the cost of the whole filling.</summary>
        public (int Start, long Cost) Last()
        {
            var best = (Start: 0, Cost: Unreachable);
            void Consider(int start, long cost)
            {
                if (start > 0 && _cost[start] < Unreachable && _cost[start] + cost < best.Cost)
                {
                    best = (start, _cost[start] + cost);
                }
            }

            if (!_grid.LastIsCut)
            {
                Consider(_grid.Target - sizes._unit, 0);
                foreach (var part in sizes._parts)
                {
                    Consider(_grid.Target - part, 0);
                }
            }

            for (var start = Math.Max(1, _grid.Target - sizes._unit + 1); start < _grid.Target; start++)
            {
                var length = _grid.Target - start;
                var penalty = length < sizes._least ? BondWeights.Breach : length < sizes._preferred ? BondWeights.Short : 0;
                Consider(start, BondWeights.Cut + penalty + _task.EndCost);
            }

            return best;
        }

        /// <summary>The pieces back from the last one, which slides to the segment's end.</summary>
        public ImmutableArray<Interval> Pieces(int last)
        {
            var pieces = ImmutableArray.CreateBuilder<Interval>();
            pieces.Add(new Interval((sizes._cell * last) + _grid.Slide, _task.Size));
            for (var start = last; start > 0; start = _from[start])
            {
                pieces.Add(new Interval(sizes._cell * _from[start], sizes._cell * (start - _jointBefore[start])));
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
            }

            Array.Fill(_cost, Unreachable, 0, size);
            _cost[0] = 0;
            _joints.Fill(_task, sizes._cell, _grid.Target, Length.Abs(_grid.Slide));
            foreach (var window in _windows)
            {
                window.Reset(size);
            }
        }

        /// <summary>A piece that needs no cut, with every joint width allowed after it.</summary>
        private void Whole(int start, int length)
        {
            for (var joint = _grid.Narrowest; joint <= _grid.Widest; joint++)
            {
                var from = start - joint - length;
                if (from >= 0 && _cost[from] < Unreachable)
                {
                    var step = Math.Abs(joint - sizes._joint) * BondWeights.JointStep;
                    Offer(start, from, _cost[from] + step + _joints.At(start, joint), joint);
                }
            }
        }

        /// <summary>The cheapest cut piece of a class of lengths that ends at <paramref name="end"/>.</summary>
        private void CutInto(int start, int end, long joint, int window)
        {
            var (shortest, longest, weight) = sizes._cutClasses[window];
            var minimum = _windows[window];
            var newest = end - shortest;
            if (newest >= 0 && longest >= shortest && _cost[newest] < Unreachable)
            {
                minimum.Push(newest, newest == 0 ? _task.StartCost : _cost[newest]);
            }

            minimum.DropBefore(end - longest);
            if (!minimum.IsEmpty)
            {
                Offer(start, minimum.Place, minimum.Value + weight + joint, sizes._joint);
            }
        }

        private void Offer(int start, int from, long cost, int joint)
        {
            if (cost < _cost[start])
            {
                _cost[start] = cost;
                _from[start] = from;
                _jointBefore[start] = joint;
            }
        }
    }

    /// <summary>A segment on the cut grid.</summary>
    /// <param name="Target">Cells from its start to its end.</param>
    /// <param name="Slide">What the last joint gets wider or narrower by, so that the last piece ends at the segment's end.</param>
    /// <param name="Narrowest">Least joint in cells that leaves room for the slide.</param>
    /// <param name="Widest">Largest joint in cells that leaves room for the slide.</param>
    /// <param name="LastIsCut">Whether the last piece is cut off the grid, so that no whole piece may stand there.</param>
    private readonly record struct Grid(int Target, Length Slide, int Narrowest, int Widest, bool LastIsCut);
}
