using ReferenceOptimum.Problems;

namespace ReferenceOptimum.Solving;

/// <summary>
/// The cheapest filling of two neighbouring courses of which cuts, breaches and each place of a joint have a price, by dynamic programming over the cut
/// grid as in <see cref="PairBound"/>: both courses are laid from left to right, always the one that is behind. Bars that may move are not looked at, nor
/// any bar where rules may be broken. All this only allows more: nothing that can be laid costs less.
/// </summary>
internal sealed class PricedPair
{
    private const int None = int.MinValue;

    private readonly PairRow[] _rows;
    private readonly BondSizes _sizes;
    private readonly int _cells;
    private readonly int _unit;
    private readonly int _least;
    private readonly int _jointMin;
    private readonly int _jointMax;
    private readonly int _lap;
    private readonly int _lags;
    private readonly int _widths;
    private readonly int[] _whole;
    private readonly bool _mayBreak;

    /// <param name="pair">Two neighbouring courses.</param>
    /// <param name="first">The lower of them.</param>
    /// <param name="grid">Cells of the block that they are of.</param>
    /// <param name="mayBear">Whether joints may stand under bearings.</param>
    /// <param name="mayBreak">Whether rules may be broken.</param>
    public PricedPair(Block pair, int first, CellGrid grid, bool mayBear, bool mayBreak)
    {
        _mayBreak = mayBreak;
        _sizes = pair.Sizes;
        var cell = _sizes.Grid;
        _cells = grid.Cells;
        _rows = [.. Enumerable.Range(0, 2).Select(row => new PairRow(pair, first + row, grid.Origin, _cells, grid.Slack, mayBear, mayBreak))];
        (_unit, _least) = ((int)(_sizes.Unit / cell), (int)(_sizes.LeastPiece / cell));
        (_jointMin, _jointMax) = ((int)(_sizes.JointMin / cell), (int)((_sizes.JointMax + cell - 1) / cell));
        _whole = [.. _sizes.Parts.Add(_sizes.Unit).Select(size => (int)(size / cell))];
        _lap = grid.Slack == 0 ? (int)Math.Ceiling(2.0 * _sizes.Lap / cell) : (int)Math.Floor((2.0 * _sizes.Lap / cell) - grid.Slack) + 1;
        _lags = _unit + _jointMax + 1;
        _widths = _jointMax - _jointMin + 2;
    }

    /// <summary>The cheapest filling.</summary>
    /// <param name="lower">Prices of the lower course.</param>
    /// <param name="upper">Prices of the upper course.</param>
    /// <param name="lap">Price of a lap that is too short.</param>
    /// <param name="states">Room to work in.</param>
    public PricedFilling Cheapest(CoursePrices lower, CoursePrices upper, double lap, PricedStates states)
    {
        states.Start((_cells + 1) * 2 * _widths * _lags);
        CoursePrices[] prices = [lower, upper];
        for (var lead = 0; lead <= _cells; lead++)
        {
            for (var row = 0; row < 2; row++)
            {
                for (var width = 0; width < _widths; width++)
                {
                    var front = new Front(row, lead, width, Index(row, lead, width, 0), width == 0 ? None : (2 * lead) - (width - 1 + _jointMin));
                    if (states.IsAnyReached(front.Start, _lags))
                    {
                        Lay(states, front, prices[1 - row], lap);
                    }
                }
            }
        }

        var ends = Enumerable.Range(0, 2).SelectMany(row => Enumerable.Range(0, _widths).Select(width => Index(row, _cells, width, 0)));
        return Followed(states, ends.MinBy(states.Cost));
    }

    private static PricedFilling Followed(PricedStates states, int end)
    {
        PricedCourse[] courses = [new([], 0, 0), new([], 0, 0)];
        var laps = 0;
        foreach (var step in states.Way(end))
        {
            var course = courses[step.Row];
            laps += step.IsLapShort ? 1 : 0;
            courses[step.Row] = course with { Cuts = course.Cuts + (step.IsCut ? 1 : 0), Breaches = course.Breaches + step.Breaches };
            if (step.Centre is { } centre)
            {
                course.Joints.Add(centre);
            }
        }

        return new PricedFilling(states.Cost(end), courses[0], courses[1], laps);
    }

