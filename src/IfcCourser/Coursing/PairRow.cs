using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>One of two rows that <see cref="PairSolver"/> fills together: its cells, what may be laid from each, and the least that is to come.</summary>
internal sealed class PairRow
{
    private const long Unreachable = long.MaxValue / 4;

    private readonly SegmentTask _task;
    private readonly PieceCosts _costs;
    private readonly LengthRange _limits;
    private readonly JointCosts _joints = new();
    private readonly Length _cell;
    private readonly Length _slide;
    private readonly long[] _least;
    private readonly long[] _leastAfterCut;
    private readonly int _unit;
    private readonly int _weight;

    /// <param name="row">What to fill.</param>
    /// <param name="rules">Catalog and rules.</param>
    public PairRow(PairTask row, LayoutRules rules)
    {
        var (catalog, aims) = (rules.Catalog, rules.Set.Aims);
        (Left, _task, _weight) = (row.Left, row.Segment, row.Weight);
        (_costs, _limits, _cell) = (new PieceCosts(rules), catalog.HeadJoint, catalog.CutGrid);
        _unit = CellsIn(catalog.UnitLength);
        (Cells, _slide) = Grid();
        _joints.Fill(_task, _cell, Cells, Length.Abs(_slide));
        NominalJoint = CellsIn(_limits.Nominal);
        var (least, preferred) = (CellsIn(rules.MinPiece.CeilingTo(_cell)), CellsIn(rules.PreferredPiece.CeilingTo(_cell)));
        Wholes =
        [
            .. from joint in Enumerable.Range(0, CellsIn(_limits.Max) + 1)
               where _cell * joint >= _limits.Min
               from length in catalog.PartLengths.Add(catalog.UnitLength)
               select new Step(CellsIn(length) + joint, CellsIn(length) + joint, joint, _weight * Math.Abs(joint - NominalJoint) * aims.JointStep),
        ];
        Cuts =
        [
            new Step(Math.Max(least, preferred) + NominalJoint, _unit - 1 + NominalJoint, NominalJoint, _weight * aims.Cut),
            new Step(least + NominalJoint, preferred - 1 + NominalJoint, NominalJoint, _weight * (aims.Cut + aims.Short)),
        ];
        (_least, _leastAfterCut) = LeastFrom();
    }

    public Length Left { get; }

    /// <summary>Cells from the segment's start to its end.</summary>
    public int Cells { get; }

    /// <summary>Width of a joint after a cut piece, in cells.</summary>
    public int NominalJoint { get; }

    /// <summary>Pieces that need no cut, with every joint they may have after them.</summary>
    public ImmutableArray<Step> Wholes { get; }

    /// <summary>Cut pieces, with the joint after them.</summary>
    public ImmutableArray<Step> Cuts { get; }

    /// <summary>What the first piece costs more than another where it is cut.</summary>
    public long FirstCutCost => _weight * _task.Start.CutCost;

    /// <summary>By the cell where a piece starts, the least that filling the segment from there costs.</summary>
    public ReadOnlySpan<long> Least => _least;

    /// <summary>The same, with what a joint of nominal width before the piece costs.</summary>
    public ReadOnlySpan<long> LeastAfterCut => _leastAfterCut;

    /// <summary>Where the middle of a joint is on the wall that ends at a cell.</summary>
    public Length Centre(int end, int joint) => Left + (_cell * end) - (_cell * joint / 2);

    /// <summary>What a joint costs; unreachable where the last joint could not take up what the segment is off the grid.</summary>
    public long JointCost(int end, int joint) =>
        end <= joint || end >= Cells || (Cells - end <= _unit && !_limits.Contains((_cell * joint) + _slide)) ? Unreachable : _weight * _joints.At(end, joint);

    /// <summary>What the last piece costs.</summary>
    public long LastCost(int from)
    {
        var piece = Last(from);
        return piece.Size <= Length.Zero || _costs.IsTooLong(piece) ? Unreachable : _weight * _costs.Of(piece, _task);
    }

    /// <summary>The pieces that start at given cells, each but the first after a joint of a given width.</summary>
    public ImmutableArray<Interval> Pieces(IReadOnlyList<(int Start, int Joint)> starts) =>
    [
        .. starts.Select((piece, i) => i == starts.Count - 1
            ? Last(piece.Start)
            : new Interval(_cell * piece.Start, _cell * (starts[i + 1].Start - starts[i + 1].Joint))),
    ];

    private Interval Last(int from) => new(from == 0 ? Length.Zero : (_cell * from) + _slide, _task.Size);

    private int CellsIn(Length length) => (int)(length / _cell);

    /// <summary>A remainder off the grid goes into the last joint, or into the last piece where joints have no play.</summary>
    private (int Cells, Length Slide) Grid()
    {
        var whole = CellsIn(_task.Size);
        var rest = _task.Size - (_cell * whole);
        return _limits.Nominal + rest <= _limits.Max ? (whole, rest)
            : _limits.Nominal + rest - _cell >= _limits.Min ? (whole + 1, rest - _cell)
            : (whole, Length.Zero);
    }

    private (long[] Least, long[] AfterCut) LeastFrom()
    {
        var (least, afterCut) = (new long[Cells], new long[Cells]);
        var windows = Cuts.Select(_ => new SlidingMinimum()).ToArray();
        foreach (var window in windows)
        {
            window.Reset(Cells);
        }

        for (var from = Cells - 1; from >= 0; from--)
        {
            var best = LastCost(from);
            foreach (var step in Wholes)
            {
                var end = from + step.Shortest;
                best = end < Cells ? Math.Min(best, step.Cost + JointCost(end, step.Joint) + least[end]) : best;
            }

            for (var i = 0; i < windows.Length; i++)
            {
                // From the segment's end, as the window slides towards its start.
                var (cut, window, end) = (Cuts[i], windows[i], from + Cuts[i].Shortest);
                if (end < Cells && cut.Longest >= cut.Shortest)
                {
                    window.Push(Cells - end, afterCut[end]);
                }

                window.DropBefore(Cells - from - cut.Longest);
                best = window.IsEmpty ? best : Math.Min(best, cut.Cost + (from == 0 ? FirstCutCost : 0) + window.Value);
            }

            least[from] = Math.Min(best, Unreachable);
            afterCut[from] = Math.Min(least[from] + JointCost(from, NominalJoint), Unreachable);
        }

        return (least, afterCut);
    }

    /// <summary>Pieces of a range of lengths, each with the joint after it.</summary>
    /// <param name="Shortest">Cells of the shortest and its joint.</param>
    /// <param name="Longest">Cells of the longest and its joint.</param>
    /// <param name="Joint">The joint's width in cells.</param>
    /// <param name="Cost">Of any of them, apart from where it lies.</param>
    public readonly record struct Step(int Shortest, int Longest, int Joint, long Cost);
}
