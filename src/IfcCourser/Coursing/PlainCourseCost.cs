using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Rules;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Coursing;

/// <summary>What an odd and an even course of a wall cost together, openings left out, for given turns at its corners.</summary>
internal sealed class PlainCourseCost(ImmutableArray<WallLines> walls, ImmutableArray<Junction> junctions, LayoutRules rules, RestTables tables)
{
    private readonly SegmentSolver _solver = new(rules, tables, new BondEffort());
    private readonly PieceCosts _costs = new(rules);
    private readonly Dictionary<(Interval Odd, Interval Even, Length Length), long> _known = [];

    public long Of(int wall, IEnumerable<(int Corner, CornerTurn Turn)> corners)
    {
        var length = walls[wall].Wall.Frame.Length;
        var (odd, even) = (new Interval(Length.Zero, length), new Interval(Length.Zero, length));
        foreach (var (corner, turn) in corners)
        {
            var junction = junctions[corner];
            var runsThroughInOdd = (junction.First == wall) == (turn == CornerTurn.FirstInOdd);
            var place = JunctionPlan.PlaceOn(junction, wall);
            (odd, even) = runsThroughInOdd ? (odd, Trim(even, place)) : (Trim(odd, place), even);
        }

        if (!_known.TryGetValue((odd, even, length), out var cost))
        {
            cost = Cost(odd, even, length);
            _known.Add((odd, even, length), cost);
        }

        return cost;
    }

    private Interval Trim(Interval run, JunctionPlace place)
    {
        var joint = rules.Catalog.HeadJoint.Nominal;
        return place.Side == JunctionSide.Start ? run with { From = place.To + joint } : run with { To = place.From - joint };
    }

    private long Cost(Interval odd, Interval even, Length length)
    {
        if (odd.IsEmpty || even.IsEmpty)
        {
            return 2 * BondAims.Breach;
        }

        var oddTask = Task(odd, EdgeJoints(even, length));
        var oddPieces = _solver.Solve(oddTask)!.Value;
        var inner = oddPieces.Zip(oddPieces.Skip(1), (a, b) => odd.From + ((a.To + b.From) / 2));
        var evenTask = Task(even, [.. inner, .. EdgeJoints(odd, length)]);
        return _costs.Of(oddPieces, oddTask) + _costs.Of(_solver.Solve(evenTask)!.Value, evenTask);
    }

    private SegmentTask Task(Interval run, IEnumerable<Length> jointsBeside) => new(
        run.Size,
        SegmentEnd.Upright(rules.Set.Aims.CutAtEnd),
        SegmentEnd.Upright(rules.Set.Aims.CutAtEnd),
        [.. jointsBeside.Select(joint => new JointZone(joint - run.From, rules.MinOverlap, BondAims.Breach))]);

    /// <summary>The joints against the neighbours' faces where a run was trimmed.</summary>
    private IEnumerable<Length> EdgeJoints(Interval run, Length length)
    {
        var joint = rules.Catalog.HeadJoint.Nominal;
        if (run.From > Length.Zero)
        {
            yield return run.From - (joint / 2);
        }

        if (run.To < length)
        {
            yield return run.To + (joint / 2);
        }
    }
}
