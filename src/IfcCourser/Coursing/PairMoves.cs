using System.Collections.Immutable;
using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>
/// What may be laid next in one of two rows that are filled together, by the cell that it has come to, apart from what the other row says to it.
/// A move's regret is what it costs over the least that the row needs from there: those with more than a state can spare are not even looked at.
/// They are listed when a cell is first asked for, those with the least regret first, and anew where a state can spare more.
/// </summary>
internal sealed class PairMoves
{
    /// <summary>Moves are listed for states that can spare so many times as much as the one that asks.</summary>
    private const int Ahead = 4;

    private readonly PairRow _row;
    private readonly JointWidths _widths;
    private readonly CellSet _landings;
    private readonly List<Move> _found = [];
    private readonly (Move[] Moves, long Spare)[] _known;

    /// <param name="row">The row.</param>
    /// <param name="landings">The cells where the piece after a cut one is tried.</param>
    /// <param name="widths">Which joints have all widths.</param>
    public PairMoves(PairRow row, CellSet landings, JointWidths widths)
    {
        (_row, _landings, _widths) = (row, landings, widths);
        _known = new (Move[], long)[row.Cells];
        Array.Fill(_known, ([], long.MinValue));
    }

    /// <summary>What no state of a search can spare more than, but for joints that the least of a row knows nothing of.</summary>
    public long Spare { get; set; }

    /// <summary>The moves from a cell with a regret less than what is spared, and others after them; those with less regret come first.</summary>
    public ReadOnlySpan<Move> From(int cell, long spare)
    {
        ref var known = ref _known[cell];
        if (known.Spare < spare)
        {
            spare = Math.Max(spare, spare < Spare / Ahead ? spare * Ahead : Spare);
            known = (Listed(cell, spare), spare);
        }

        return known.Moves;
    }

    private Move[] Listed(int from, long spare)
    {
        var limit = spare + _row.Least[from];
        _found.Clear();
        foreach (var whole in _row.Wholes)
        {
            var end = from + whole.Shortest;
            if (end < _row.Cells && (_widths != JointWidths.Useful || _row.IsOfUse(end, whole)))
            {
                Add(end, whole, whole.Cost, limit);
            }
        }

        var firstCutCost = from == 0 ? _row.FirstCutCost : 0;
        foreach (var cut in from == 0 ? _row.FirstTightCuts : _row.TightCuts)
        {
            if (from + cut.Shortest < _row.Cells)
            {
                Add(from + cut.Shortest, cut, cut.Cost + firstCutCost, limit);
            }
        }

        AddCuts(from, from == 0 ? _row.FirstCuts : _row.Cuts, firstCutCost, limit);
        if (_widths == JointWidths.All)
        {
            AddCuts(from, from == 0 ? _row.FirstWideCuts : _row.WideCuts, firstCutCost, limit);
        }

        _found.Sort((a, b) => a.Whole != b.Whole ? a.Whole.CompareTo(b.Whole) : a.End != b.End ? a.End - b.End : a.Joint - b.Joint);
        return [.. _found];
    }

    private void AddCuts(int from, ImmutableArray<PairRow.Step> cuts, long firstCutCost, long limit)
    {
        foreach (var cut in cuts)
        {
            var (cost, last) = (cut.Cost + firstCutCost, Math.Min(from + cut.Longest, _row.Cells - 1));
            var least = _row.LeastAfter(cut.Joint);
            for (var end = from + cut.Shortest; end <= last; end = _landings.Next(end + 1))
            {
                if (cost + least[end] < limit)
                {
                    Add(end, cut, cost, limit);
                }
            }
        }
    }

    private void Add(int end, PairRow.Step step, long cost, long limit)
    {
        cost += _row.JointCost(end, step.Joint);
        var whole = cost + _row.Least[end];
        if (whole < limit)
        {
            _found.Add(new Move(end, step.Joint, _row.Centre(end, step.Joint), cost, whole));
        }
    }

    /// <summary>A piece and the joint after it.</summary>
    /// <param name="End">The cell after the joint.</param>
    /// <param name="Joint">The joint's width in cells.</param>
    /// <param name="Centre">The joint's middle on the wall.</param>
    /// <param name="Cost">Of both.</param>
    /// <param name="Whole">Of both and of what is still to come at least.</param>
    public readonly record struct Move(int End, int Joint, Length Centre, long Cost, long Whole);
}
