using ReferenceOptimum.Problems;

namespace ReferenceOptimum.Solving;

/// <summary>
/// The cuts that two neighbouring courses need while all rules hold, by dynamic programming over the cut grid: a bound that owes
/// nothing to the constraint solver. Both courses are laid from left to right, always the one that is behind. A state is where the
/// next piece of either starts, how wide the joint before the leading one is, and how many bars have found their place.
/// Its simplifications (places rounded down, some laps and bars not looked at) only allow more: the result is a lower bound.
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
    private readonly ushort[] _states;
    private readonly SlidingUnion _cuts;

    private PairBound(Block pair, bool mayBear)
    {
        _sizes = pair.Sizes;
        var cell = _sizes.Grid;
        var origin = pair.Stretches.Min(stretch => stretch.From);
        _cells = (int)((pair.Stretches.Max(stretch => stretch.To) - origin) / cell);
        _rows = [new PairRow(pair, pair.FirstCourse, origin, _cells, mayBear), new PairRow(pair, pair.FirstCourse + 1, origin, _cells, mayBear)];
        (_unit, _least) = ((int)(_sizes.Unit / cell), (int)(_sizes.LeastPiece / cell));
        (_jointMin, _jointMax) = ((int)(_sizes.JointMin / cell), (int)((_sizes.JointMax + cell - 1) / cell));
        _whole = [.. _sizes.Parts.Add(_sizes.Unit).Select(size => (int)(size / cell))];
        _lap = (int)Math.Floor((2.0 * _sizes.Lap / cell) - 2) + 1;
        _lags = _unit + _jointMax + 1;
        _widths = _jointMax - _jointMin + 2;
        _clear2 = 2.0 * _sizes.Clearance / cell;
        _bars = [.. MovingBars(pair).Select(bar => ((bar.Least2 - (2 * origin)) / (double)cell, (bar.Most2 - (2 * origin)) / (double)cell))];
        _states = new ushort[2L * (_cells + 1) * _widths * _lags * (_bars.Length + 1)];
        _cuts = new SlidingUnion(_unit - _least, (2 * _lags) + 1);
    }

    /// <param name="pair">Two neighbouring courses.</param>
    /// <param name="mayBear">Whether joints may stand under bearings.</param>
    public static CutPairs Of(Block pair, bool mayBear) => new PairBound(pair, mayBear).Run();

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

    private CutPairs Run()
    {
        _states[Index(0, 0, 0, 0, 0)] = 1;
        for (var lead = 0; lead <= _cells; lead++)
        {
            for (var row = 0; row < 2; row++)
            {
                for (var width = 0; width < _widths; width++)
                {
                    for (var bars = 0; bars <= _bars.Length; bars++)
                    {
                        var slice = _states.AsSpan((int)Index(row, lead, width, bars, 0), _lags);
                        if (slice.ContainsAnyExcept((ushort)0))
                        {
                            Move(new Front(row, lead, width, bars, width == 0 ? None : (2 * lead) - (width - 1 + _jointMin)));
                        }
                    }
                }
            }
        }

        var bits = 0;
        for (var row = 0; row < 2; row++)
        {
            for (var width = 0; width < _widths; width++)
            {
                bits |= _states[Index(row, _cells, width, _bars.Length, 0)];
            }
        }

        return new CutPairs((ushort)bits);
    }

    /// <summary>Lays the next pieces of the course that is behind, from every place where it may be.</summary>
    private void Move(Front front)
    {
        var row = _rows[1 - front.Row];
        var first = Math.Max(0, front.Lead - _lags + 1);
        var mayMeet = front.Bars < _bars.Length
            && (front.Joint == None ? 2 * (front.Lead + _lags) : front.Joint) + 2 - _clear2 >= _bars[front.Bars].Least2;
        _cuts.Restart(first);
        for (var place = first; place <= Math.Min(front.Lead + _lags - 1, _cells); place++)
        {
            if (row.IsStretchStart(place))
            {
                _cuts.Restart(place);
            }

            if (!mayMeet && row.IsInStretch(place))
            {
                JoinCuts(row, front, place);
            }

            var bits = place > front.Lead ? (ushort)0 : _states[Index(front.Row, front.Lead, front.Width, front.Bars, front.Lead - place)];
            _cuts.Push(bits);
            if (bits != 0 && !(front.Lead == _cells && place == _cells))
            {
                MoveFrom(row, front, place, bits, mayMeet);
            }
        }
    }

    /// <summary>What cut pieces from all places behind bring to a place.</summary>
    private void JoinCuts(PairRow row, Front front, int place)
    {
        for (var joint = _jointMin; joint <= _jointMax; joint++)
        {
            // Pieces that end at place - joint and are between the least length and a cell less than a unit long.
            var bits = _cuts.Until(place - joint - _least);
            if (bits != 0 && MayStand(row, front, (2 * place) - joint))
            {
                Go(front, place, joint - _jointMin + 1, front.Bars, CutPairs.More(bits, 1 - front.Row));
            }
        }
    }

    private void MoveFrom(PairRow row, Front front, int place, ushort bits, bool mayMeet)
    {
        if (!row.IsInStretch(place))
        {
            Go(front, Math.Min(row.Next(place), place + _unit), 0, front.Bars, bits);
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
            Close(row, front, place, end, own, bits);
        }

        foreach (var piece in _whole)
        {
            Lay(row, front, place + piece, end, own, bits);
        }

        for (var piece = _least; mayMeet && piece < _unit; piece++)
        {
            Lay(row, front, place + piece, end, own, CutPairs.More(bits, 1 - front.Row));
        }
    }

    /// <summary>The last piece of a stretch.</summary>
    private void Close(PairRow row, Front front, int place, int end, int own, ushort bits)
    {
        var isOnly = row.IsStretchStart(place);
        var size = isOnly ? row.StretchSize(place) : 0;
        var isUncut = isOnly ? _sizes.IsUncut(size) : _whole.Contains(end - place);
        var isLongEnough = isUncut || (isOnly ? size >= _sizes.LeastPiece : end - place >= _least);
        if (isLongEnough && (!isOnly || size <= _sizes.Unit))
        {
            Go(front, end, 0, Met(front.Bars, own, front.Joint == None ? int.MaxValue : front.Joint), isUncut ? bits : CutPairs.More(bits, 1 - front.Row));
        }
    }

    private void Lay(PairRow row, Front front, int pieceEnd, int end, int own, ushort bits)
    {
        for (var joint = _jointMin; joint <= _jointMax && pieceEnd + joint < end; joint++)
        {
            var centre = (2 * pieceEnd) + joint;
            if (MayStand(row, front, centre))
            {
                var gapEnd = front.Joint == None ? centre : Math.Min(centre, front.Joint);
                Go(front, pieceEnd + joint, joint - _jointMin + 1, Met(front.Bars, own, gapEnd), bits);
            }
        }
    }

    private bool MayStand(PairRow row, Front front, int centre) =>
        row.MayStand(centre) && (front.Joint == None || Math.Abs(centre - front.Joint) >= _lap);

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

    private void Go(Front front, int place, int width, int bars, ushort bits)
    {
        var index = place > front.Lead
            ? Index(1 - front.Row, place, width, bars, place - front.Lead)
            : Index(front.Row, front.Lead, front.Width, bars, front.Lead - place);
        _states[index] |= bits;
    }

    private long Index(int row, int lead, int width, int bars, int lag) =>
        ((((((((long)lead * 2) + row) * _widths) + width) * (_bars.Length + 1)) + bars) * _lags) + lag;

    /// <summary>The course that leads.</summary>
    /// <param name="Row">Which it is.</param>
    /// <param name="Lead">Where its next piece starts.</param>
    /// <param name="Width">Its last joint's width over the least, from 1; 0 where none stands there.</param>
    /// <param name="Bars">How many bars have a place.</param>
    /// <param name="Joint">Twice its last joint's centre, or none.</param>
    private readonly record struct Front(int Row, int Lead, int Width, int Bars, int Joint);
}
