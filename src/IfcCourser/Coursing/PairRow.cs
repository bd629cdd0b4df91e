using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>One of two rows that <see cref="PairSolver"/> fills together: its cells, what may be laid from each, and the least that is to come.</summary>
internal sealed class PairRow
{
    private const long Unreachable = RestCosts.Unreachable;

    private readonly SegmentTask _task;
    private readonly PieceCosts _costs;
    private readonly CellSizes _sizes;
    private readonly SegmentGrid _grid;
    private readonly JointCosts _joints = new();
    private readonly long[] _least;
    private readonly long[]?[] _leastAfter;
    private readonly int _weight;
    private readonly long _savedCut;

    /// <param name="row">What to fill.</param>
    /// <param name="rules">Catalog and rules.</param>
    public PairRow(PairTask row, LayoutRules rules)
    {
        (Left, _task, _weight) = (row.Left, row.Segment, row.Weight);
        (_costs, _sizes) = (new PieceCosts(rules), new CellSizes(rules));
        _savedCut = _weight * rules.Set.Aims.Cut / 2;
        _grid = SegmentGrid.Of(_task.Size, _sizes);
        _joints.Fill(_task, _sizes.Cell, Cells, Length.Abs(_grid.Slide));
        Wholes =
        [
            .. from joint in Enumerable.Range(_sizes.JointMin, _sizes.JointMax - _sizes.JointMin + 1)
               from length in _sizes.Wholes
               select new Step(length + joint, length + joint, joint, _weight * Math.Abs(joint - _sizes.Joint) * rules.Set.Aims.JointStep),
        ];
        FirstCuts = [.. _sizes.CutClasses.Select(cuts => new Step(cuts.Shortest + _sizes.Joint, cuts.Longest + _sizes.Joint, _sizes.Joint, _weight * cuts.Weight))];
        Cuts = [.. FirstCuts.Where((_, i) => _sizes.CutClasses[i].Weight < BondAims.Breach)];
        FirstWideCuts =
        [
            .. from joint in Enumerable.Range(_sizes.JointMin, _sizes.JointMax - _sizes.JointMin + 1)
               where joint != _sizes.Joint
               from cuts in _sizes.CutClasses
               select new Step(cuts.Shortest + joint, cuts.Longest + joint, joint, _weight * (cuts.Weight + (Math.Abs(joint - _sizes.Joint) * rules.Set.Aims.JointStep))),
        ];
        WideCuts = [.. FirstWideCuts.Where((_, i) => _sizes.CutClasses[i % _sizes.CutClasses.Length].Weight < BondAims.Breach)];
        FirstTightCuts = [.. _sizes.TightCuts.Select(cut => new Step(cut.Length + cut.Joint, cut.Length + cut.Joint, cut.Joint, _weight * cut.Weight))];
        TightCuts = [.. FirstTightCuts.Where((_, i) => _sizes.TightCuts[i].Weight < BondAims.Breach)];
        _least = LeastFrom();
        _leastAfter = new long[_sizes.JointMax + 1][];
        Held = HeldCells([_sizes.Joint]);
        HeldByAny = HeldCells(Enumerable.Range(_sizes.JointMin, _sizes.JointMax - _sizes.JointMin + 1));
    }

    public Length Left { get; }

    /// <summary>Cells from the segment's start to its end.</summary>
    public int Cells => _grid.Target;

    /// <summary>Pieces that need no cut, with every joint they may have after them.</summary>
    public ImmutableArray<Step> Wholes { get; }

    /// <summary>Cut pieces, with the joint after them: those too short are left to the ends.</summary>
    public ImmutableArray<Step> Cuts { get; }

    /// <summary>The same at the segment's start.</summary>
    public ImmutableArray<Step> FirstCuts { get; }

    /// <summary>Cut pieces with a joint after them that is not of nominal width: those too short are left to the ends.</summary>
    public ImmutableArray<Step> WideCuts { get; }

    /// <summary>The same at the segment's start.</summary>
    public ImmutableArray<Step> FirstWideCuts { get; }

    /// <summary>Cut pieces with a narrower joint after them: those too short are left to the ends.</summary>
    public ImmutableArray<Step> TightCuts { get; }

    /// <summary>The same at the segment's start.</summary>
    public ImmutableArray<Step> FirstTightCuts { get; }

