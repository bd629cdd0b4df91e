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
    }

    public SegmentFill Solve(SegmentTask task)
    {
        var whole = (int)(task.Size / _cell);
        var rest = task.Size - (_cell * whole);
        var roomAbove = _joint < _jointMax;
        var cutTakesRest = rest > Length.Zero && !roomAbove && _joint == _jointMin;
        var narrows = rest > Length.Zero && !roomAbove && !cutTakesRest;
        var target = narrows ? whole + 1 : whole;
        var slide = cutTakesRest ? Length.Zero : narrows ? rest - _cell : rest;
        var single = Single(task);
        if (target < 2)
        {
            return single;
        }

        var search = new Search(this, task, target, Length.Abs(slide))
        {
            Narrowest = slide < Length.Zero ? Math.Min(_joint, _jointMin + 1) : _jointMin,
            Widest = slide > Length.Zero ? Math.Max(_joint, _jointMax - 1) : _jointMax,
            LastIsCut = cutTakesRest,
        };
        search.Run();
        var (start, cost) = search.Last();
        return cost < single.Cost ? new SegmentFill(search.Pieces(start, slide), cost) : single;
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

    private sealed class Search
    {
        private readonly SegmentSolver _sizes;
        private readonly SegmentTask _task;
        private readonly int _target;
        private readonly JointCosts _joints;
        private readonly long[] _cost;
        private readonly int[] _from;
        private readonly int[] _jointBefore;
        private readonly CutWindow[] _cuts;

        public Search(SegmentSolver sizes, SegmentTask task, int target, Length slack)
        {
            _sizes = sizes;
            _task = task;
            _target = target;
            _joints = new JointCosts(task, sizes._cell, target, slack);
            _cost = new long[target + 1];
            _from = new int[target + 1];
            _jointBefore = new int[target + 1];
            Array.Fill(_cost, Unreachable);
            _cost[0] = 0;
            _cuts =
            [
                new CutWindow(sizes._preferred, sizes._unit - 1, BondWeights.Cut, target),
                new CutWindow(sizes._least, sizes._preferred - 1, BondWeights.Cut + BondWeights.Short, target),
                new CutWindow(1, sizes._least - 1, BondWeights.Cut + BondWeights.Breach, target),
            ];
        }

        public required int Narrowest { get; init; }

        public required int Widest { get; init; }

        /// <summary>Whether the last piece is cut off the grid, so that no whole piece may stand there.</summary>
        public required bool LastIsCut { get; init; }

        public void Run()
        {
            for (var start = 1; start < _target; start++)
            {
                Whole(start, _sizes._unit);
                foreach (var part in _sizes._parts)
                {
                    Whole(start, part);
                }

                var end = start - _sizes._joint;
                if (end > 0)
                {
                    var joint = _joints.At(start, _sizes._joint);
                    foreach (var cut in _cuts)
                    {
                        cut.Advance(end, CostOfCutFrom);
                        if (cut.Cost < Unreachable)
                        {
                            Offer(start, cut.Place, cut.Cost + joint, _sizes._joint);
                        }
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

            if (!LastIsCut)
            {
                Consider(_target - _sizes._unit, 0);
                foreach (var part in _sizes._parts)
                {
                    Consider(_target - part, 0);
                }
            }

            for (var start = Math.Max(1, _target - _sizes._unit + 1); start < _target; start++)
            {
                var length = _target - start;
                var penalty = length < _sizes._least ? BondWeights.Breach : length < _sizes._preferred ? BondWeights.Short : 0;
                Consider(start, BondWeights.Cut + penalty + _task.EndCost);
            }

            return best;
        }

        /// <summary>The pieces back from the last one, which slides by <paramref name="slide"/> to the segment's end.</summary>
        public ImmutableArray<Interval> Pieces(int last, Length slide)
        {
            var pieces = ImmutableArray.CreateBuilder<Interval>();
            pieces.Add(new Interval((_sizes._cell * last) + slide, _task.Size));
            for (var start = last; start > 0; start = _from[start])
            {
                pieces.Add(new Interval(_sizes._cell * _from[start], _sizes._cell * (start - _jointBefore[start])));
            }

            pieces.Reverse();
            return pieces.ToImmutable();
        }

        /// <summary>A piece that needs no cut, with every joint width allowed after it.</summary>
        private void Whole(int start, int length)
        {
            for (var joint = Narrowest; joint <= Widest; joint++)
            {
                var from = start - joint - length;
                if (from >= 0 && _cost[from] < Unreachable)
                {
                    var step = Math.Abs(joint - _sizes._joint) * BondWeights.JointStep;
                    Offer(start, from, _cost[from] + step + _joints.At(start, joint), joint);
                }
            }
        }

        private long CostOfCutFrom(int from) => from == 0 ? _task.StartCost : _cost[from];

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

    /// <summary>The cheapest start of a cut piece with a length within limits that ends at a moving place.</summary>
    private sealed class CutWindow(int shortest, int longest, long weight, int capacity)
    {
        private readonly SlidingMinimum _minimum = new(capacity + 1);

        public int Place => _minimum.IsEmpty ? 0 : _minimum.Place;

        public long Cost => _minimum.IsEmpty ? Unreachable : _minimum.Value + weight;

        public void Advance(int end, Func<int, long> costOf)
        {
            if (longest >= shortest && end - shortest >= 0 && costOf(end - shortest) is < Unreachable and var cost)
            {
                _minimum.Push(end - shortest, cost);
            }

            _minimum.DropBefore(end - longest);
        }
    }
}
