using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>One of two rows that <see cref="PairSolver"/> fills together: its cells, what a piece may do at each, and the least that is to come.</summary>
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
    private readonly int _unit;

    /// <param name="left">Where the segment starts on the wall.</param>
    /// <param name="task">The segment, upright at both ends.</param>
    /// <param name="rules">Catalog and rules.</param>
    public PairRow(Length left, SegmentTask task, LayoutRules rules)
    {
        (Left, _task, _costs, _limits, _cell) = (left, task, new PieceCosts(rules), rules.Catalog.HeadJoint, rules.Catalog.CutGrid);
        _unit = (int)(rules.Catalog.UnitLength / _cell);
        (Cells, _slide) = Grid();
        _joints.Fill(task, _cell, Cells, Length.Abs(_slide));
        Steps = [.. StepsOf(rules).OrderBy(step => step.Cost).ThenBy(step => step.Cells)];
        _least = LeastFrom();
    }

    public Length Left { get; }

    /// <summary>Cells from the segment's start to its end.</summary>
    public int Cells { get; }

    /// <summary>Pieces with the joint after them, the cheapest first.</summary>
    public ImmutableArray<Step> Steps { get; }

    /// <summary>The least that filling the segment from a cell costs.</summary>
    public long Least(int cell) => _least[cell];

    /// <summary>Where a cell is on the wall.</summary>
    public Length Place(int cell) => Left + (_cell * cell);

    /// <summary>What a piece costs with the joint after it; null where the last joint could not take up what the segment is off the grid.</summary>
    public long? Cost(int from, Step step)
    {
        var end = from + step.Cells;
        return end >= Cells || (Cells - end <= _unit && !_limits.Contains((_cell * step.Joint) + _slide)) ? null
            : step.Cost + (from == 0 && step.IsCut ? _task.Start.CutCost : 0) + _joints.At(end, step.Joint);
    }

    /// <summary>What the last piece costs.</summary>
    public long LastCost(int from)
    {
        var piece = Last(from);
        return piece.Size <= Length.Zero || _costs.IsTooLong(piece) ? Unreachable : _costs.Of(piece, _task);
    }

    /// <summary>The pieces that start at given cells, each but the first after a joint of a given width.</summary>
    public ImmutableArray<Interval> Pieces(IReadOnlyList<(int Start, int Joint)> starts) =>
    [
        .. starts.Select((piece, i) => i == starts.Count - 1
            ? Last(piece.Start)
            : new Interval(_cell * piece.Start, _cell * (starts[i + 1].Start - starts[i + 1].Joint))),
    ];

    private Interval Last(int from) => new(from == 0 ? Length.Zero : (_cell * from) + _slide, _task.Size);

    /// <summary>A remainder off the grid goes into the last joint, or into the last piece where joints have no play.</summary>
    private (int Cells, Length Slide) Grid()
    {
        var whole = (int)(_task.Size / _cell);
        var rest = _task.Size - (_cell * whole);
        return _limits.Nominal + rest <= _limits.Max ? (whole, rest)
            : _limits.Nominal + rest - _cell >= _limits.Min ? (whole + 1, rest - _cell)
            : (whole, Length.Zero);
    }

    private IEnumerable<Step> StepsOf(LayoutRules rules)
    {
        var (catalog, aims) = (rules.Catalog, rules.Set.Aims);
        var nominal = (int)(catalog.HeadJoint.Nominal / _cell);
        var wholes = catalog.PartLengths.Add(catalog.UnitLength).Select(length => (int)(length / _cell)).ToList();
        for (var joint = (int)(_limits.Min.CeilingTo(_cell) / _cell); joint <= _limits.Max / _cell; joint++)
        {
            foreach (var whole in wholes)
            {
                yield return new Step(whole + joint, joint, Math.Abs(joint - nominal) * aims.JointStep, IsCut: false);
            }
        }

        for (var length = (int)(rules.MinPiece.CeilingTo(_cell) / _cell); length < _unit; length++)
        {
            if (!wholes.Contains(length))
            {
                yield return new Step(length + nominal, nominal, aims.Cut + (_cell * length < rules.PreferredPiece ? aims.Short : 0), IsCut: true);
            }
        }
    }

    private long[] LeastFrom()
    {
        var least = new long[Cells + 1];
        for (var from = Cells - 1; from >= 0; from--)
        {
            least[from] = LastCost(from);
            foreach (var step in Steps)
            {
                if (step.Cost >= least[from])
                {
                    break;
                }

                if (Cost(from, step) is { } cost)
                {
                    least[from] = Math.Min(least[from], cost + least[from + step.Cells]);
                }
            }
        }

        return least;
    }

    /// <summary>A piece and the joint after it.</summary>
    /// <param name="Cells">Both together.</param>
    /// <param name="Joint">The joint's width in cells.</param>
    /// <param name="Cost">Apart from its place.</param>
    /// <param name="IsCut">Whether the piece is cut.</param>
    public readonly record struct Step(int Cells, int Joint, long Cost, bool IsCut);
}
