using System.Collections.Immutable;
using System.Numerics;
using IfcCourser.Geometry;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>
/// The search for a segment's cheapest filling. A state is the cell where a piece starts; a step is a piece and the joint after
/// it. States are taken from the segment's start to its end, and only those that can lead to its end below the limit.
/// </summary>
internal sealed class SegmentSearch(CellSizes sizes, BondAims aims)
{
    private const int Word = 64;

    private readonly JointCosts _joints = new();
    private readonly JointGains _gains = new();
    private readonly Landings _landings = new(sizes);
    private Arrival[] _arrivals = [];
    private Arrival[] _lastArrivals = [];
    private ulong[] _reached = [];
    private int[] _cheaperStarts = [];
    private long[] _cheaperCosts = [];
    private int _cheaper;
    private SegmentTask _task = new(default, default, default, []);
    private SegmentGrid _grid;
    private RestCosts.Table _rest = new([0, 0], [0, 0]);
    private long _gain;
    private long _limit;
    private int _lastStart;
    private int _rakedTo;
    private int _rakedFrom;
    private int _firstLeast;
    private bool _isWide;

    /// <summary>Pieces that the last search laid.</summary>
    public long Laid { get; private set; }

    /// <summary>Sets the segment for the searches that follow.</summary>
    /// <param name="task">The segment.</param>
    /// <param name="grid">Its cells.</param>
    /// <param name="rest">What its rest costs at least.</param>
    /// <param name="isWide">Whether joints after cut pieces are tried in all widths.</param>
    public void Prepare(SegmentTask task, SegmentGrid grid, RestCosts.Table rest, bool isWide = false)
    {
        (_task, _grid, _rest, _isWide) = (task, grid, rest, isWide);
        _gains.Fill(task.Zones, sizes.Cell);
        _joints.Fill(task, sizes.Cell, grid.Target, Length.Abs(grid.Slide));
        _rakedTo = sizes.UpOf(task.Start.Raked);
        _rakedFrom = grid.Target - sizes.UpOf(task.End.Raked);
        _firstLeast = sizes.UpOf(task.Start.Least);
        _landings.Fill(_joints, rest, grid.Target, _rakedTo, isWide);
    }

    /// <summary>The pieces of a cheapest filling that costs less than a limit, from the segment's start; null where there is none.</summary>
    public ImmutableArray<Interval>? Cheapest(long limit)
    {
        (_limit, _lastStart, _cheaper, Laid) = (limit, 0, 0, 0);
        _gains.Restart();
        Reset();
        Follow(0, 0);
        for (var word = 0; word * Word < _grid.Target; word++)
        {
            var done = 0UL;
            while ((_reached[word] & ~done) is var open and not 0)
            {
                var bit = BitOperations.TrailingZeroCount(open);
                done |= ulong.MaxValue >> (Word - 1 - bit);
                var start = (word * Word) + bit;
                End(start);
                Follow(start, _arrivals[start].Cost);
            }
        }

        return _lastStart == 0 ? null : Pieces();
    }

    /// <summary>Forgets what the search before this one has reached.</summary>
    private void Reset()
    {
        var words = (_grid.Target / Word) + 1;
        if (_reached.Length < words)
        {
            (_arrivals, _lastArrivals, _reached) = (new Arrival[words * Word], new Arrival[words * Word], new ulong[words]);
            (_cheaperStarts, _cheaperCosts) = (new int[words * Word], new long[words * Word]);
            Array.Fill(_arrivals, Arrival.None);
            Array.Fill(_lastArrivals, Arrival.None);
            return;
        }

        for (var word = 0; word < _reached.Length; word++)
        {
            for (var open = _reached[word]; open != 0; open &= open - 1)
            {
                var start = (word * Word) + BitOperations.TrailingZeroCount(open);
                (_arrivals[start], _lastArrivals[start]) = (Arrival.None, Arrival.None);
            }

            _reached[word] = 0;
        }
    }

    /// <summary>Fillings that end with a piece from here.</summary>
    private void End(int start)
    {
        var left = _grid.Target - start;
        if (left <= sizes.Unit && _lastArrivals[start].Cost < RestCosts.Unreachable)
        {
            // The table of rests knows of no slope at the segment's start.
            var isRaked = start < _rakedTo && _rakedFrom == _grid.Target && !_grid.LastIsCut && sizes.Wholes.Contains(left);
            var cost = _lastArrivals[start].Cost + _rest.Last[left] + (isRaked ? aims.Cut : 0);
            if (cost < _limit)
            {
                (_limit, _lastStart) = (cost, start);
            }
        }
    }

    /// <summary>Every piece that may start here with others after it.</summary>
    private void Follow(int start, long cost)
    {
        _gain = _gains.After(start);
        if (cost + _rest.More[_grid.Target - start] + _gain + (start == 0 ? Math.Min(0, _task.Start.CutCost) : 0) >= _limit)
        {
            return;
        }

        foreach (var length in sizes.Wholes)
        {
            Whole(start, cost, length);
        }

        TightCuts(start, cost);
        var covered = start == 0 ? -1 : Cover(start, cost);
        foreach (var cuts in sizes.CutClasses)
        {
            Cuts(start, cost, cuts, sizes.Joint, covered);
            for (var joint = sizes.JointMin; _isWide && joint <= sizes.JointMax; joint++)
            {
                if (joint != sizes.Joint)
                {
                    Cuts(start, cost, cuts, joint, covered);
                }
            }
        }
    }

