using ReferenceOptimum.Problems;

namespace ReferenceOptimum.Solving;

/// <summary>
/// The cuts and breaches that one course or two neighbouring ones need, by dynamic programming over the cut grid: a bound that owes
/// nothing to the constraint solver. Both courses are laid from left to right, always the one that is behind. A state is where the
/// next piece of either starts, how wide the joint before the leading one is, and how many bars have found their place; only states
/// within a unit and a joint of the leading one are kept. Where lengths are off the grid, places are rounded down and laps slackened by what that can take;
/// some laps and bars are not looked at, no bar at all where rules may be broken. All this only allows more: the result is a lower bound.
/// </summary>
internal sealed class PairBound
{
    private const int None = int.MinValue;

    private readonly BondSizes _sizes;
    private readonly PairRow[] _rows;
    private readonly int _cells;
    private readonly int _unit;
    private readonly int _least;
    private readonly int _jointMin;
    private readonly int _jointMax;
    private readonly int[] _whole;
    private readonly int _lap;
    private readonly int _lags;
    private readonly int _widths;
    private readonly (double Least2, double Most2)[] _bars;
    private readonly double _clear2;
    private readonly byte _most;
    private readonly PairCounts[] _states;
    private readonly SlidingUnion _cuts;
    private readonly SlidingUnion _shorts;

    private PairBound(Block pair, bool mayBear, byte most)
    {
        _most = most;
        _sizes = pair.Sizes;
        var cell = _sizes.Grid;
        var origin = pair.Stretches.Min(stretch => stretch.From);
        _cells = (int)((pair.Stretches.Max(stretch => stretch.To) - origin) / cell);
        var slack = Scale.Of(pair).Unit == cell ? 0 : 2;
        _rows = [.. Enumerable.Range(0, 2).Select(row => new PairRow(pair, pair.FirstCourse + row, origin, _cells, slack, mayBear, MayBreak))];
        (_unit, _least) = ((int)(_sizes.Unit / cell), (int)(_sizes.LeastPiece / cell));
        (_jointMin, _jointMax) = ((int)(_sizes.JointMin / cell), (int)((_sizes.JointMax + cell - 1) / cell));
        _whole = [.. _sizes.Parts.Add(_sizes.Unit).Select(size => (int)(size / cell))];
        _lap = slack == 0 ? (int)Math.Ceiling(2.0 * _sizes.Lap / cell) : (int)Math.Floor((2.0 * _sizes.Lap / cell) - slack) + 1;
        _lags = _unit + _jointMax + 1;
        _widths = _jointMax - _jointMin + 2;
        _clear2 = 2.0 * _sizes.Clearance / cell;
        _bars = MayBreak ? [] : [.. MovingBars(pair).Select(bar => ((bar.Least2 - (2 * origin)) / (double)cell, (bar.Most2 - (2 * origin)) / (double)cell))];
        _states = new PairCounts[_lags * 2 * _widths * (_bars.Length + 1) * _lags];
        _cuts = new SlidingUnion(_unit - _least, (2 * _lags) + 1);
        _shorts = new SlidingUnion(_least - 1, (2 * _lags) + 1);
    }

    private bool MayBreak => _most > 0;

    /// <param name="pair">One course or two neighbouring ones.</param>
    /// <param name="mayBear">Whether joints may stand under bearings.</param>
    /// <param name="most">Bonds with more breaches are none.</param>
    public static PairCounts Of(Block pair, bool mayBear, byte most)
    {
        var counts = new PairBound(pair, mayBear, most).Run();
        return most == 0 || pair.Bars.IsEmpty
            ? counts
            : new PairBound(pair, mayBear, 0).Run() | counts.Breaking;
    }

    /// <summary>Bars that pass both courses and may move, in an order in which both ends of their ranges rise.</summary>
    private static List<BlockBar> MovingBars(Block pair)
    {
        var bars = new List<BlockBar>();
        foreach (var bar in pair.Bars.Where(bar => bar.Least2 < bar.Most2 && bar.Courses.Length == 2).OrderBy(bar => bar.Least2).ThenBy(bar => bar.Most2))
        {
            if (bars.Count == 0 || bar.Most2 >= bars[^1].Most2)
            {
                bars.Add(bar);
            }
        }

        return bars;
    }

    private PairCounts Run()
    {
        Array.Fill(_states, PairCounts.Nothing);
        _states[Index(0, 0, 0, 0, 0)] = PairCounts.Plain;
        var all = PairCounts.Nothing;
        for (var lead = 0; lead <= _cells; lead++)
        {
            for (var row = 0; row < 2; row++)
            {
                for (var width = 0; width < _widths; width++)
                {
                    for (var bars = 0; bars <= _bars.Length; bars++)
                    {
                        var slice = _states.AsSpan(Index(row, lead, width, bars, 0), _lags);
                        if (slice.ContainsAnyExcept(PairCounts.Nothing))
                        {
                            Move(new Front(row, lead, width, bars, width == 0 ? None : (2 * lead) - (width - 1 + _jointMin)));
                            all |= lead == _cells && bars == _bars.Length ? slice[0] : PairCounts.Nothing;
                            slice.Fill(PairCounts.Nothing);
                        }
                    }
                }
            }
        }

        return all;
    }