    /// <summary>Cells where a piece after a joint of nominal width costs more a cell nearer to the start, or its joint does.</summary>
    public CellSet Held { get; }

    /// <summary>The same for a joint of any width.</summary>
    public CellSet HeldByAny { get; }

    /// <summary>What the first piece costs more than another where it is cut.</summary>
    public long FirstCutCost => _weight * _task.Start.CutCost;

    /// <summary>By the cell where a piece starts, the least that filling the segment from there costs.</summary>
    public ReadOnlySpan<long> Least => _least;

    /// <summary>The same, with what a joint before the piece costs by its place.</summary>
    /// <param name="joint">Its width in cells.</param>
    public ReadOnlySpan<long> LeastAfter(int joint) =>
        _leastAfter[joint] ??= [.. Enumerable.Range(0, Cells).Select(cell => _least[cell] + JointCost(cell, joint))];

    /// <summary>Where the middle of a joint is on the wall that ends at a cell.</summary>
    public Length Centre(int end, int joint) => Left + (_sizes.Cell * end) - (_sizes.Cell * joint / 2);

    /// <summary>What a joint costs; unreachable where the last joint could not take up what the segment is off the grid.</summary>
    public long JointCost(int end, int joint) =>
        end <= joint || end >= Cells || (Cells - end <= _sizes.Unit && !_grid.MayBeLast(joint)) ? Unreachable : _weight * _joints.At(end, joint);

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
            : new Interval(_sizes.Cell * piece.Start, _sizes.Cell * (starts[i + 1].Start - starts[i + 1].Joint))),
    ];

    /// <summary>Whether a joint that is not of nominal width saves a cut in what is to come; others are left to the rows' own searches.</summary>
    public bool IsOfUse(int end, Step whole)
    {
        var nominal = end - whole.Joint + _sizes.Joint;
        return whole.Joint == _sizes.Joint || nominal >= Cells || _least[end] + whole.Cost + _savedCut < _least[nominal];
    }

    private CellSet HeldCells(IEnumerable<int> joints)
    {
        var held = new CellSet();
        held.Reset(Cells);
        foreach (var (drop, joint) in _joints.Drops.SelectMany(drop => joints.Select(joint => (drop, joint))))
        {
            held.Add((drop + joint + 1) / 2);
        }

        for (var left = 1; left <= _sizes.Unit && left < Cells; left++)
        {
            if (LastCost(Cells - left) < LastCost(Cells - left - 1))
            {
                held.Add(Cells - left);
            }
        }

        return held;
    }

    private Interval Last(int from) => new(from == 0 ? Length.Zero : (_sizes.Cell * from) + _grid.Slide, _task.Size);

    private long[] LeastFrom()
    {
        var (least, afterCut) = (new long[Cells], new long[Cells]);
        var windows = FirstCuts.Select(_ => new SlidingMinimum()).ToArray();
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

            foreach (var step in from == 0 ? FirstTightCuts : TightCuts)
            {
                var end = from + step.Shortest;
                best = end < Cells ? Math.Min(best, step.Cost + (from == 0 ? FirstCutCost : 0) + JointCost(end, step.Joint) + least[end]) : best;
            }

            for (var i = 0; i < windows.Length; i++)
            {
                // From the segment's end, as the window slides towards its start.
                var (cut, window, end) = (FirstCuts[i], windows[i], from + FirstCuts[i].Shortest);
                if (end < Cells && cut.Longest >= cut.Shortest)
                {
                    window.Push(Cells - end, afterCut[end]);
                }

                window.DropBefore(Cells - from - cut.Longest);
                best = window.IsEmpty || (from > 0 && !Cuts.Contains(cut)) ? best : Math.Min(best, cut.Cost + (from == 0 ? FirstCutCost : 0) + window.Value);
            }

            least[from] = Math.Min(best, Unreachable);
            afterCut[from] = Math.Min(least[from] + JointCost(from, _sizes.Joint), Unreachable);
        }

        return least;
    }

    /// <summary>Pieces of a range of lengths, each with the joint after it.</summary>
    /// <param name="Shortest">Cells of the shortest and its joint.</param>
    /// <param name="Longest">Cells of the longest and its joint.</param>
    /// <param name="Joint">The joint's width in cells.</param>
    /// <param name="Cost">Of any of them, apart from where it lies.</param>
    public readonly record struct Step(int Shortest, int Longest, int Joint, long Cost);
}
