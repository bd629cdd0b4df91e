using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>The rows of pieces considered for a segment, and for all that equal it in other courses of the wall.</summary>
/// <param name="left">Where the segment starts on the wall.</param>
/// <param name="alone">The task of filling it, with what joints cost whatever the neighbours' pieces are.</param>
/// <param name="most">Rows that answers are added to; pairs are added all the same.</param>
/// <param name="solvers">Find rows.</param>
internal sealed class SegmentRows(Length left, SegmentTask alone, int most, BondSolvers solvers)
{
    private readonly List<Row> _rows = [];
    private readonly HashSet<SegmentTask> _solved = [];

    public IReadOnlyList<Row> Rows => _rows;

    /// <summary>Where the segment starts on the wall.</summary>
    public Length Left => left;

    /// <summary>Its end.</summary>
    public Length Right => left + alone.Size;

    /// <summary>Whether the wall's top slopes over it.</summary>
    public bool IsRaked => alone.Start.Raked > Length.Zero || alone.End.Raked > Length.Zero;

    /// <summary>The place of the cheapest row beside given joints; rows are added as long as there is room for them, whatever effort is left.</summary>
    public int Cheapest(JointsBeside beside)
    {
        if (_rows.Count == 0)
        {
            Add(alone);
        }

        var (place, cost) = CheapestKnown(beside);
        if (cost - beside.RepeatsOf(_rows[place].Joints) > _rows[0].Cost && Add(TaskBeside(beside), cost))
        {
            place = _rows.Count - 1;
        }

        return place;
    }

    /// <summary>Adds the cheapest row beside given joints; whether it is new.</summary>
    public bool AddCheapest(JointsBeside beside)
    {
        if (!solvers.Effort.MaySearch())
        {
            return false;
        }

        var known = CheapestKnown(beside).Cost;
        return known > _rows[0].Cost + beside.LeastOfRepeats && Add(TaskBeside(beside), known);
    }

    /// <summary>Adds rows with their cuts at the one end or the other: what suits a course best may cost the next one cuts.</summary>
    /// <param name="worth">How much a cut there is worth.</param>
    public void AddLeaning(long worth)
    {
        Add(alone with { Start = alone.Start with { CutCost = -worth }, End = alone.End with { CutCost = 0 } });
        Add(alone with { Start = alone.Start with { CutCost = 0 }, End = alone.End with { CutCost = -worth } });
    }

    private (int Place, long Cost) CheapestKnown(JointsBeside beside)
    {
        solvers.Effort.SpendComparisons(_rows.Count * (long)(beside.Count + _rows[0].Joints.Length));
        var best = (Place: 0, Cost: long.MaxValue);
        for (var i = 0; i < _rows.Count; i++)
        {
            var cost = _rows[i].Cost + beside.CostOf(_rows[i].Joints);
            best = cost < best.Cost ? (i, cost) : best;
        }

        return best;
    }

    /// <summary>The task of filling the segment beside given joints.</summary>
    public SegmentTask TaskBeside(JointsBeside beside)
    {
        var zones = ImmutableArray.CreateBuilder<JointZone>(alone.Zones.Length);
        zones.AddRange(alone.Zones);
        beside.AddZones(zones, left, alone.Size);
        return alone with { Zones = zones.DrainToImmutable() };
    }

    private bool Add(SegmentTask task, long? known = null)
    {
        var count = _rows.Count;
        if (count < most && _solved.Add(task) && (known is { } cost ? solvers.Segments.Solve(task, cost) : solvers.Segments.Solve(task)) is { } pieces)
        {
            Add(pieces);
        }

        return _rows.Count > count;
    }

    /// <summary>Adds a row where it is new, however many there are; its place.</summary>
    /// <param name="pieces">From the segment's start, filling it.</param>
    public int Add(ImmutableArray<Interval> pieces)
    {
        var place = _rows.FindIndex(row => row.Pieces.AsSpan().SequenceEqual(pieces.AsSpan()));
        if (place >= 0)
        {
            return place;
        }

        var joints = new Length[pieces.Length - 1];
        for (var i = 0; i < joints.Length; i++)
        {
            joints[i] = left + ((pieces[i].To + pieces[i + 1].From) / 2);
        }

        _rows.Add(new Row(pieces, joints, solvers.Costs.Of(pieces, alone)));
        return _rows.Count - 1;
    }

    /// <summary>A row of pieces that fills the segment.</summary>
    /// <param name="Pieces">From the segment's start.</param>
    /// <param name="Joints">Centres of the head joints along the wall, rising.</param>
    /// <param name="Cost">Its cost apart from what the neighbours' pieces add.</param>
    public sealed record Row(ImmutableArray<Interval> Pieces, Length[] Joints, long Cost);
}