    /// <summary>Lays the next pieces of the course that is behind, from every place where it may be; it may still be behind then.</summary>
    private void Lay(PricedStates states, Front front, CoursePrices price, double lap)
    {
        var row = _rows[1 - front.Row];
        var ofCuts = new SlidingMinimum(_unit - _least);
        var ofShorts = new SlidingMinimum(_least - 1);
        var first = Math.Max(0, front.Lead - _lags + 1);
        for (var place = first; place < Math.Min(front.Lead + _unit, _cells); place++)
        {
            Cut(ofCuts, place, _least, new PricedStep(1 - front.Row, 0, IsCut: true));
            if (_mayBreak)
            {
                Cut(ofShorts, place, 1, new PricedStep(1 - front.Row, 1, IsCut: true));
            }

            if (place <= front.Lead && states.IsAnyReached(front.Start + front.Lead - place, 1))
            {
                LayWhole(states, front, price, lap, place);
            }
        }

        // Cut pieces that end at a place, so long at least: all of them from where it costs least.
        void Cut(SlidingMinimum cheapest, int end, int least, PricedStep step)
        {
            var place = end - least;
            if (place < first)
            {
                return;
            }

            if (row.IsStretchStart(place))
            {
                cheapest.Clear();
            }

            cheapest.Push(place, place <= front.Lead && row.IsInStretch(place) ? states.Cost(front.Start + front.Lead - place) : double.PositiveInfinity);
            if (cheapest.Place is { } from && end < row.StretchEnd(from))
            {
                Join(states, front, price, lap, from, end, step);
            }
        }
    }

    private void LayWhole(PricedStates states, Front front, CoursePrices price, double lap, int place)
    {
        var row = _rows[1 - front.Row];
        if (!row.IsInStretch(place))
        {
            Go(states, front, place, Math.Min(row.Next(place), place + _unit), 0, 0, new PricedStep(1 - front.Row, 0, IsCut: false));
            return;
        }

        Close(states, front, price, place);
        foreach (var piece in _whole)
        {
            Join(states, front, price, lap, place, place + piece, new PricedStep(1 - front.Row, 0, row.IsSloped(place, place + piece)));
        }
    }

    /// <summary>The last piece of a stretch.</summary>
    private void Close(PricedStates states, Front front, CoursePrices price, int place)
    {
        var row = _rows[1 - front.Row];
        var end = row.StretchEnd(place);
        var isOnly = row.IsStretchStart(place);
        if (end - place > _unit || (isOnly && row.StretchSize(place) > _sizes.Unit))
        {
            return;
        }

        var isUncut = isOnly ? _sizes.IsUncut(row.StretchSize(place)) : _whole.Contains(end - place);
        var isShort = !isUncut && (isOnly ? row.StretchSize(place) < _sizes.LeastPiece : end - place < _least);
        if (_mayBreak || !isShort)
        {
            var step = new PricedStep(1 - front.Row, isShort ? 1 : 0, !isUncut || row.IsSloped(place, end));
            Go(states, front, place, end, 0, (step.IsCut ? price.Cut : 0) + (step.Breaches * price.Breach), step);
        }
    }

    /// <summary>A piece from one place to another and each joint that may follow it.</summary>
    private void Join(PricedStates states, Front front, CoursePrices price, double lap, int place, int pieceEnd, PricedStep step)
    {
        var row = _rows[1 - front.Row];
        var end = row.StretchEnd(place);
        for (var joint = _jointMin; joint <= _jointMax && pieceEnd + joint < end; joint++)
        {
            var centre = (2 * pieceEnd) + joint;
            var near = row.Near(centre);
            var isLapShort = front.Joint != None && Math.Abs(centre - front.Joint) < _lap;
            if (row.MayStand(centre) && (_mayBreak || (near == 0 && !isLapShort)))
            {
                var laid = step with { Centre = centre, Breaches = step.Breaches + near, IsLapShort = isLapShort };
                var cost = (laid.IsCut ? price.Cut : 0) + (laid.Breaches * price.Breach) + (isLapShort ? lap : 0) + price.Joints[centre];
                Go(states, front, place, pieceEnd + joint, joint - _jointMin + 1, cost, laid);
            }
        }
    }

    private void Go(PricedStates states, Front front, int from, int place, int width, double cost, PricedStep step)
    {
        var index = place > front.Lead ? Index(1 - front.Row, place, width, place - front.Lead) : front.Start + front.Lead - place;
        states.Go(front.Start + front.Lead - from, index, cost, step);
    }

    private int Index(int row, int lead, int width, int lag) => (((((lead * 2) + row) * _widths) + width) * _lags) + lag;

    /// <summary>The course that leads.</summary>
    /// <param name="Row">Which it is.</param>
    /// <param name="Lead">Where its next piece starts.</param>
    /// <param name="Width">Its last joint's width over the least, from 1; 0 where none stands there.</param>
    /// <param name="Start">Number of its state with a lag of nothing.</param>
    /// <param name="Joint">Twice its last joint's centre, or none.</param>
    private readonly record struct Front(int Row, int Lead, int Width, int Start, int Joint);
}