    /// <summary>The last start before this one that costs no more: a cut piece from there reaches as far at no higher cost, but for the difference.</summary>
    private int Cover(int start, long cost)
    {
        while (_cheaper > 0 && _cheaperCosts[_cheaper - 1] > cost)
        {
            _cheaper--;
        }

        var covered = _cheaper == 0 ? -1 : _cheaperStarts[_cheaper - 1];
        (_cheaperStarts[_cheaper], _cheaperCosts[_cheaper]) = (start, cost);
        _cheaper++;
        return covered;
    }

    /// <summary>A piece that needs no cut, with every joint width allowed after it; a slope cuts it all the same.</summary>
    private void Whole(int start, long cost, int length)
    {
        var end = start + length;
        cost += start < _rakedTo || end > _rakedFrom ? aims.Cut : 0;
        cost += start == 0 && length < _firstLeast ? aims.ShortAtRake : 0;
        for (var joint = sizes.JointMin; joint <= sizes.JointMax && end + joint < _grid.Target; joint++)
        {
            Arrive(end + joint, new Arrival(cost + (Math.Abs(joint - sizes.Joint) * aims.JointStep), start, joint));
        }
    }

    /// <summary>
    /// Cut pieces of one class, with a joint of one width after them, to where a cheapest filling may go on: but those whose rest leaves
    /// room below the limit, and that no start before this one reaches as cheaply.
    /// </summary>
    private void Cuts(int start, long cost, CellSizes.CutClass cuts, int joint, int covered)
    {
        cost += cuts.Weight + (start == 0 ? _task.Start.CutCost : 0) + (Math.Abs(joint - sizes.Joint) * aims.JointStep);
        var room = _limit - _gain - cost;
        var shortest = start + cuts.Shortest + joint;
        var first = Math.Max(shortest, covered < 0 ? 0 : covered + cuts.Longest + 1 + joint);
        var last = Math.Min(start + cuts.Longest + joint, _grid.Target - 1);
        if (first == shortest && first <= last)
        {
            Cut(start, cost, first, joint, room);
        }

        if (start == 0 && _firstLeast + joint is var least && least > first && least <= last)
        {
            Cut(start, cost, least, joint, room);
        }

        for (var next = _landings.Cells.Next(first); next <= last; next = _landings.Cells.Next(next + 1))
        {
            Cut(start, cost, next, joint, room);
        }
    }

    /// <summary>Cut pieces with a narrower joint after them: the shortest of their class, or before a last piece that is.</summary>
    private void TightCuts(int start, long cost)
    {
        foreach (var (length, joint, weight) in sizes.TightCuts)
        {
            if (start + length + joint < _grid.Target)
            {
                Tight(start, cost + weight, length, joint);
            }

            var before = _grid.Target - length - joint - start;
            if (sizes.CutWeight(before) is { } cut)
            {
                Tight(start, cost + cut + ((sizes.Joint - joint) * aims.JointStep), before, joint);
            }
        }
    }

    private void Tight(int start, long cost, int length, int joint)
    {
        cost += start == 0 ? _task.Start.CutCost + (length < _firstLeast ? aims.ShortAtRake : 0) : 0;
        Arrive(start + length + joint, new Arrival(cost, start, joint));
    }

    private void Cut(int start, long cost, int next, int joint, long room)
    {
        if (_rest.Least(_grid.Target - next) < room)
        {
            var isShort = start == 0 && next - joint < _firstLeast;
            Arrive(next, new Arrival(isShort ? cost + aims.ShortAtRake : cost, start, joint));
        }
    }

    /// <summary>Notes a way to a cell where a piece may start, the joint before it added, where it can lead on below the limit.</summary>
    private void Arrive(int start, Arrival arrival)
    {
        Laid++;
        arrival = arrival with { Cost = arrival.Cost + _joints.At(start, arrival.Joint) };
        var left = _grid.Target - start;
        var room = _limit - _gain - arrival.Cost;
        if (arrival.Cost < _arrivals[start].Cost && _rest.More[left] < room)
        {
            _arrivals[start] = arrival;
            _reached[start / Word] |= 1UL << (start % Word);
        }

        if (arrival.Cost < _lastArrivals[start].Cost && _grid.MayBeLast(arrival.Joint) && _rest.Last[left] < room)
        {
            _lastArrivals[start] = arrival;
            _reached[start / Word] |= 1UL << (start % Word);
        }
    }

    /// <summary>The pieces back from the last one, which slides to the segment's end.</summary>
    private ImmutableArray<Interval> Pieces()
    {
        var pieces = ImmutableArray.CreateBuilder<Interval>();
        pieces.Add(new Interval((sizes.Cell * _lastStart) + _grid.Slide, _task.Size));
        for (var (start, arrival) = (_lastStart, _lastArrivals[_lastStart]); start > 0; (start, arrival) = (arrival.From, _arrivals[arrival.From]))
        {
            pieces.Add(new Interval(sizes.Cell * arrival.From, sizes.Cell * (start - arrival.Joint)));
        }

        pieces.Reverse();
        return pieces.ToImmutable();
    }

    /// <summary>The cheapest way to a cell so far.</summary>
    /// <param name="Cost">Of all before the cell.</param>
    /// <param name="From">Where the piece before it starts.</param>
    /// <param name="Joint">Width of the joint between, in cells.</param>
    private readonly record struct Arrival(long Cost, int From, int Joint)
    {
        public static readonly Arrival None = new(RestCosts.Unreachable, -1, 0);
    }
}