    /// <summary>Lays the next pieces of the course that is behind, from every place where it may be.</summary>
    private void Move(Front front)
    {
        var row = _rows[1 - front.Row];
        var first = Math.Max(0, front.Lead - _lags + 1);
        var mayMeet = front.Bars < _bars.Length
            && (front.Joint == None ? 2 * (front.Lead + _lags) : front.Joint) + 2 - _clear2 >= _bars[front.Bars].Least2;
        Restart(first);
        for (var place = first; place <= Math.Min(front.Lead + _lags - 1, _cells); place++)
        {
            if (row.IsStretchStart(place))
            {
                Restart(place);
            }

            if (!mayMeet && row.IsInStretch(place))
            {
                JoinCuts(row, front, place);
            }

            var counts = place > front.Lead ? PairCounts.Nothing : _states[Index(front.Row, front.Lead, front.Width, front.Bars, front.Lead - place)];
            _cuts.Push(counts);
            _shorts.Push(counts);
            if (!counts.IsNothing && !(front.Lead == _cells && place == _cells))
            {
                MoveFrom(row, front, place, counts, mayMeet);
            }
        }

        void Restart(int place)
        {
            _cuts.Restart(place);
            _shorts.Restart(place);
        }
    }

    /// <summary>What cut pieces from all places behind bring to a place.</summary>
    private void JoinCuts(PairRow row, Front front, int place)
    {
        for (var joint = _jointMin; joint <= _jointMax; joint++)
        {
            // Pieces that end at place - joint and are between the least length and a cell less than a unit long; and shorter ones.
            var counts = _cuts.Until(place - joint - _least);
            counts = MayBreak ? counts | _shorts.Until(place - joint - 1).Broken(1, _most) : counts;
            if (!counts.IsNothing)
            {
                Go(front, place, joint - _jointMin + 1, front.Bars, counts.Cut(1 - front.Row).Broken(Cost(row, front, (2 * place) - joint), _most));
            }
        }
    }

    private void MoveFrom(PairRow row, Front front, int place, PairCounts counts, bool mayMeet)
    {
        if (!row.IsInStretch(place))
        {
            Go(front, Math.Min(row.Next(place), place + _unit), 0, front.Bars, counts);
            return;
        }

        var own = row.IsStretchStart(place) ? None : (2 * place) - _jointMax;
        if (own != None && front.Bars < _bars.Length && own + _clear2 > _bars[front.Bars].Most2)
        {
            return;
        }

        var end = row.StretchEnd(place);
        if (end - place <= _unit)
        {
            Close(row, front, place, end, own, counts);
        }

        foreach (var piece in _whole)
        {
            Lay(row, front, place + piece, end, own, row.IsSloped(place, place + piece) ? counts.Cut(1 - front.Row) : counts);
        }

        for (var piece = _least; mayMeet && piece < _unit; piece++)
        {
            Lay(row, front, place + piece, end, own, counts.Cut(1 - front.Row));
        }
    }

    /// <summary>The last piece of a stretch.</summary>
    private void Close(PairRow row, Front front, int place, int end, int own, PairCounts counts)
    {
        var isOnly = row.IsStretchStart(place);
        var size = isOnly ? row.StretchSize(place) : 0;
        var isUncut = isOnly ? _sizes.IsUncut(size) : _whole.Contains(end - place);
        var isShort = !isUncut && (isOnly ? size < _sizes.LeastPiece : end - place < _least);
        if (!isOnly || size <= _sizes.Unit)
        {
            counts = isUncut && !row.IsSloped(place, end) ? counts : counts.Cut(1 - front.Row);
            Go(front, end, 0, Met(front.Bars, own, front.Joint == None ? int.MaxValue : front.Joint), counts.Broken(isShort ? 1 : 0, _most));
        }
    }

    private void Lay(PairRow row, Front front, int pieceEnd, int end, int own, PairCounts counts)
    {
        for (var joint = _jointMin; joint <= _jointMax && pieceEnd + joint < end; joint++)
        {
            var centre = (2 * pieceEnd) + joint;
            var gapEnd = front.Joint == None ? centre : Math.Min(centre, front.Joint);
            Go(front, pieceEnd + joint, joint - _jointMin + 1, Met(front.Bars, own, gapEnd), counts.Broken(Cost(row, front, centre), _most));
        }
    }

    /// <summary>How many rules a joint breaks.</summary>
    private int Cost(PairRow row, Front front, int centre) => row.MayStand(centre)
        ? row.Near(centre) + (front.Joint != None && Math.Abs(centre - front.Joint) < _lap ? 1 : 0)
        : PairCounts.None;

    /// <summary>How many bars have a place once it is known that no joint stands between two.</summary>
    private int Met(int bars, int gapStart2, int gapEnd2)
    {
        while (bars < _bars.Length
            && (gapStart2 == None || gapStart2 + _clear2 <= _bars[bars].Most2)
            && (gapEnd2 == int.MaxValue || gapEnd2 + 2 - _clear2 >= _bars[bars].Least2)
            && (gapStart2 == None || gapEnd2 == int.MaxValue || gapStart2 + _clear2 <= gapEnd2 + 2 - _clear2))
        {
            bars++;
        }

        return bars;
    }

    private void Go(Front front, int place, int width, int bars, PairCounts counts)
    {
        if (counts.IsNothing)
        {
            return;
        }

        var index = place > front.Lead
            ? Index(1 - front.Row, place, width, bars, place - front.Lead)
            : Index(front.Row, front.Lead, front.Width, bars, front.Lead - place);
        _states[index] |= counts;
    }

    private int Index(int row, int lead, int width, int bars, int lag) =>
        (((((((lead % _lags * 2) + row) * _widths) + width) * (_bars.Length + 1)) + bars) * _lags) + lag;

    /// <summary>The course that leads.</summary>
    /// <param name="Row">Which it is.</param>
    /// <param name="Lead">Where its next piece starts.</param>
    /// <param name="Width">Its last joint's width over the least, from 1; 0 where none stands there.</param>
    /// <param name="Bars">How many bars have a place.</param>
    /// <param name="Joint">Twice its last joint's centre, or none.</param>
    private readonly record struct Front(int Row, int Lead, int Width, int Bars, int Joint);
}
